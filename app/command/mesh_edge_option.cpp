#include "app/command/mesh_edge_option.hpp"

#include <CLI/CLI.hpp>

namespace wrapgauge {

void add_mesh_edge_option(CLI::App& command, std::optional<double>& edge_mm) {
  command.add_option("--edge-mm", edge_mm, "Mesh edge length instead of the plan's, 1 to 20 mm")
      ->check(CLI::Range(1.0, 20.0))
      ->type_name("MM");
}

}  // namespace wrapgauge
