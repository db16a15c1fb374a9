#include "model/study/varied_plan.hpp"

#include <algorithm>
#include <cassert>

namespace wrapgauge {
namespace {

constexpr Length kThinnest = 0.1 * mm;  // a sheet stays a sheet

Vec3 widened(const Axis& axis, double factor, const Vec3& point) {
  const Vec3 from = point - axis.origin_m;
  const Vec3 along = from.dot(axis.direction) * axis.direction;
  return axis.origin_m + along + factor * (from - along);
}

void widen(double factor, VariedPlan& varied) {
  const Axis axis = varied.body.axis;
  Points3& vertices = varied.body.surface.vertices_m;
  for (Eigen::Index v = 0; v < vertices.rows(); ++v)
    vertices.row(v) = widened(axis, factor, vertices.row(v)).transpose();
  for (auto* sites : {&varied.body.bony_sites, &varied.plan.bony_sites})
    for (BonySite& site : *sites) site.point_m = widened(axis, factor, site.point_m);
  if (auto* at = std::get_if<AnchorAtPoint>(&varied.plan.placement.anchor))
    at->point_m = widened(axis, factor, at->point_m);
}

void scale_depth(double factor, VariedPlan& varied) {
  varied.body.tissue_depth_m *= factor;
  for (TissueSite& tissue : varied.resources.tissues) tissue.depth = tissue.depth * factor;
  for (auto* sites : {&varied.body.bony_sites, &varied.plan.bony_sites})
    for (BonySite& site : *sites) site.tissue_depth = site.tissue_depth * factor;
}

// The sheet gets a grade of its own, so that the other sheet of the same grade is left alone.
void scale_modulus(double factor, const char* side, Sheet& sheet, Resources& resources) {
  for (const SiliconeGrade& grade : resources.silicones) {
    if (grade.hardness != sheet.material) continue;
    SiliconeGrade scaled_grade = grade;
    scaled_grade.hardness += std::string(", ") + side;
    scaled_grade.law = scaled(grade.law, factor);
    sheet.material = scaled_grade.hardness;
    resources.silicones.push_back(std::move(scaled_grade));
    return;
  }
}

void thicken(double more_mm, Sheet& sheet) {
  sheet.thickness = std::max(sheet.thickness + more_mm * mm, kThinnest);
}

void misread_gauge(double error_kpa, Plan& plan) {
  for (InletProgram& program : plan.inflation)
    if (auto* pressure = std::get_if<Pressure>(&program.target); pressure && pressure->si() > 0.0)
      *pressure = std::max(*pressure + error_kpa * kPa, Pressure());
}

void misread_syringe(double factor, Plan& plan) {
  for (InletProgram& program : plan.inflation) {
    if (auto* volume = std::get_if<Volume>(&program.target)) *volume = *volume * factor;
    if (auto* air = std::get_if<TrappedAir>(&program.target)) air->pushed = air->pushed * factor;
  }
}

std::optional<Problem> miss_closing_length(double error_mm, VariedPlan& varied) {
  const auto asked = resolve_closing_length(varied.body, varied.plan.layout, varied.plan.placement);
  if (!asked) return asked.problem();
  if (*asked) {
    varied.plan.layout.closure->closing_length = **asked + error_mm * mm;
    varied.plan.layout.closure->stretch.reset();
  }
  return std::nullopt;
}

void set(UncertainQuantity quantity, double value, VariedPlan& varied) {
  Layout& layout = varied.plan.layout;
  switch (quantity) {
    case UncertainQuantity::kSkinModulus:
      return scale_modulus(value, "skin sheet", layout.skin_sheet, varied.resources);
    case UncertainQuantity::kOuterModulus:
      return scale_modulus(value, "outer sheet", layout.outer_sheet, varied.resources);
    case UncertainQuantity::kSkinThickness:
      return thicken(value, layout.skin_sheet);
    case UncertainQuantity::kOuterThickness:
      return thicken(value, layout.outer_sheet);
    case UncertainQuantity::kTissueStiffness:
      varied.plan.tissue_stiffness_factor = varied.plan.tissue_stiffness_factor.value_or(1.0) * value;
      return;
    case UncertainQuantity::kTissueDepth:
      return scale_depth(value, varied);
    case UncertainQuantity::kFriction:
      varied.plan.friction = value;
      return;
    case UncertainQuantity::kGirth:
      return widen(value, varied);
    case UncertainQuantity::kGaugePressure:
      return misread_gauge(value, varied.plan);
    case UncertainQuantity::kFillVolume:
      return misread_syringe(value, varied.plan);
    case UncertainQuantity::kClosingLength:
      return;  // last of all: it asks for the girth
  }
}

}  // namespace

Result<VariedPlan> varied_plan(const Plan& plan, const Body& body, const Resources& resources,
                               const std::vector<UncertainInput>& inputs, const std::vector<double>& values) {
  assert(inputs.size() == values.size());
  VariedPlan varied{plan, body, resources};
  for (std::size_t i = 0; i < inputs.size(); ++i) set(inputs[i].quantity, values[i], varied);
  for (std::size_t i = 0; i < inputs.size(); ++i)
    if (inputs[i].quantity == UncertainQuantity::kClosingLength)
      if (auto problem = miss_closing_length(values[i], varied)) return *problem;
  return varied;
}

}  // namespace wrapgauge
