#include "model/plan/plan_to_json.hpp"

#include <nlohmann/json.hpp>

#include "model/layout/drawing_map_json.hpp"
#include "model/layout/layout_json.hpp"
#include "model/plan/mend_json.hpp"
#include "model/plan/plan_numbers.hpp"
#include "model/plan/region_json.hpp"
#include "model/plan/site_json.hpp"
#include "model/plan/supply_json.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

ordered_json body_json(const BodyFile& body) {
  ordered_json out{{"file", body.file.string()}};
  if (body.unit) out["unit"] = unit_name(*body.unit);
  if (body.axis_direction) out["axis"] = direction_to_json(*body.axis_direction);
  if (body.front) out["front"] = direction_to_json(*body.front);
  if (body.side) out["side"] = side_name(*body.side);
  if (!body.mend.empty()) out["repair"] = mend_steps_to_json(body.mend);
  return out;
}

ordered_json body_json(const BodyForm& body) {
  ordered_json out{{"form", body.form}};
  if (body.person.sex) out["sex"] = sex_name(*body.person.sex);
  if (body.person.percentile) out["percentile"] = *body.person.percentile;
  if (body.person.side != BodySide::kRight) out["side"] = side_name(body.person.side);
  for (const auto& [name, value] : body.parameters) out["parameters"][name] = value;
  return out;
}

ordered_json tissue_json(const Plan& plan) {
  ordered_json out = ordered_json::object();
  if (!plan.tissue_site.empty()) out["site"] = plan.tissue_site;
  if (plan.posture) out["posture"] = posture_name(*plan.posture);
  if (plan.tissue_stiffness_factor) out["stiffness_factor"] = *plan.tissue_stiffness_factor;
  if (plan.tissue_poisson) out["poisson"] = *plan.tissue_poisson;
  if (plan.tissue_model == TissueModel::kCoupled) out["model"] = "coupled";
  if (!plan.tissue_depth_mm.empty()) out["depth_mm"] = plan.tissue_depth_mm;
  return out;
}

ordered_json drawn_layout_json(const DrawnLayout& drawn) {
  ordered_json out{{"drawing", drawn.file.string()}};
  if (const auto* file = std::get_if<std::filesystem::path>(&drawn.map))
    out["map"] = file->string();
  else
    out["map"] = drawing_map_to_json(std::get<DrawingMap>(drawn.map));
  return out;
}

ordered_json layout_part(const Plan& plan) {
  if (plan.layout_drawing) return drawn_layout_json(*plan.layout_drawing);
  if (plan.layout_file) return {{"file", plan.layout_file->string()}};
  return ordered_json(layout_to_json(plan.layout));
}

ordered_json wear_json(const Placement& placement) {
  ordered_json out;
  if (const auto* point = std::get_if<AnchorAtPoint>(&placement.anchor)) {
    out["anchor"]["point_mm"] = in_mm(point->point_m);
  } else {
    const auto& station = std::get<AnchorAtStation>(placement.anchor);
    out["anchor"] = {{"station_mm", tidy(station.station / mm)}, {"angle_deg", station.angle_deg}};
  }
  if (placement.layout_point_m) {
    const Vec2& point = *placement.layout_point_m;
    out["layout_point_mm"] = {tidy(1e3 * point.x()), tidy(1e3 * point.y())};
  }
  out["turn_deg"] = placement.turn_deg;
  return out;
}

ordered_json inflation_json(const std::vector<InletProgram>& programs) {
  ordered_json out = ordered_json::array();
  for (const InletProgram& program : programs) {
    ordered_json item{{"inlet", program.inlet}};
    if (const auto* pressure = std::get_if<Pressure>(&program.target))
      item["pressure_kpa"] = tidy(*pressure / kPa);
    else if (const auto* volume = std::get_if<Volume>(&program.target))
      item["volume_ml"] = tidy(*volume / mL);
    else {
      item["pushed_air_ml"] = tidy(std::get<TrappedAir>(program.target).pushed / mL);
      item["dead_ml"] = tidy(std::get<TrappedAir>(program.target).dead / mL);
    }
    for (const ProgrammeStep& step : program.steps)
      item["steps"].push_back({{"level", tidy(step.level)},
                               {"ramp_s", tidy(step.ramp / second)},
                               {"hold_s", tidy(step.hold / second)}});
    out.push_back(std::move(item));
  }
  return out;
}

ordered_json limits_json(const Plan& plan) {
  ordered_json out{{"use", use_name(plan.use)}};
  if (plan.limits_file) out["file"] = plan.limits_file->string();
  if (plan.limits_override_reason) out["override_reason"] = *plan.limits_override_reason;
  return out;
}

ordered_json session_json(const Session& session) {
  ordered_json out{{"minutes", tidy(session.length / minute)}};
  if (session.hold) out["hold_s"] = tidy(*session.hold / second);
  if (session.off) out["off_s"] = tidy(*session.off / second);
  out["ramp_s"] = tidy(session.ramp / second);
  return out;
}

ordered_json wearers_json(const Wearers& wearers) {
  ordered_json out;
  if (!wearers.population.empty()) out["population"] = wearers.population;
  if (wearers.number) out["number"] = *wearers.number;
  if (wearers.posture) out["posture"] = wearer_posture_name(*wearers.posture);
  if (wearers.above_heart) out["above_heart_cm"] = tidy(*wearers.above_heart / mm / 10.0);
  if (!wearers.watched_by.empty()) out["watched_by"] = wearers.watched_by;
  if (!wearers.how_they_tell.empty()) out["how_they_tell"] = wearers.how_they_tell;
  return out;
}

}  // namespace

ordered_json plan_to_json(const Plan& plan) {
  ordered_json out{{"wrapgauge-plan", 1}, {"name", plan.name}};
  out["body"] = std::visit([](const auto& body) { return body_json(body); }, plan.body);
  if (plan.part) out["body"]["part"] = body_part_name(*plan.part);
  if (const auto& word = plan.sites_confirmed)
    out["body"]["sites_confirmed"] = {{"who", word->who}, {"when", word->when}, {"why", word->why}};
  out["bony_sites"] = sites_to_json(plan.bony_sites);
  if (!plan.landmarks.empty()) out["landmarks"] = landmarks_to_json(plan.landmarks);
  if (!plan.regions.empty()) out["regions"] = regions_to_json(plan.regions);
  const ordered_json tissue = tissue_json(plan);
  if (!tissue.empty()) out["tissue"] = tissue;
  out["layout"] = layout_part(plan);
  out["wear"] = wear_json(plan.placement);
  out["friction"] = plan.friction;
  out["inflation"] = inflation_json(plan.inflation);
  out["limits"] = limits_json(plan);
  if (plan.calibration) out["calibration"] = plan.calibration->generic_string();
  if (plan.session) out["session"] = session_json(*plan.session);
  if (const auto& clinician = plan.cleared_by)
    out["cleared_by"] = {{"name", clinician->name}, {"role", clinician->role}, {"date", clinician->date}};
  if (const ordered_json wearers = wearers_json(plan.wearers); !wearers.is_null()) out["wearers"] = wearers;
  if (!plan.date.empty()) out["date"] = plan.date;
  if (const ordered_json supply = supply_to_json(plan.supply); !supply.is_null()) out["supply"] = supply;
  if (const ordered_json filling = filling_to_json(plan.filling); !filling.is_null())
    out["filling"] = filling;
  out["mesh"]["edge_mm"] = tidy(plan.mesh_edge / mm);
  if (plan.mesh_seam_edge) out["mesh"]["seam_edge_mm"] = tidy(*plan.mesh_seam_edge / mm);
  if (plan.mesh_seam_band) out["mesh"]["seam_band_mm"] = tidy(*plan.mesh_seam_band / mm);
  out["solver"] = {{"bending", plan.solver.bending},
                   {"relaxed_compression", plan.solver.relaxed_compression},
                   {"compare_wrinkled", plan.compare_wrinkled},
                   {"steps", plan.solver.steps}};
  return out;
}

}  // namespace wrapgauge
