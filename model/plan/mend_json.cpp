#include "model/plan/mend_json.hpp"

#include "model/plan/plan_numbers.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

DropTable drop_table_from(JsonObject& object) {
  DropTable step;
  step.tolerance = object.number_or("tolerance_mm", step.tolerance / mm, {0.1, 50.0, "mm"}) * mm;
  step.least_share = object.number_or("least_share", step.least_share, {0.02, 0.98, ""});
  return step;
}

CutLimb cut_from(JsonObject& object) {
  CutLimb step{object.number("from_mm", kStation) * mm, object.number("to_mm", kStation) * mm};
  if (!object.failed() && step.to <= step.from)
    object.fail(Phrase::worded("to_mm must be larger than from_mm."));
  return step;
}

PoseLimb pose_from(JsonObject& object) {
  PoseLimb step;
  const std::string distal =
      object.has("distal") ? object.choice("distal", {"thin", "thick", "as it is", "turned"}) : "thin";
  step.distal = distal == "thin"       ? DistalEnd::kThin
                : distal == "thick"    ? DistalEnd::kThick
                : distal == "as it is" ? DistalEnd::kAsItIs
                                       : DistalEnd::kTurned;
  step.turn_deg = object.number_or("turn_deg", 0.0, {-360.0, 360.0, "degrees"});
  return step;
}

ordered_json fields(const DropTable& step) {
  return {{"tolerance_mm", in_mm(step.tolerance)}, {"least_share", step.least_share}};
}
ordered_json fields(const DropCrumbs& step) {
  return {{"below_share", step.below_share}};
}
ordered_json fields(const FillHoles& step) {
  return {{"up_to_mm", in_mm(step.up_to)}};
}
ordered_json fields(const Smooth& step) {
  return {{"passes", step.passes}};
}
ordered_json fields(const Decimate& step) {
  return {{"edge_mm", in_mm(step.edge)}};
}
ordered_json fields(const CutLimb& step) {
  return {{"from_mm", in_mm(step.from)}, {"to_mm", in_mm(step.to)}};
}
ordered_json fields(const PoseLimb& step) {
  constexpr const char* distal[] = {"thin", "thick", "as it is", "turned"};
  return {{"distal", distal[static_cast<int>(step.distal)]}, {"turn_deg", step.turn_deg}};
}
ordered_json fields(const MirrorLimb&) {
  return ordered_json::object();
}

}  // namespace

MendStep mend_step_from_json(JsonObject& object) {
  const std::string step = object.choice(
      "step", {"drop table", "drop crumbs", "fill holes", "smooth", "decimate", "cut", "pose", "mirror"});
  if (step == "drop table") return drop_table_from(object);
  if (step == "drop crumbs")
    return DropCrumbs{object.number_or("below_share", DropCrumbs{}.below_share, {0.0, 1.0, ""})};
  if (step == "fill holes")
    return FillHoles{object.number_or("up_to_mm", FillHoles{}.up_to / mm, {0.1, 500.0, "mm"}) * mm};
  if (step == "smooth") return Smooth{object.whole_number_or("passes", Smooth{}.passes, 1, 200)};
  if (step == "decimate")
    return Decimate{object.number_or("edge_mm", Decimate{}.edge / mm, {0.5, 30.0, "mm"}) * mm};
  if (step == "cut") return cut_from(object);
  if (step == "pose") return pose_from(object);
  return MirrorLimb{};
}

ordered_json mend_steps_to_json(const std::vector<MendStep>& steps) {
  ordered_json out = ordered_json::array();
  for (const MendStep& step : steps) {
    ordered_json item{{"step", step_name(kind_of(step))}};
    item.update(std::visit([](const auto& one) { return fields(one); }, step));
    out.push_back(std::move(item));
  }
  return out;
}

}  // namespace wrapgauge
