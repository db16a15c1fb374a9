#pragma once
// Surfaces with point data as VTK XML polygon files (.vtp), in millimetres (said in the field "length_unit"),
// the same bytes for the same values.

#include <string>
#include <vector>

#include "model/core/result.hpp"
#include "model/geometry/triangle_mesh.hpp"

namespace wrapgauge {

struct PointField {
  std::string name;        // unit at the end: "contact_kPa"
  Eigen::MatrixXd values;  // a row a vertex; one column or three
};
struct FaceField {
  std::string name;
  Eigen::VectorXi values;  // a face each
};

// The file's bytes. Problem: a field whose length is not the mesh's, or VTK could not write.
Result<std::string> vtp_bytes(const TriangleMesh& mesh, const std::vector<PointField>& point_fields,
                              const std::vector<FaceField>& face_fields = {});

}  // namespace wrapgauge
