#pragma once
#include <optional>

namespace CLI {
class App;
}

namespace wrapgauge {

// --edge-mm: mesh edge length instead of the plan's. `edge_mm` outlives the parsing.
void add_mesh_edge_option(CLI::App& command, std::optional<double>& edge_mm);

}  // namespace wrapgauge
