#pragma once
// What the STL and PLY readers share of VTK.

#include <vtkAlgorithm.h>
#include <vtkPolyData.h>

#include <string>

#include "model/body/raw_mesh.hpp"

namespace wrapgauge {

// Errors and warnings of `reader` go nowhere instead of to the terminal; what was read is checked instead.
void silence(vtkAlgorithm& reader);

// Points and polygons as a triangle mesh moved by `offset`; quadrilaterals are cut along the shorter
// diagonal.
RawMesh to_raw_mesh(vtkPolyData& surface, const Vec3& offset);

// Bytes in memory under a file name, for readers that only take one.
class MemoryFile {
 public:
  explicit MemoryFile(const std::string& bytes);
  ~MemoryFile();
  MemoryFile(const MemoryFile&) = delete;
  MemoryFile& operator=(const MemoryFile&) = delete;
  bool ok() const { return ok_; }
  std::string name() const { return "/proc/self/fd/" + std::to_string(descriptor_); }

 private:
  int descriptor_ = -1;
  bool ok_ = false;
};

}  // namespace wrapgauge
