#pragma once
// A set of results in a folder: all of it or nothing of it.
//
// The files are written to a new folder beside the one in use and flushed, with a manifest; then the two
// change names in one step. A program that is killed, a disk that fills up or a run that fails leaves the old
// set whole, and says in OUT-OF-DATE.txt that it is older than its inputs. The user's own files in the folder
// are kept. Where a folder was not made for results, or the system cannot swap it, the files are put in place
// one by one, which is said; INCOMPLETE.txt stands there meanwhile.

#include <filesystem>
#include <string>
#include <variant>
#include <vector>

#include "app/job/result_manifest.hpp"
#include "model/core/phrase.hpp"
#include "model/core/result.hpp"

namespace wrapgauge {

struct ResultFile {
  std::string name, bytes;
};

// What one command writes.
struct ResultPart {
  std::string command;  // "estimate"
  std::vector<ResultFile> files;
};

// Problem: the first of the files that could not be made.
Result<ResultPart> part_of(std::string command,
                           std::vector<std::pair<std::string, Result<std::string>>> files);

class ResultFolder {
 public:
  // Before anything long is started. Sweeps what stopped programs left, tries whether a set can be written
  // there and marks the old one where it is out of date. Problem: the folder cannot be written, or its disk
  // is full.
  static Result<ResultFolder> open(const std::filesystem::path& folder, ResultOrigin origin);

  // All parts at once. What another command left in the folder stays if it was made from the same inputs,
  // else it goes too. A file that was edited after it was written is kept under another name.
  Result<std::monostate> write(const std::vector<ResultPart>& parts);

  // What the user should know of the last writing: sentences.
  const std::vector<Phrase>& said() const { return said_; }

 private:
  ResultFolder(std::filesystem::path folder, ResultOrigin origin)
      : folder_(std::move(folder)), origin_(std::move(origin)) {}

  std::filesystem::path folder_;  // with links followed
  ResultOrigin origin_;
  std::vector<Phrase> said_;
};

}  // namespace wrapgauge
