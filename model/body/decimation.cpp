#include <CGAL/Polygon_mesh_processing/remesh.h>

#include <algorithm>
#include <exception>

#include "model/body/cgal_mesh.hpp"
#include "model/body/mend_step.hpp"
#include "model/body/surface_error.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

namespace PMP = CGAL::Polygon_mesh_processing;

// Rims are split and shortened along themselves, so that open ends stay where they are.
Result<TriangleMesh> remeshed(const TriangleMesh& surface, Length edge) {
  auto mesh = to_cgal(surface);
  if (!mesh)
    return bad_input(
        Phrase::worded("Only a surface whose edges have two faces can be decimated; repair it first."));
  try {
    PMP::isotropic_remeshing(faces(*mesh), edge.si(), *mesh,
                             CGAL::parameters::number_of_iterations(4).number_of_relaxation_steps(2));
  } catch (const std::bad_alloc&) {
    throw;  // no fault of the input
  } catch (const std::exception&) {
    return bad_input(
        Phrase::worded("The surface could not be meshed anew with edges of %1; fill its holes and smooth it "
                       "first, or choose another edge.",
                       {millimetres_of(edge)}));
  }
  if (mesh->number_of_faces() == 0)
    return bad_input(
        Phrase::worded("Edges of %1 are too long for this surface; choose less.", {millimetres_of(edge)}));
  return from_cgal(*mesh);
}

Length mean_edge(const TriangleMesh& mesh) {
  double sum = 0.0;
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f)
    for (int k = 0; k < 3; ++k)
      sum += (mesh.vertices_m.row(mesh.faces(f, k)) - mesh.vertices_m.row(mesh.faces(f, (k + 1) % 3))).norm();
  return Length(sum / static_cast<double>(std::max<Eigen::Index>(1, mesh.faces.size())));
}

}  // namespace

Result<Mended> decimate(const Scan& scan, const Decimate& options) {
  auto result = remeshed(scan.surface, options.edge);
  if (!result) return result.problem();
  const SurfaceError out = surface_error(*result, scan.surface), back = surface_error(scan.surface, *result);
  const Length mean = std::max(out.mean, back.mean), p95 = std::max(out.percentile_95, back.percentile_95),
               largest = std::max(out.largest, back.largest);
  const Length edge = mean_edge(*result);
  const auto before = scan.surface.faces.rows(), after = result->faces.rows();
  MendReport report{
      MendKind::kDecimate,
      Phrase::worded(
          "Meshed anew with edges of %1 on average: %2 faces became %3; the surface moved "
          "by %4 on average, %5 of it by less than %6, %7 at most.",
          {millimetres_of(edge), figures_of(static_cast<int>(before)), figures_of(static_cast<int>(after)),
           millimetres_of(mean, 3), figures_of("95 %"), millimetres_of(p95, 3), millimetres_of(largest, 2)}),
      {{"faces_before", static_cast<double>(before)},
       {"faces_after", static_cast<double>(after)},
       {"mean_edge_mm", edge / mm},
       {"error_mean_mm", mean / mm},
       {"error_percentile_95_mm", p95 / mm},
       {"error_largest_mm", largest / mm}}};
  return Mended{with_surface(scan, std::move(result).value()), std::move(report)};
}

}  // namespace wrapgauge
