#include <map>
#include <utility>

#include "model/body/girth.hpp"
#include "model/body/mend_step.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

// Keeps where height >= 0; faces that cross are cut in two or three, neighbours at the same new vertex.
class HalfSpaceCut {
 public:
  HalfSpaceCut(const TriangleMesh& mesh, const Vec3& point, const Vec3& inward)
      : mesh_(mesh), height_((mesh.vertices_m.rowwise() - point.transpose()) * inward) {
    // A vertex within a millionth of a millimetre counts as on the kept side: no slivers there.
    for (double& height : height_)
      if (std::abs(height) < 1e-9) height = 0.0;
  }

  TriangleMesh kept() {
    for (Eigen::Index f = 0; f < mesh_.faces.rows(); ++f) cut_face(mesh_.faces.row(f));
    TriangleMesh out;
    out.vertices_m.resize(static_cast<Eigen::Index>(points_.size()), 3);
    for (std::size_t v = 0; v < points_.size(); ++v)
      out.vertices_m.row(static_cast<Eigen::Index>(v)) = points_[v];
    out.faces.resize(static_cast<Eigen::Index>(faces_.size()), 3);
    for (std::size_t f = 0; f < faces_.size(); ++f) out.faces.row(static_cast<Eigen::Index>(f)) = faces_[f];
    return out;
  }

 private:
  int vertex(std::pair<int, int> ends, const Vec3& point) {
    const auto [found, fresh] = index_.emplace(ends, static_cast<int>(points_.size()));
    if (fresh) points_.push_back(point);
    return found->second;
  }
  int corner(int v) { return vertex({v, v}, mesh_.vertices_m.row(v)); }
  int crossing(int a, int b) {
    if (a > b) std::swap(a, b);
    const double t = height_[a] / (height_[a] - height_[b]);
    const Vec3 from = mesh_.vertices_m.row(a), to = mesh_.vertices_m.row(b);
    return vertex({a, b}, from + t * (to - from));
  }
  void cut_face(const Eigen::RowVector3i& face) {
    std::vector<int> rim;
    for (int k = 0; k < 3; ++k) {
      const int a = face[k], b = face[(k + 1) % 3];
      if (height_[a] >= 0.0) rim.push_back(corner(a));
      if ((height_[a] > 0.0 && height_[b] < 0.0) || (height_[a] < 0.0 && height_[b] > 0.0))
        rim.push_back(crossing(a, b));
    }
    for (std::size_t k = 2; k < rim.size(); ++k) faces_.push_back({rim[0], rim[k - 1], rim[k]});
  }

  const TriangleMesh& mesh_;
  Eigen::VectorXd height_;
  std::map<std::pair<int, int>, int> index_;
  std::vector<Vec3> points_;
  std::vector<Eigen::RowVector3i> faces_;
};

std::optional<Problem> station_fault(const Scan& scan, const CutLimb& options) {
  const Length length = body_length({"", scan.surface, scan.axis, "", {}, {}});
  if (options.from < Length() || options.to <= options.from || options.to > length)
    return bad_input(
        Phrase::worded("The limb cannot be cut between stations %1 and %2: it reaches from 0 to "
                       "%3; give two stations in order within it.",
                       {millimetres_of(options.from), millimetres_of(options.to), millimetres_of(length)}));
  return std::nullopt;
}

}  // namespace

Result<Mended> cut_limb(const Scan& scan, const CutLimb& options) {
  if (auto problem = station_fault(scan, options)) return *problem;
  const Vec3 along = scan.axis.direction;
  const TriangleMesh above =
      HalfSpaceCut(scan.surface, scan.axis.origin_m + options.from.si() * along, along).kept();
  TriangleMesh part = HalfSpaceCut(above, scan.axis.origin_m + options.to.si() * along, -along).kept();
  if (part.faces.rows() == 0)
    return bad_input(Phrase::worded("Nothing of the limb lies between stations %1 and %2; choose others.",
                                    {millimetres_of(options.from), millimetres_of(options.to)}));
  part.vertices_m.rowwise() -= options.from.si() * along.transpose();
  Scan cut = scan;
  cut.surface = std::move(part);
  const Body body{"", cut.surface, cut.axis, "", {}, {}};
  const Length length = options.to - options.from;
  const Girth low = girth_at(body, 0.01 * length), high = girth_at(body, 0.99 * length);
  MendReport report{
      MendKind::kCut,
      Phrase::worded("Cut out between stations %1 and %2: %3 long, girth %4 at its distal end and "
                     "%5 at its proximal end.",
                     {millimetres_of(options.from), millimetres_of(options.to), millimetres_of(length),
                      millimetres_of(low.girth), millimetres_of(high.girth)}),
      {{"length_mm", length / mm},
       {"distal_girth_mm", low.girth / mm},
       {"proximal_girth_mm", high.girth / mm}}};
  return Mended{std::move(cut), std::move(report)};
}

}  // namespace wrapgauge
