#include "model/body/girth.hpp"

#include <algorithm>
#include <iterator>

namespace wrapgauge {
namespace {

// Joins open pieces end to start, always to the nearest start left: the straight lines in between, added up.
double bridges_m(const std::vector<SectionLine>& open) {
  std::vector<std::size_t> left;
  for (std::size_t i = 1; i < open.size(); ++i) left.push_back(i);
  double sum = 0.0;
  Vec3 end = open[0].points_m.back();
  while (!left.empty()) {
    const auto nearest = std::min_element(left.begin(), left.end(), [&](std::size_t a, std::size_t b) {
      return (open[a].points_m.front() - end).norm() < (open[b].points_m.front() - end).norm();
    });
    sum += (open[*nearest].points_m.front() - end).norm();
    end = open[*nearest].points_m.back();
    left.erase(nearest);
  }
  return sum + (open[0].points_m.front() - end).norm();
}

Girth girth_of(const std::vector<SectionLine>& lines, Length station) {
  Girth result;
  result.station = station;
  std::vector<SectionLine> open;
  Length open_length;
  for (const SectionLine& line : lines) {
    if (line.closed) {
      ++result.loops;
      result.girth = std::max(result.girth, line.length());
    } else {
      open_length = open_length + line.length();
      open.push_back(line);
    }
  }
  if (!open.empty()) {
    result.kind = SectionKind::kOpen;
    const Length bridged(bridges_m(open));
    if (open_length + bridged > result.girth) {
      result.bridged = bridged;
      result.girth = open_length + bridged;
    }
  } else if (result.loops > 0) {
    result.kind = result.loops == 1 ? SectionKind::kOneLoop : SectionKind::kSeveralLoops;
  }
  return result;
}

Vec3 on_axis(const Body& body, Length station) {
  return body.axis.origin_m + station.si() * body.axis.direction;
}

}  // namespace

std::vector<SectionLine> section_at(const Body& body, Length station) {
  return plane_section(body.surface, on_axis(body, station), body.axis.direction);
}

Girth girth_at(const Body& body, Length station) {
  return girth_of(section_at(body, station), station);
}

Length body_length(const Body& body) {
  if (body.surface.vertices_m.rows() == 0) return Length(0.0);
  return Length(((body.surface.vertices_m.rowwise() - body.axis.origin_m.transpose()) * body.axis.direction)
                    .maxCoeff());
}

std::vector<Girth> girth_profile(const Body& body) {
  return girth_profile(body, PlaneSections(body.surface));
}

std::vector<Girth> girth_profile(const Body& body, const PlaneSections& sections) {
  const Length length = body_length(body);
  std::vector<Girth> result;
  for (const double share : {0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95}) {
    const Length station = share * length;
    result.push_back(girth_of(sections.at(on_axis(body, station), body.axis.direction), station));
  }
  return result;
}

}  // namespace wrapgauge
