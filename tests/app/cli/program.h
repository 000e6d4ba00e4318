#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace treadwell::cli {

inline const std::string kExamples = TREADWELL_SOURCE "/examples/";

/// What the real command line answered.
struct Answered {
    int status = -1;  ///< exit status; -1 where it ended by a signal
    std::string out;
    std::string err;
};

/// Runs build/bin/treadwell-cli and waits for it. `output` stands in for the file behind its stdout.
[[nodiscard]] Answered runProgram(const std::vector<std::string>& arguments, const std::string& output = {});

/// A folder of its own for a test, emptied at the end.
class Folder {
  public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    [[nodiscard]] std::string file(const std::string& name) const { return (m_path / name).string(); }
    /// Writes a file and gives its path.
    [[nodiscard]] std::string file(const std::string& name, const std::string& content) const;

  private:
    std::filesystem::path m_path;
};

}  // namespace treadwell::cli
