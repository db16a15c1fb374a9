#pragma once
// The tables that the program ships, as they were when it was built: what a folder of one's own is held
// against.

#include <optional>
#include <string_view>

namespace wrapgauge {

// Its bytes, by file name: "limits.json", "silicones.json", "tissues.json", "comparisons.json". None: no
// table of that name is shipped.
std::optional<std::string_view> shipped_table(std::string_view name);

}  // namespace wrapgauge
