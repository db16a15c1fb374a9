#include "app/job/result_folder.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <set>
#include <system_error>

#include "app/job/result_placing.hpp"
#include "model/core/clean_text.hpp"
#include "model/core/file.hpp"
#include "model/core/staging_folder.hpp"
#include "model/core/system_words.hpp"
#include "model/core/temporary_file.hpp"
#include "model/core/version.hpp"

namespace wrapgauge {
namespace {

namespace fs = std::filesystem;

constexpr const char* kStale = "OUT-OF-DATE.txt";
constexpr off_t kRoom = 8 << 20;  // a set with its note takes about 2 MiB

// The folder with links followed, whether or not it is there yet.
Result<fs::path> resolved(const fs::path& folder) {
  std::error_code error;
  fs::path path = fs::weakly_canonical(fs::absolute(folder, error), error);
  if (error)
    return bad_input(Phrase::worded("folder '%1' cannot be found: %2.",
                                    {name_of(folder.string()), system_words(error.value())}));
  if (path.filename().empty()) path = path.parent_path();
  if (fs::exists(path, error) && !fs::is_directory(path, error))
    return bad_input(
        Phrase::worded("'%1' is a file: name a folder for the results.", {name_of(folder.string())}));
  return path;
}

// Makes the folders above that are missing, and takes them away again if nothing came into them.
class MissingFolders {
 public:
  explicit MissingFolders(const fs::path& wanted) {
    std::error_code error;
    for (fs::path at = wanted; !at.empty() && !fs::exists(at, error); at = at.parent_path())
      made_.push_back(at);
    fs::create_directories(wanted, error_);
  }
  MissingFolders(const MissingFolders&) = delete;
  MissingFolders& operator=(const MissingFolders&) = delete;
  ~MissingFolders() {
    for (const fs::path& folder : made_) ::rmdir(folder.c_str());  // only where it is empty
  }
  const std::error_code& error() const { return error_; }

 private:
  std::vector<fs::path> made_;
  std::error_code error_;
};

// Room for a set, tried with a file that goes again.
Result<std::monostate> try_room(const fs::path& place, const fs::path& folder) {
  const fs::path file = place / "room";
  const int descriptor = ::open(file.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (descriptor < 0) return cannot_write_into(folder, errno);
  const int error = ::posix_fallocate(descriptor, 0, kRoom);
  ::close(descriptor);
  ::unlink(file.c_str());
  if (error == ENOSPC || error == EDQUOT || error == EFBIG)
    return bad_input(
        Phrase::worded("There is no room for results in %1: less than 8 MB can be written. Make room, or "
                       "name another folder.",
                       {name_of(folder.string())}));
  return std::monostate{};
}

std::string stale_words(const ResultManifest& manifest, const ResultOrigin& now) {
  std::string words;
  for (const ResultSet& set : manifest.sets)
    if (const std::string changed = changed_inputs(set, now); !changed.empty() && !outlives_inputs(set))
      words += "The results of `wrapgauge " + set.command +
               "` in this folder are out of date.\nChanged since: " + changed + ".\n";
  return words.empty() ? words : words + "Run the command again.\n";
}

Result<std::monostate> mark_stale(const fs::path& folder, const ResultOrigin& now) {
  const auto manifest = read_manifest(folder);
  const std::string words = manifest ? stale_words(*manifest, now) : "";
  if (!words.empty()) return write_file_atomically(folder / kStale, clean_lines(words));
  ::unlink((folder / kStale).c_str());
  return std::monostate{};
}

bool is_within(const fs::path& inner, const fs::path& outer) {
  const auto [at, unused] = std::mismatch(outer.begin(), outer.end(), inner.begin(), inner.end());
  return at == outer.end();
}

constexpr std::size_t kCarried = 1000;  // entries of the user's that a swap brings over

bool holds_too_much(const fs::path& folder) {
  std::error_code error;
  std::size_t entries = 0;
  for (fs::recursive_directory_iterator at(folder, error), end; !error && at != end; at.increment(error))
    if (++entries > kCarried) return true;
  return bool(error);
}

// Why the folder is not to be swapped; empty: it may be.
std::optional<Phrase> no_swap_because(const fs::path& folder, bool own) {
  std::error_code error;
  if (!fs::exists(folder, error)) return std::nullopt;
  if (!own) return Phrase::worded("it also holds files that are not results");
  if (const fs::path here = fs::current_path(error); !error && is_within(here, folder))
    return Phrase::worded("the program was started in it");
  struct stat status {};
  if (::stat(folder.c_str(), &status) != 0 || status.st_uid != ::geteuid())
    return Phrase::worded("it belongs to another user");
  if (::access(folder.parent_path().c_str(), W_OK) != 0)
    return Phrase::worded("nothing may be written beside it");
  if (holds_too_much(folder)) return Phrase::worded("it holds more than 1000 files");
  return std::nullopt;
}

// Whether the folder was made for results: it is new, empty or holds nothing but such.
bool is_own(const fs::path& folder, const std::optional<ResultManifest>& manifest,
            const std::set<std::string>& names) {
  if (manifest) return manifest->own_folder;
  std::error_code error;
  for (fs::directory_iterator at(folder, error), end; !error && at != end; at.increment(error)) {
    const std::string name = at->path().filename().string();
    if (!names.contains(name) && name != "runs") return false;
  }
  return true;
}

}  // namespace

Result<ResultPart> part_of(std::string command,
                           std::vector<std::pair<std::string, Result<std::string>>> files) {
  ResultPart part{std::move(command), {}};
  for (auto& [name, bytes] : files) {
    if (!bytes) return bytes.problem();
    part.files.push_back({std::move(name), std::move(bytes).value()});
  }
  return part;
}

Result<ResultFolder> ResultFolder::open(const fs::path& folder, ResultOrigin origin) {
  const auto path = resolved(folder);
  if (!path) return path.problem();
  const MissingFolders above(path->parent_path());
  if (above.error())
    return bad_input(Phrase::worded("folder '%1' could not be made: %2.",
                                    {name_of(folder.string()), system_words(above.error().value())}));
  std::error_code error;
  const bool there = fs::exists(*path, error);
  const bool beside = ::access(path->parent_path().c_str(), W_OK) == 0;
  if (there) sweep_stopped(*path);
  const auto staging = StagingFolder::in(there && !beside ? *path : path->parent_path(),
                                         there && !beside ? kStagingInside : staging_beside(*path));
  if (!staging) return staging.problem();
  if (there && ::access(path->c_str(), W_OK) != 0) return cannot_write_into(folder, errno);
  if (auto room = try_room(staging->path(), folder); !room) return room.problem();
  if (there)
    if (auto marked = mark_stale(*path, origin); !marked) return marked.problem();
  return ResultFolder(*path, std::move(origin));
}

Result<std::monostate> ResultFolder::write(const std::vector<ResultPart>& parts) {
  said_.clear();
  Placing placing{folder_, {}, {kManifestName, kStale}, {}};
  std::vector<ResultSet> sets;
  for (const ResultPart& part : parts) {
    sets.push_back({part.command, origin_, std::string(program_version()), {}});
    for (const ResultFile& file : part.files) {
      sets.back().files.push_back({file.name, file.bytes.size(), sha256_of(file.bytes)});
      placing.going.insert(file.name);
      placing.files.push_back(file);
    }
  }
  const auto old = read_manifest(folder_);
  ResultManifest manifest{is_own(folder_, old, placing.going), std::move(sets)};
  if (old) sort_old_sets(*old, manifest, placing, said_);
  placing.files.push_back({kManifestName, manifest_json(manifest)});
  const MissingFolders above(folder_.parent_path());
  return place(placing, no_swap_because(folder_, manifest.own_folder), said_);
}

}  // namespace wrapgauge
