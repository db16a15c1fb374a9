#include "model/io/readers/mesh_reader_vtk.hpp"

#include <sys/mman.h>
#include <unistd.h>
#include <vtkCellArray.h>
#include <vtkCommand.h>
#include <vtkIdList.h>
#include <vtkNew.h>
#include <vtkPolygon.h>

#include <array>
#include <vector>

namespace wrapgauge {
namespace {

class SilentObserver : public vtkCommand {
 public:
  static SilentObserver* New() { return new SilentObserver; }
  void Execute(vtkObject*, unsigned long, void*) override {}
};

using Corners = std::array<int, 3>;

// A fan is the last resort for polygons that ear clipping gives up on: folded or without area.
void cut_fan(vtkIdType count, const vtkIdType* points, std::vector<Corners>& faces) {
  for (vtkIdType k = 1; k + 1 < count; ++k)
    faces.push_back(
        {static_cast<int>(points[0]), static_cast<int>(points[k]), static_cast<int>(points[k + 1])});
}

void cut_polygon(vtkPolyData& surface, vtkIdType count, const vtkIdType* points,
                 std::vector<Corners>& faces) {
  if (count == 3) return cut_fan(count, points, faces);
  vtkPoints& all = *surface.GetPoints();
  const auto at = [&](vtkIdType k) { return Vec3(all.GetPoint(points[k])); };
  if (count == 4) {
    const bool from_first = (at(0) - at(2)).squaredNorm() <= (at(1) - at(3)).squaredNorm();
    const vtkIdType turned[4] = {points[1], points[2], points[3], points[0]};
    return cut_fan(4, from_first ? points : turned, faces);
  }
  vtkNew<vtkPolygon> polygon;
  polygon->Initialize(static_cast<int>(count), points, &all);
  vtkNew<vtkIdList> ears;
  if (!polygon->Triangulate(ears) || ears->GetNumberOfIds() != 3 * (count - 2))
    return cut_fan(count, points, faces);
  for (vtkIdType k = 0; k < ears->GetNumberOfIds(); k += 3)
    faces.push_back({static_cast<int>(points[ears->GetId(k)]), static_cast<int>(points[ears->GetId(k + 1)]),
                     static_cast<int>(points[ears->GetId(k + 2)])});
}

}  // namespace

void silence(vtkAlgorithm& reader) {
  vtkObject::GlobalWarningDisplayOff();
  vtkNew<SilentObserver> observer;
  reader.AddObserver(vtkCommand::ErrorEvent, observer);
  reader.AddObserver(vtkCommand::WarningEvent, observer);
}

RawMesh to_raw_mesh(vtkPolyData& surface, const Vec3& offset) {
  RawMesh mesh;
  mesh.vertices.resize(surface.GetNumberOfPoints(), 3);
  for (int i = 0; i < mesh.vertices.rows(); ++i) {
    double point[3];
    surface.GetPoint(i, point);
    mesh.vertices.row(i) << point[0] + offset[0], point[1] + offset[1], point[2] + offset[2];
  }
  std::vector<Corners> faces;
  vtkCellArray& polygons = *surface.GetPolys();
  polygons.InitTraversal();
  vtkIdType count = 0;
  const vtkIdType* points = nullptr;
  while (polygons.GetNextCell(count, points) != 0) cut_polygon(surface, count, points, faces);
  mesh.faces.resize(static_cast<int>(faces.size()), 3);
  for (int f = 0; f < mesh.faces.rows(); ++f) mesh.faces.row(f) << faces[f][0], faces[f][1], faces[f][2];
  return mesh;
}

MemoryFile::MemoryFile(const std::string& bytes) : descriptor_(::memfd_create("mesh", MFD_CLOEXEC)) {
  std::size_t written = 0;
  while (descriptor_ >= 0 && written < bytes.size()) {
    const ssize_t more = ::write(descriptor_, bytes.data() + written, bytes.size() - written);
    if (more <= 0) return;
    written += static_cast<std::size_t>(more);
  }
  ok_ = descriptor_ >= 0;
}

MemoryFile::~MemoryFile() {
  if (descriptor_ >= 0) ::close(descriptor_);
}

}  // namespace wrapgauge
