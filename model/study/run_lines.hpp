#pragma once
// The file in which a part of a study keeps its runs, a line of JSON each.

#include <filesystem>
#include <nlohmann/json_fwd.hpp>
#include <optional>
#include <string>
#include <variant>

#include "model/core/result.hpp"

namespace wrapgauge {

// JSON in one line; a byte that is no UTF-8 is replaced.
std::string one_line(const nlohmann::ordered_json& json);

// {"run": name, "of": identity, "answer": answer} in one line. Both are JSON texts.
std::string run_line(const std::string& name, const std::string& identity, const std::string& answer);

struct RunLine {
  std::string identity, answer;  // JSON texts, as they were written
};
// None: the line was cut short, or is another's.
std::optional<RunLine> read_run_line(const std::string& line);

// Open for appending, by this program alone.
class RunLineFile {
 public:
  // Made if it is missing; a last line that was cut short is ended, so that the next one stands by itself.
  // Problems: it cannot be written; another program has it open for appending.
  static Result<RunLineFile> open(const std::filesystem::path& file);
  RunLineFile(RunLineFile&& other) noexcept;
  RunLineFile& operator=(RunLineFile&&) = delete;
  ~RunLineFile();

  // The whole line is on the disk when this returns. Problem: it cannot be written (a full disk).
  Result<std::monostate> append(const std::string& line);

 private:
  RunLineFile(std::filesystem::path file, int descriptor);

  std::filesystem::path file_;
  int descriptor_ = -1;
};

}  // namespace wrapgauge
