#include "core/session/state_folder.h"

#include "core/base/codes.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <cstdlib>
#include <optional>
#include <string>

namespace treadwell::session {
namespace {

/// Sets a variable of the environment until its end.
class Variable {
  public:
    Variable(const char* name, const std::string& value) : m_name(name) {
        if (const char* before = std::getenv(name)) m_before = before;
        ::setenv(name, value.c_str(), 1);
    }
    ~Variable() {
        if (m_before) {
            ::setenv(m_name, m_before->c_str(), 1);
        } else {
            ::unsetenv(m_name);
        }
    }
    Variable(const Variable&) = delete;
    Variable& operator=(const Variable&) = delete;

  private:
    const char* m_name;
    std::optional<std::string> m_before;
};

class StateFolder : public testing::Test {
  protected:
    std::filesystem::path home = testing::TempDir() + "treadwell_home_" + std::to_string(::getpid());
    void TearDown() override { std::filesystem::remove_all(home); }
};

// XDG Base Directory Specification: $XDG_STATE_HOME where it is absolute, else ~/.local/state.
TEST_F(StateFolder, FollowsTheBaseDirectories) {
    const Variable homeVariable("HOME", home.string());
    const Variable state("XDG_STATE_HOME", (home / "state").string());
    EXPECT_EQ(stateFolder(), home / "state" / "treadwell");
    EXPECT_TRUE(std::filesystem::is_directory(home / "state" / "treadwell"));
    const Variable relative("XDG_STATE_HOME", "state");
    EXPECT_EQ(stateFolder(), home / ".local" / "state" / "treadwell");
}

TEST_F(StateFolder, SaysWhereItCannotBeMade) {
    const Variable state("XDG_STATE_HOME", "/dev/null");
    const auto folder = stateFolder();
    ASSERT_FALSE(folder);
    EXPECT_EQ(folder.error().code(), code::fileUnwritable);
}

}  // namespace
}  // namespace treadwell::session
