#include "model/wrap/section_loop.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace wrapgauge {
namespace {

struct OnLine {
  double distance_m = std::numeric_limits<double>::infinity();
  std::size_t segment = 0;
  double along_m = 0.0;  // from the segment's first point
};

OnLine nearest_on(const std::vector<Vec3>& points_m, const Vec3& point_m) {
  OnLine best;
  for (std::size_t i = 0; i + 1 < points_m.size(); ++i) {
    const Vec3 span = points_m[i + 1] - points_m[i];
    const double squared = span.squaredNorm();
    const double share =
        squared > 0.0 ? std::clamp((point_m - points_m[i]).dot(span) / squared, 0.0, 1.0) : 0.0;
    const double distance = (points_m[i] + share * span - point_m).norm();
    if (distance < best.distance_m) best = {distance, i, share * std::sqrt(squared)};
  }
  return best;
}

}  // namespace

SectionLoop::SectionLoop(SectionLine line) : points_m_(std::move(line.points_m)) {
  points_m_.push_back(points_m_.front());
  for (std::size_t i = 0; i < points_m_.size(); ++i) {
    if (i > 0) girth_m_ += (points_m_[i] - points_m_[i - 1]).norm();
    arc_m_.push_back(girth_m_);
  }
}

double SectionLoop::arc_near(const Vec3& point_m) const {
  const OnLine near = nearest_on(points_m_, point_m);
  return arc_m_[near.segment] + near.along_m;
}

double SectionLoop::distance_m(const Vec3& point_m) const {
  return nearest_on(points_m_, point_m).distance_m;
}

Vec3 SectionLoop::at(double arc_m) const {
  const double arc = arc_m - girth_m_ * std::floor(arc_m / girth_m_);
  const auto found = std::upper_bound(arc_m_.begin(), arc_m_.end(), arc) - arc_m_.begin();
  const auto after = std::clamp<std::ptrdiff_t>(found, 1, static_cast<std::ptrdiff_t>(arc_m_.size()) - 1);
  const double span = arc_m_[after] - arc_m_[after - 1];
  const double share = span > 0.0 ? std::clamp((arc - arc_m_[after - 1]) / span, 0.0, 1.0) : 0.0;
  return points_m_[after - 1] + share * (points_m_[after] - points_m_[after - 1]);
}

Vec3 SectionLoop::centre_m() const {
  Vec3 area = Vec3::Zero();
  for (std::size_t i = 0; i + 1 < points_m_.size(); ++i)
    area += (points_m_[i] - points_m_[0]).cross(points_m_[i + 1] - points_m_[0]);
  const Vec3 normal = area.normalized();
  Vec3 moment = Vec3::Zero();
  for (std::size_t i = 0; i + 1 < points_m_.size(); ++i) {
    const Vec3 a = points_m_[i] - points_m_[0], b = points_m_[i + 1] - points_m_[0];
    moment += a.cross(b).dot(normal) * (a + b) / 3.0;
  }
  return area.norm() > 0.0 ? Vec3(points_m_[0] + moment / area.norm()) : points_m_[0];
}

std::optional<Vec3> SectionLoop::outermost(const Vec3& direction) const {
  const Vec3 centre = centre_m();
  Vec3 area = Vec3::Zero();
  for (std::size_t i = 0; i + 1 < points_m_.size(); ++i)
    area += (points_m_[i] - centre).cross(points_m_[i + 1] - centre);
  const Vec3 beside = area.cross(direction).normalized();
  std::optional<Vec3> best;
  double reach = 0.0;
  for (std::size_t i = 0; i + 1 < points_m_.size(); ++i) {
    const double from = (points_m_[i] - centre).dot(beside), to = (points_m_[i + 1] - centre).dot(beside);
    if ((from >= 0.0) == (to >= 0.0)) continue;
    const Vec3 hit = points_m_[i] + from / (from - to) * (points_m_[i + 1] - points_m_[i]);
    const double distance = (hit - centre).dot(direction);
    if (distance > reach) {
      reach = distance;
      best = hit;
    }
  }
  return best;
}

std::optional<SectionLoop> loop_near(const BodySurface& body, const Vec3& wanted_m,
                                     const Vec3& plane_normal) {
  std::optional<SectionLoop> best;
  double best_m = std::numeric_limits<double>::infinity();
  for (auto& line : body.sections().at(wanted_m, plane_normal)) {
    const bool closed = line.closed && line.points_m.size() > 2;
    if (closed) line.points_m.push_back(line.points_m.front());
    const double distance_m = nearest_on(line.points_m, wanted_m).distance_m;
    if (!(distance_m < best_m)) continue;
    best_m = distance_m;
    best.reset();
    if (!closed) continue;
    line.points_m.pop_back();
    best.emplace(std::move(line));
  }
  return best;
}

std::optional<SectionLoop> longest_loop(const PlaneSections& sections, const Vec3& plane_point_m,
                                        const Vec3& plane_normal) {
  std::optional<SectionLoop> best;
  for (auto& line : sections.at(plane_point_m, plane_normal))
    if (line.closed && line.points_m.size() > 2 && (!best || line.length() > best->girth()))
      best.emplace(std::move(line));
  return best;
}

}  // namespace wrapgauge
