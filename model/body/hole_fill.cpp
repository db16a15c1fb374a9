#include <CGAL/Polygon_mesh_processing/triangulate_hole.h>

#include <exception>
#include <iterator>

#include "model/body/cgal_mesh.hpp"
#include "model/body/mend_step.hpp"
#include "model/body/open_end.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

namespace PMP = CGAL::Polygon_mesh_processing;

// The open side of an edge of the loop.
std::optional<CgalMesh::Halfedge_index> rim_of(const CgalMesh& mesh, const OpenEnd& end) {
  const CgalMesh::Vertex_index from(static_cast<unsigned>(end.vertices[0])),
      to(static_cast<unsigned>(end.vertices[1 % end.vertices.size()]));
  for (const auto edge : {mesh.halfedge(from, to), mesh.halfedge(to, from)})
    if (edge != CgalMesh::null_halfedge() && mesh.is_border(edge)) return edge;
  return std::nullopt;
}

bool fill(CgalMesh& mesh, const OpenEnd& hole) {
  const auto rim = rim_of(mesh, hole);
  if (!rim) return false;
  std::vector<CgalMesh::Face_index> faces;
  std::vector<CgalMesh::Vertex_index> vertices;
  try {
    PMP::triangulate_refine_and_fair_hole(mesh, *rim, std::back_inserter(faces),
                                          std::back_inserter(vertices));
  } catch (const std::bad_alloc&) {
    throw;  // no fault of the input
  } catch (const std::exception&) {
    return false;
  }
  return !faces.empty();
}

// Largest straight distance between two points of the rim. Rims of scans are ragged, so that their length
// says little.
Length width_of(const TriangleMesh& surface, const OpenEnd& hole) {
  double widest_m = 0.0;
  for (std::size_t i = 0; i < hole.vertices.size(); ++i)
    for (std::size_t j = 0; j < i; ++j)
      widest_m = std::max(
          widest_m,
          (surface.vertices_m.row(hole.vertices[i]) - surface.vertices_m.row(hole.vertices[j])).norm());
  return Length(widest_m);
}

struct Tally {
  int filled = 0, failed = 0, too_large = 0;
  Length widest_filled, widest_left;
};

Phrase filled_words(const Tally& tally) {
  if (tally.filled == 0) return Phrase::worded("No hole was filled");
  const Phrase widest = millimetres_of(tally.widest_filled, 0);
  return tally.filled == 1
             ? Phrase::worded("Filled 1 hole of up to %1 across", {widest})
             : Phrase::worded("Filled %1 holes of up to %2 across", {figures_of(tally.filled), widest});
}

Phrase sentence_of(const Tally& tally, int ends, Length up_to) {
  std::vector<Phrase> parts = {filled_words(tally)};
  if (const int left = tally.failed + tally.too_large; left > 0)
    parts.push_back(Phrase::worded("%1 left open, the widest %2 across (%3 wider than %4)",
                                   {figures_of(left), millimetres_of(tally.widest_left, 0),
                                    figures_of(tally.too_large), millimetres_of(up_to, 0)}));
  parts.push_back(ends == 1 ? Phrase::worded("1 open end kept.")
                            : Phrase::worded("%1 open ends kept.", {figures_of(ends)}));
  return in_a_row(std::move(parts), "; ");
}

}  // namespace

Result<Mended> fill_holes(const Scan& scan, const FillHoles& options) {
  auto mesh = to_cgal(scan.surface);
  if (!mesh)
    return bad_input(
        Phrase::worded("Holes can only be filled in a surface whose edges have two faces; repair it first."));
  Tally tally;
  int ends = 0;
  for (const OpenEnd& end : find_open_ends(scan.surface, scan.axis)) {
    if (end.kind != OpenEndKind::kHole) {
      ++ends;
      continue;
    }
    const Length width = width_of(scan.surface, end);
    const bool small = width <= options.up_to;
    if (small && fill(*mesh, end)) {
      ++tally.filled;
      tally.widest_filled = std::max(tally.widest_filled, width);
      continue;
    }
    ++(small ? tally.failed : tally.too_large);
    tally.widest_left = std::max(tally.widest_left, width);
  }
  MendReport report{MendKind::kFillHoles,
                    sentence_of(tally, ends, options.up_to),
                    {{"holes_filled", static_cast<double>(tally.filled)},
                     {"widest_filled_mm", tally.widest_filled / mm},
                     {"holes_left", static_cast<double>(tally.failed + tally.too_large)},
                     {"widest_left_mm", tally.widest_left / mm},
                     {"open_ends_kept", static_cast<double>(ends)}}};
  return Mended{with_surface(scan, from_cgal(*mesh)), std::move(report)};
}

}  // namespace wrapgauge
