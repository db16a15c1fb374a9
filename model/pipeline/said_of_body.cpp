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

std::optional<Problem> off_skin(const NearestPoint& skin, const char* what, const std::string& name,
                                const Vec3& point_m) {
  const double distance_m = skin.at(point_m).distance_m;
  if (distance_m <= kOffSkin.si()) return std::nullopt;
  const Vec3 at_mm = 1e3 * point_m;
  return bad_input(std::string("the ") + what + " '" + name + "' at (" + fixed_text(at_mm.x(), 1) + ", " +
                   fixed_text(at_mm.y(), 1) + ", " + fixed_text(at_mm.z(), 1) + ") mm lies " +
                   fixed_text(1e3 * distance_m, 1) +
                   " mm off the skin: give it in the body's own frame, within " +
                   fixed_text(kOffSkin / mm, 0) + " mm of the skin.");
}

std::optional<Problem> take_side(std::optional<BodySide> said, Body& body) {
  if (said && body.side && *said != *body.side)
    return bad_input("the plan calls the body '" + body.name + "' a " + std::string(side_name(*said)) +
                     " one, its label a " + std::string(side_name(*body.side)) +
                     " one: correct body.side, or mirror the scan.");
  if (said) body.side = said;
  return std::nullopt;
}

// Across the axis, so that it tells front from back at every station.
std::optional<Problem> take_front(const Vec3& said, Body& body) {
  const Vec3 across = said - said.dot(body.axis.direction) * body.axis.direction;
  if (across.norm() < 0.5 * said.norm())
    return bad_input("the front of the body '" + body.name +
                     "' points along its axis: give the direction that the person's front faces.");
  const Vec3 front = across.normalized();
  const double cosine = body.front ? std::clamp(front.dot(*body.front), -1.0, 1.0) : 1.0;
  if (cosine < kSameFront)
    return bad_input("the plan's front of the body '" + body.name + "' lies " +
                     fixed_text(std::acos(cosine) * 180.0 / std::numbers::pi, 0) +
                     " degrees from that of its label: correct body.front.");
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
    if (auto problem = off_skin(skin, "site", site.name, site.point_m)) return problem;
  for (const Landmark& landmark : plan.landmarks)
    if (auto problem = off_skin(skin, "landmark", landmark.name, landmark.point_m)) return problem;
  return std::nullopt;
}

}  // namespace wrapgauge
