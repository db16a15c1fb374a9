#pragma once
// A spread written down and read again.

#include <filesystem>
#include <string>
#include <vector>

#include "model/study/spread.hpp"

namespace wrapgauge {

// Same spread, same bytes, whatever the order, parts and machines of its runs.
std::string spread_json(const Spread& spread);
std::string spread_markdown(const Spread& spread);
// A few sentences for the terminal.
std::vector<std::string> spread_words(const Spread& spread);

// For a note: what the bands rest on, the band of the peak anywhere, and what moves it most.
std::string spread_brief(const Spread& spread);

// What other commands take from spread.json: everything but ranges and sources of the inputs. Problems: no
// such file, another format, or inputs other than `inputs_hash`.
Result<Spread> read_spread(const std::filesystem::path& file, const std::string& inputs_hash);

}  // namespace wrapgauge
