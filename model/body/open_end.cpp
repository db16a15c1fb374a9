#include "model/body/open_end.hpp"

#include <algorithm>
#include <limits>

#include "model/body/boundary_loop.hpp"

namespace wrapgauge {
namespace {

OpenEnd measured(const TriangleMesh& surface, const Axis& axis, std::vector<int> loop) {
  OpenEnd end;
  double length = 0.0, low = std::numeric_limits<double>::infinity(), high = -low;
  Vec3 centre = Vec3::Zero();
  for (std::size_t i = 0; i < loop.size(); ++i) {
    const Vec3 a = surface.vertices_m.row(loop[i]), b = surface.vertices_m.row(loop[(i + 1) % loop.size()]);
    length += (b - a).norm();
    centre += (b - a).norm() * 0.5 * (a + b);
    const double station = (a - axis.origin_m).dot(axis.direction);
    low = std::min(low, station);
    high = std::max(high, station);
  }
  end.length = Length(length);
  end.centre_m = length > 0.0 ? Vec3(centre / length) : Vec3(surface.vertices_m.row(loop[0]));
  end.station_low = Length(low);
  end.station_high = Length(high);
  end.vertices = std::move(loop);
  return end;
}

// An end is as long as a section is round, and reaches past a third of the body from its side. Judgement.
void name_ends(std::vector<OpenEnd>& ends, Length body_length) {
  Length longest;
  for (const OpenEnd& end : ends) longest = std::max(longest, end.length);
  OpenEnd *distal = nullptr, *proximal = nullptr;
  for (OpenEnd& end : ends) {
    if (end.length < 0.3 * longest) continue;
    const Length middle = 0.5 * (end.station_low + end.station_high);
    if (middle < body_length / 3.0 && (!distal || end.station_low < distal->station_low)) distal = &end;
    if (middle > body_length * (2.0 / 3.0) && (!proximal || end.station_high > proximal->station_high))
      proximal = &end;
  }
  if (distal) distal->kind = OpenEndKind::kDistal;
  if (proximal) proximal->kind = OpenEndKind::kProximal;
}

}  // namespace

std::vector<OpenEnd> find_open_ends(const TriangleMesh& surface, const Axis& axis) {
  std::vector<OpenEnd> ends;
  for (auto& loop : boundary_loops(surface.faces)) ends.push_back(measured(surface, axis, std::move(loop)));
  if (ends.empty()) return ends;
  const double highest =
      ((surface.vertices_m.rowwise() - axis.origin_m.transpose()) * axis.direction).maxCoeff();
  name_ends(ends, Length(highest));
  std::stable_sort(ends.begin(), ends.end(), [](const OpenEnd& a, const OpenEnd& b) {
    return a.kind != b.kind ? a.kind < b.kind : a.length > b.length;
  });
  return ends;
}

}  // namespace wrapgauge
