#include "tests/app/cli/program.h"

#include <fcntl.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <stdexcept>

namespace treadwell::cli {

namespace {

std::string contentOf(const std::string& path) {
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, {}};
}

}  // namespace

Answered runProgram(const std::vector<std::string>& arguments, const std::string& output) {
    // What a test does to a machine's memory must not touch that of the machine it runs on.
    static const Folder state;
    setenv("XDG_STATE_HOME", state.file("state").c_str(), 0);
    const Folder folder;
    const std::string out = output.empty() ? folder.file("out") : output;
    const std::string err = folder.file("err");
    std::string program = TREADWELL_BINARY "/bin/treadwell-cli";
    std::vector<std::string> texts = arguments;
    std::vector<char*> argv{program.data()};
    for (std::string& text : texts) argv.push_back(text.data());
    argv.push_back(nullptr);

    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    constexpr int kCreate = O_WRONLY | O_CREAT;
    posix_spawn_file_actions_addopen(&actions, STDOUT_FILENO, out.c_str(), kCreate, 0600);
    posix_spawn_file_actions_addopen(&actions, STDERR_FILENO, err.c_str(), kCreate, 0600);
    pid_t child = 0;
    const int failed = posix_spawn(&child, program.c_str(), &actions, nullptr, argv.data(), environ);
    posix_spawn_file_actions_destroy(&actions);
    if (failed != 0) throw std::runtime_error(program + " cannot be run");
    int status = 0;
    waitpid(child, &status, 0);
    return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, output.empty() ? contentOf(out) : "",
            contentOf(err)};
}

Folder::Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "treadwell-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no folder for the test");
    m_path = pattern;
}

Folder::~Folder() {
    std::filesystem::remove_all(m_path);
}

std::string Folder::file(const std::string& name, const std::string& content) const {
    const std::string path = file(name);
    std::ofstream{path, std::ios::binary} << content;
    return path;
}

}  // namespace treadwell::cli
