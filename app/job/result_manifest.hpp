#pragma once
// What lies in a folder of results: whose files they are and what they were made from.

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "model/note/summary.hpp"

namespace wrapgauge {

// What results are made from.
struct ResultOrigin {
  std::string plan;                 // its name
  std::vector<InputFile> inputs;    // the plan's file first, where it has one
  std::optional<std::string> date;  // only where one is given
};

struct ManifestFile {
  std::string name;
  std::size_t bytes = 0;
  std::string sha256;
};

// The files of one command.
struct ResultSet {
  std::string command;  // "estimate"
  ResultOrigin origin;
  std::string program;  // its version
  std::vector<ManifestFile> files;
};

// Whether it stays beside results of other inputs: readings and a calibration, which are work of the user's
// that a plan names. Whether they still hold is asked where they are used.
bool outlives_inputs(const ResultSet& set);

struct ResultManifest {
  bool own_folder = true;  // made for results; else the folder held other things before
  std::vector<ResultSet> sets;
};

inline constexpr const char* kManifestName = "manifest.json";

std::string manifest_json(const ResultManifest& manifest);

// Nothing where the folder has none, or one that cannot be read: what lies there then counts as the user's.
std::optional<ResultManifest> read_manifest(const std::filesystem::path& folder);

// In words, which inputs are not those of the set any more: "plan forearm-cuff.json, limits limits.json";
// empty: none.
std::string changed_inputs(const ResultSet& set, const ResultOrigin& now);

// SHA-256 in hexadecimal.
std::string sha256_of(const std::string& bytes);

}  // namespace wrapgauge
