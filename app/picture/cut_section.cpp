#include "app/picture/cut_section.hpp"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

namespace wrapgauge {
namespace {

// The plane across the axis, and its own two directions: up is the side of the limb that `up_m` lies on.
class CutPlane {
 public:
  CutPlane(const Axis& axis, double station_m, const Vec3& up_m)
      : normal_(axis.direction), origin_m_(axis.origin_m + station_m * axis.direction) {
    const Vec3 out = (up_m - axis.origin_m).cross(normal_);
    right_ = out.norm() > 0.0 ? out.normalized() : normal_.unitOrthogonal();
    up_ = normal_.cross(right_);
  }

  double above_m(const Vec3& point_m) const { return (point_m - origin_m_).dot(normal_); }
  Vec2 flat(const Vec3& point_m) const { return direction(point_m - origin_m_); }
  Vec2 direction(const Vec3& arrow) const { return {-arrow.dot(right_), arrow.dot(up_)}; }
  const Vec3& point_m() const { return origin_m_; }
  const Vec3& normal() const { return normal_; }

 private:
  Vec3 normal_, origin_m_, right_, up_;
};

// Where a triangle is cut: on the edge from corner `a` to corner `b`, `along` of the way.
struct EdgeCut {
  int a = 0, b = 0;
  double along = 0.0;

  template <class Rows>
  auto on(const Rows& rows) const {
    return ((1.0 - along) * rows.row(a) + along * rows.row(b)).eval();
  }
  double at(const Eigen::VectorXd& values) const { return std::lerp(values[a], values[b], along); }
};
using TriangleCut = std::array<EdgeCut, 2>;

// A corner in the plane counts as above it, so two edges are cut or none. First the edge that leaves
// downwards.
std::optional<TriangleCut> cut_of(const Eigen::RowVector3i& corners, const Points3& points_m,
                                  const CutPlane& plane) {
  TriangleCut cut;
  int found = 0;
  for (int k = 0; k < 3; ++k) {
    const int a = corners[k], b = corners[(k + 1) % 3];
    const double from = plane.above_m(points_m.row(a)), to = plane.above_m(points_m.row(b));
    if ((from >= 0.0) == (to >= 0.0)) continue;
    cut[from >= 0.0 ? 0 : 1] = {a, b, from / (from - to)};
    ++found;
  }
  return found == 2 ? std::optional(cut) : std::nullopt;
}

double area_m2(const Vec3& a, const Vec3& b, const Vec3& c) {
  return 0.5 * (b - a).cross(c - a).norm();
}

double cast_of(const Sheet& sheet) {
  return sheet.thickness.si() / sheet.prestretch;
}

// What one or both sheets are thick, with what they were cast on.
double cast_thickness_m(const Layout& layout, const FlatRegion& region, SheetLayer layer) {
  switch (layer) {
    case SheetLayer::kSkin:
      return cast_of(layout.skin_sheet);
    case SheetLayer::kOuter:
      return cast_of(layout.outer_sheet);
    case SheetLayer::kStrap:
      return layout.straps[static_cast<std::size_t>(region.part)].thickness.si();
    case SheetLayer::kFused:
      break;
  }
  return cast_of(layout.skin_sheet) + cast_of(layout.outer_sheet);
}

class Cutter {
 public:
  Cutter(const Estimate& estimate, const CutDevice& device, const CutPlane& plane)
      : setup_(estimate.setup),
        sheet_(estimate.path.sheet),
        depth_m_(estimate.tissue_depth_m),
        device_(device),
        plane_(plane) {}

  void cut_sheets(CutSection& section) const {
    std::vector<CavityPiece> round_air;
    for (Eigen::Index t = 0; t < sheet_.triangles.rows(); ++t) {
      const auto cut = cut_of(sheet_.triangles.row(t), device_.positions_m, plane_);
      if (!cut) continue;
      section.sheets.push_back(piece_of(t, *cut));
      const SheetLayer layer = section.sheets.back().layer;
      if (layer == SheetLayer::kSkin || layer == SheetLayer::kOuter)
        round_air.push_back(
            {{edge_of((*cut)[0]), edge_of((*cut)[1])}, {middle_of((*cut)[0]), middle_of((*cut)[1])}});
    }
    section.air_m = loops_of(round_air);
  }

  void cut_skin(CutSection& section) const {
    const Triangles& triangles = setup_.flat.triangles;
    for (Eigen::Index t = 0; t < triangles.rows(); ++t)
      if (const auto cut = cut_of(triangles.row(t), device_.on_skin.points_m, plane_))
        section.pressed.push_back(skin_piece(*cut));
  }

 private:
  using MeshEdge = std::pair<int, int>;  // its nodes, the lower one first
  struct CavityPiece {
    std::array<MeshEdge, 2> ends;
    std::array<Vec2, 2> at_m;
  };

  static MeshEdge edge_of(const EdgeCut& cut) { return std::minmax(cut.a, cut.b); }
  Vec2 middle_of(const EdgeCut& cut) const { return plane_.flat(cut.on(device_.positions_m).transpose()); }

  // Two sheets are one where they are fused, so their pieces meet end to end all round the air between them.
  static std::vector<CutLine> loops_of(const std::vector<CavityPiece>& pieces) {
    std::multimap<MeshEdge, std::size_t> at;
    for (std::size_t p = 0; p < pieces.size(); ++p)
      for (const MeshEdge& end : pieces[p].ends) at.emplace(end, p);
    std::vector<bool> walked(pieces.size());
    std::vector<CutLine> loops;
    for (std::size_t first = 0; first < pieces.size(); ++first) {
      CutLine loop;
      MeshEdge end = pieces[first].ends[0];
      for (std::optional<std::size_t> p = first; p && !walked[*p];) {
        walked[*p] = true;
        const int far = pieces[*p].ends[0] == end ? 1 : 0;
        end = pieces[*p].ends[static_cast<std::size_t>(far)];
        loop.push_back(pieces[*p].at_m[static_cast<std::size_t>(far)]);
        p = next_at(at, end, walked);
      }
      if (loop.size() > 2 && end == pieces[first].ends[0]) loops.push_back(std::move(loop));
    }
    return loops;
  }

  static std::optional<std::size_t> next_at(const std::multimap<MeshEdge, std::size_t>& at,
                                            const MeshEdge& end, const std::vector<bool>& walked) {
    for (auto [it, last] = at.equal_range(end); it != last; ++it)
      if (!walked[it->second]) return it->second;
    return std::nullopt;
  }

  // The mesh lies in the middle of the skin's sheet; the outer sheet of a weld lies on that.
  CutSheet piece_of(Eigen::Index t, const TriangleCut& cut) const {
    const Eigen::RowVector3i corners = sheet_.triangles.row(t);
    const auto index = static_cast<std::size_t>(t);
    const auto flat = static_cast<std::size_t>(sheet_.flat_triangle[index]);
    const SheetLayer layer = sheet_.layer[index];
    const double stretched = stretched_area(corners, flat);
    const double cast_m = cast_thickness_m(setup_.layout, setup_.flat.regions[flat], layer);
    Vec2 lift = Vec2::Zero();
    if (layer == SheetLayer::kFused)
      lift = 0.5 * cast_of(setup_.layout.outer_sheet) / stretched * plane_.direction(normal_of(corners));
    return {layer, middle_of(cut[0]) + lift, middle_of(cut[1]) + lift, cast_m / stretched};
  }

  Vec3 normal_of(const Eigen::RowVector3i& corners) const {
    const Vec3 a = device_.positions_m.row(corners[0]), b = device_.positions_m.row(corners[1]),
               c = device_.positions_m.row(corners[2]);
    return (b - a).cross(c - a).normalized();
  }

  double stretched_area(const Eigen::RowVector3i& corners, std::size_t flat) const {
    const Points3& at = device_.positions_m;
    const auto drawn = setup_.flat.triangles.row(static_cast<Eigen::Index>(flat));
    const auto corner = [&](int k) -> Vec3 {
      return Vec3(setup_.flat.vertices_m(drawn[k], 0), setup_.flat.vertices_m(drawn[k], 1), 0.0);
    };
    return area_m2(at.row(corners[0]), at.row(corners[1]), at.row(corners[2])) /
           area_m2(corner(0), corner(1), corner(2));
  }

  CutSkin skin_piece(const TriangleCut& cut) const {
    CutSkin piece;
    std::array<Vec2, 2> pressed, bone;
    Vec3 outward = Vec3::Zero();
    for (int k = 0; k < 2; ++k) {
      const Vec3 at_m = cut[k].on(device_.on_skin.points_m).transpose();
      const Vec3 normal = cut[k].on(device_.on_skin.normals).transpose().normalized();
      pressed[k] = plane_.flat(at_m - cut[k].at(device_.indentation_m) * normal);
      bone[k] = plane_.flat(at_m - cut[k].at(depth_m_) * normal);
      outward += normal;
      piece.pressure_pa += 0.5 * cut[k].at(device_.pressure_pa);
      piece.share_of_limit += 0.5 * cut[k].at(device_.share_of_limit);
    }
    piece.from_m = pressed[0], piece.to_m = pressed[1];
    piece.bone_from_m = bone[0], piece.bone_to_m = bone[1];
    piece.inward = -plane_.direction(outward).normalized();
    return piece;
  }

  const InflationSetup& setup_;
  const SheetMesh& sheet_;
  const Eigen::VectorXd& depth_m_;
  const CutDevice& device_;
  const CutPlane& plane_;
};

}  // namespace

CutSection cut_section(const Estimate& estimate, const PlaneSections& sections, const CutDevice& device,
                       double station_m) {
  const CutPlane plane(estimate.body.axis, station_m, estimate.wrap.anchor_m);
  CutSection section;
  section.station_m = station_m;
  for (const SectionLine& line : sections.at(plane.point_m(), plane.normal())) {
    CutLine flat;
    for (const Vec3& point : line.points_m) flat.push_back(plane.flat(point));
    section.skin_m.push_back(std::move(flat));
  }
  const Cutter cutter(estimate, device, plane);
  cutter.cut_sheets(section);
  cutter.cut_skin(section);
  return section;
}

std::pair<double, double> device_stations_m(const Estimate& estimate, const SkinPoints& on_skin) {
  const Axis& axis = estimate.body.axis;
  const Eigen::VectorXd stations = (on_skin.points_m.rowwise() - axis.origin_m.transpose()) * axis.direction;
  return {stations.minCoeff(), stations.maxCoeff()};
}

}  // namespace wrapgauge
