#include "model/io/readers/polygon_cut.hpp"

#include <vtkIdList.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkPolygon.h>

namespace wrapgauge {
namespace {

// The last resort for polygons that ear clipping gives up on: folded or without area.
void cut_fan(std::span<const int> corners, GrowingRows<Triangles>& faces) {
  for (std::size_t k = 1; k + 1 < corners.size(); ++k) faces.add(corners[0], corners[k], corners[k + 1]);
}

void cut_quadrilateral(const Points3& vertices, std::span<const int> corners, GrowingRows<Triangles>& faces) {
  const auto squared = [&](std::size_t a, std::size_t b) {
    return (vertices.row(corners[a]) - vertices.row(corners[b])).squaredNorm();
  };
  if (squared(0, 2) <= squared(1, 3)) return cut_fan(corners, faces);
  faces.add(corners[1], corners[2], corners[3]);
  faces.add(corners[1], corners[3], corners[0]);
}

}  // namespace

void cut_polygon(const Points3& vertices, std::span<const int> corners, GrowingRows<Triangles>& faces) {
  if (corners.size() == 3) return cut_fan(corners, faces);
  if (corners.size() == 4) return cut_quadrilateral(vertices, corners, faces);
  const auto count = static_cast<vtkIdType>(corners.size());
  vtkNew<vtkPolygon> polygon;
  polygon->Points->SetDataTypeToDouble();
  polygon->Points->SetNumberOfPoints(count);
  polygon->PointIds->SetNumberOfIds(count);
  for (vtkIdType k = 0; k < count; ++k) {
    polygon->Points->SetPoint(k, vertices.row(corners[static_cast<std::size_t>(k)]).data());
    polygon->PointIds->SetId(k, k);
  }
  vtkObject::GlobalWarningDisplayOff();  // polygons that fail get a fan instead of a line on the terminal
  vtkNew<vtkIdList> ears;
  if (!polygon->Triangulate(ears) || ears->GetNumberOfIds() != 3 * (count - 2))
    return cut_fan(corners, faces);
  const auto ear = [&](vtkIdType k) { return corners[static_cast<std::size_t>(ears->GetId(k))]; };
  for (vtkIdType k = 0; k < ears->GetNumberOfIds(); k += 3) faces.add(ear(k), ear(k + 1), ear(k + 2));
}

}  // namespace wrapgauge
