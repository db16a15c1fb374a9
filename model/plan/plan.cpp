#include "model/plan/plan.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <system_error>

#include "model/core/file.hpp"
#include "model/core/json_object.hpp"
#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {
namespace {

// The same file, seen from another folder; as it was where that cannot be said.
std::filesystem::path seen_from(const std::filesystem::path& new_folder,
                                const std::filesystem::path& old_folder, const std::filesystem::path& file) {
  if (file.is_absolute()) return file;
  std::error_code error;
  const auto from = [](const std::filesystem::path& folder) {
    return folder.empty() ? std::filesystem::path(".") : folder;
  };
  const std::filesystem::path relative =
      std::filesystem::relative(from(old_folder) / file, from(new_folder), error);
  return error || relative.empty() ? file : relative;
}

}  // namespace

FlatMeshOptions mesh_of_plan(const Plan& plan, double factor) {
  FlatMeshOptions mesh;
  mesh.edge = factor * plan.mesh_edge;
  mesh.seam_edge = std::min(mesh.edge, factor * plan.mesh_seam_edge.value_or(plan.mesh_edge));
  mesh.seam_band = plan.mesh_seam_band.value_or(mesh.seam_band);
  return mesh;
}

Result<Plan> read_plan(const std::filesystem::path& file) {
  const Result<nlohmann::json> json = read_json(file);
  if (!json) return json.problem();
  return plan_from_json(*json, file.parent_path(), file.filename().string());
}

std::string plan_bytes(const Plan& plan, const std::filesystem::path& file) {
  Plan moved = plan;
  moved.folder = file.parent_path();
  if (moved.folder != plan.folder) {
    if (auto* body = std::get_if<BodyFile>(&moved.body))
      body->file = seen_from(moved.folder, plan.folder, body->file);
    if (moved.limits_file) moved.limits_file = seen_from(moved.folder, plan.folder, *moved.limits_file);
    if (moved.calibration) moved.calibration = seen_from(moved.folder, plan.folder, *moved.calibration);
    if (moved.layout_drawing) {
      moved.layout_drawing->file = seen_from(moved.folder, plan.folder, moved.layout_drawing->file);
      if (auto* map = std::get_if<std::filesystem::path>(&moved.layout_drawing->map))
        *map = seen_from(moved.folder, plan.folder, *map);
    }
    if (moved.layout_file) moved.layout_file = seen_from(moved.folder, plan.folder, *moved.layout_file);
  }
  constexpr auto kReplaceBadText = nlohmann::ordered_json::error_handler_t::replace;
  return plan_to_json(moved).dump(2, ' ', false, kReplaceBadText) + "\n";
}

Result<std::monostate> write_plan(const Plan& plan, const std::filesystem::path& file) {
  return write_file_atomically(file, plan_bytes(plan, file));
}

}  // namespace wrapgauge
