#include "model/pipeline/said_of_body.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/body/part_rules.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

constexpr Length kOffSkin = 20.0 * mm;
constexpr double kSameFront = 0.5;  // cosine of 60 degrees, judgement: farther apart, one of them is wrong

// `what`: "the site 'elbow'".
std::optional<Problem> off_skin(const NearestPoint& skin, const Phrase& what, const Vec3& point_m) {
  const double distance_m = skin.at(point_m).distance_m;
  if (distance_m <= kOffSkin.si()) return std::nullopt;
  const auto at_mm = [&](int k) { return figures_of(fixed_text(1e3 * point_m[k], 1)); };
  return bad_input(
      Phrase::worded("%1 at (%2, %3, %4) mm lies %5 mm off the skin: give it in the body's own frame, within "
                     "%6 of the skin.",
                     {what, at_mm(0), at_mm(1), at_mm(2), figures_of(fixed_text(1e3 * distance_m, 1)),
                      millimetres_of(kOffSkin, 0)}));
}

std::optional<Problem> take_side(std::optional<BodySide> said, Body& body) {
  if (said && body.side && *said != *body.side)
    return bad_input(*said == BodySide::kLeft
                         ? Phrase::worded("the plan calls the body '%1' a left one, its label a right one: "
                                          "correct body.side, or mirror the scan.",
                                          {name_of(body.name)})
                         : Phrase::worded("the plan calls the body '%1' a right one, its label a left one: "
                                          "correct body.side, or mirror the scan.",
                                          {name_of(body.name)}));
  if (said) body.side = said;
  return std::nullopt;
}

// Across the axis, so that it tells front from back at every station.
std::optional<Problem> take_front(const Vec3& said, Body& body) {
  const Vec3 across = said - said.dot(body.axis.direction) * body.axis.direction;
  if (across.norm() < 0.5 * said.norm())
    return bad_input(Phrase::worded(
        "the front of the body '%1' points along its axis: give the direction that the person's front faces.",
        {name_of(body.name)}));
  const Vec3 front = across.normalized();
  const double cosine = body.front ? std::clamp(front.dot(*body.front), -1.0, 1.0) : 1.0;
  if (cosine < kSameFront)
    return bad_input(Phrase::worded(
        "the plan's front of the body '%1' lies %2 degrees from that of its label: correct body.front.",
        {name_of(body.name), figures_of(fixed_text(std::acos(cosine) * 180.0 / std::numbers::pi, 0))}));
  body.front = front;
  return std::nullopt;
}

}  // namespace

std::optional<Problem> take_what_is_said(const Plan& plan, Body& body) {
  const auto part = agreed_part(body.name, body.part, plan.part);
  if (!part) return part.problem();
  body.part = *part;
  const auto* file = std::get_if<BodyFile>(&plan.body);
  if (!file) return std::nullopt;
  if (auto problem = take_side(file->side, body)) return problem;
  return file->front ? take_front(*file->front, body) : std::nullopt;
}

std::optional<Problem> place_off_skin(const Plan& plan, const std::vector<BonySite>& sites,
                                      const NearestPoint& skin) {
  for (const BonySite& site : sites)
    if (auto problem = off_skin(skin, Phrase::worded("the site '%1'", {name_of(site.name)}), site.point_m))
      return problem;
  for (const Landmark& landmark : plan.landmarks)
    if (auto problem =
            off_skin(skin, Phrase::worded("the landmark '%1'", {name_of(landmark.name)}), landmark.point_m))
      return problem;
  return std::nullopt;
}

}  // namespace wrapgauge
