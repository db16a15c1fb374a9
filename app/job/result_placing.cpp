#include "app/job/result_placing.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <system_error>

#include "model/core/file.hpp"
#include "model/core/said_problem.hpp"
#include "model/core/staging_folder.hpp"
#include "model/core/system_words.hpp"
#include "model/core/temporary_file.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

constexpr const char* kIncomplete = "INCOMPLETE.txt";
constexpr const char* kIncompleteWords =
    "The program was stopped while it put results in their place here, one by one.\n"
    "Files of two runs may lie beside each other: run the command again.\n";

// note.md -> note.edited.md, note.edited-2.md ...
std::string name_aside(const fs::path& folder, const std::string& name) {
  const std::string stem = fs::path(name).stem().string(), ending = fs::path(name).extension().string();
  std::error_code error;
  for (int number = 1;; ++number) {
    std::string aside = stem + ".edited";
    if (number > 1) aside.append("-").append(std::to_string(number));
    aside += ending;
    if (!fs::exists(fs::symlink_status(folder / aside, error))) return aside;
  }
}

Result<std::monostate> write_all_into(const fs::path& folder, const std::vector<ResultFile>& files) {
  for (const ResultFile& file : files)
    if (auto written = write_file_atomically(folder / file.name, file.bytes); !written) return written;
  flush_folder(folder);
  return std::monostate{};
}

Result<std::monostate> keep_aside(const Placing& placing, const fs::path& to) {
  for (const auto& [name, aside] : placing.aside) {
    std::error_code error;
    fs::create_hard_link(placing.folder / name, to / aside, error);
    if (error && !fs::copy_file(placing.folder / name, to / aside, error))
      return bad_input(Phrase::worded(
          "Cannot keep %1 as %2: %3.",
          {name_of((placing.folder / name).string()), name_of(aside), system_words(error.value())}));
  }
  return std::monostate{};
}

Phrase one_by_one(const Placing& placing, const Phrase& why) {
  return Phrase::worded("The results were put into %1 one by one, not all at once: %2.",
                        {name_of(placing.folder.string()), why});
}

Result<std::monostate> put_in_place(const Placing& placing, const fs::path& staged) {
  if (auto kept = keep_aside(placing, placing.folder); !kept) return kept;
  if (auto marked = write_file_atomically(placing.folder / kIncomplete, kIncompleteWords); !marked)
    return marked;
  flush_folder(placing.folder);
  for (const ResultFile& file : placing.files)
    if (::rename((staged / file.name).c_str(), (placing.folder / file.name).c_str()) != 0)
      return cannot_write(placing.folder / file.name, errno);
  for (const std::string& name : placing.going)
    if (std::none_of(placing.files.begin(), placing.files.end(),
                     [&](const ResultFile& file) { return file.name == name; }))
      ::unlink((placing.folder / name).c_str());
  flush_folder(placing.folder);
  ::unlink((placing.folder / kIncomplete).c_str());
  return std::monostate{};
}

Result<std::monostate> place_one_by_one(const Placing& placing) {
  std::error_code error;
  const auto staging = StagingFolder::in(placing.folder, kStagingInside);
  if (!staging) return staging.problem();
  if (auto written = write_all_into(staging->path(), placing.files); !written) return written;
  return put_in_place(placing, staging->path());
}

bool leaves_out(const Placing& placing, const std::string& name) {
  return placing.going.contains(name) || name == kIncomplete || name.starts_with(kStagingInside);
}

// `why`: what kept it from being swapped, where nothing is changed yet.
Result<std::monostate> place_as_whole(const Placing& placing, std::optional<Phrase>& why) {
  const auto staging = StagingFolder::in(placing.folder.parent_path(), staging_beside(placing.folder));
  if (!staging) return staging.problem();
  if (auto written = write_all_into(staging->path(), placing.files); !written) return written;
  std::error_code error;
  const bool there = fs::exists(placing.folder, error);
  const auto left_out = [&](const std::string& name) { return leaves_out(placing, name); };
  if (there) {
    const auto brought = bring_over(placing.folder, staging->path(), left_out);
    if (!brought) {
      why =
          Phrase::worded("what else lies there cannot be brought along (%1)", {phrase_of(brought.problem())});
      return std::monostate{};
    }
    if (auto kept = keep_aside(placing, staging->path()); !kept) return kept;
    struct stat status {};
    if (::stat(placing.folder.c_str(), &status) == 0)
      ::chmod(staging->path().c_str(), status.st_mode & 07777);
  }
  flush_folder(staging->path());
  if (const auto failed = swap_folders(staging->path(), placing.folder)) {
    why = Phrase::worded("this disk or system cannot swap folders (%1)", {system_words(*failed)});
    return std::monostate{};
  }
  flush_folder(placing.folder.parent_path());
  // What came into the old folder meanwhile, such as a run of another part.
  if (there) return bring_over(staging->path(), placing.folder, left_out);
  return std::monostate{};
}

bool stays(const ResultSet& set, const std::vector<ResultSet>& written,
           const std::set<std::string>& replaced) {
  for (const ResultSet& other : written)
    if (other.command == set.command ||
        (!outlives_inputs(set) && !outlives_inputs(other) && !changed_inputs(set, other.origin).empty()))
      return false;
  return std::none_of(set.files.begin(), set.files.end(),
                      [&](const ManifestFile& file) { return replaced.contains(file.name); });
}

void let_go(const ResultSet& set, const std::set<std::string>& replaced, Placing& placing,
            std::vector<Phrase>& said) {
  std::error_code error;
  // What a stopped run put in place already differs from the manifest too.
  const bool half = fs::exists(placing.folder / kIncomplete, error);
  std::string gone;
  for (const ManifestFile& file : set.files) {
    const auto bytes = read_file(placing.folder / file.name);
    if (!bytes) continue;
    const bool edited = sha256_of(*bytes) != file.sha256, taken = replaced.contains(file.name);
    if (edited && !taken) continue;  // the user's own now
    placing.going.insert(file.name);
    if (!taken) gone += (gone.empty() ? "" : ", ") + file.name;
    if (!edited || half) continue;
    const std::string aside = placing.aside[file.name] = name_aside(placing.folder, file.name);
    said.push_back(Phrase::worded("%1 was edited after it was written: it is kept as %2.",
                                  {name_of(file.name), name_of(aside)}));
  }
  if (!gone.empty())
    said.push_back(Phrase::worded("Gone with the results that were replaced: %1, of `wrapgauge %2`.",
                                  {name_of(gone), name_of(set.command)}));
}

}  // namespace

std::string staging_beside(const fs::path& folder) {
  return std::string(1, '.').append(folder.filename().string()).append(kStagingInside);
}

void sweep_stopped(const fs::path& folder) {
  for (const auto& [place, begin] :
       {std::pair<fs::path, std::string>{folder.parent_path(), staging_beside(folder)},
        {folder, kStagingInside}})
    if (::access(place.c_str(), W_OK) == 0) (void)StagingFolder::in(place, begin);
}

void sort_old_sets(const ResultManifest& old, ResultManifest& now, Placing& placing,
                   std::vector<Phrase>& said) {
  const std::set<std::string> replaced = placing.going;
  const std::vector<ResultSet> written = now.sets;
  for (const ResultSet& set : old.sets)
    if (stays(set, written, replaced))
      now.sets.push_back(set);
    else
      let_go(set, replaced, placing, said);
}

Result<std::monostate> place(const Placing& placing, const std::optional<Phrase>& no_swap,
                             std::vector<Phrase>& said) {
  std::optional<Phrase> why = no_swap;
  if (!why) {
    auto placed = place_as_whole(placing, why);
    if (!placed || !why) return placed;
  }
  said.push_back(one_by_one(placing, *why));
  return place_one_by_one(placing);
}

}  // namespace wrapgauge
