#include "model/io/writers/vtp_writer.hpp"

#include <vtkCellArray.h>
#include <vtkCellData.h>
#include <vtkDoubleArray.h>
#include <vtkErrorCode.h>
#include <vtkFieldData.h>
#include <vtkFloatArray.h>
#include <vtkIntArray.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyData.h>
#include <vtkStringArray.h>
#include <vtkXMLPolyDataWriter.h>

namespace wrapgauge {
namespace {

void add_shape(const TriangleMesh& mesh, vtkPolyData& data) {
  vtkNew<vtkPoints> points;
  points->SetDataTypeToDouble();
  for (Eigen::Index v = 0; v < mesh.vertices_m.rows(); ++v) {
    const Vec3 point_mm = 1e3 * mesh.vertices_m.row(v).transpose();
    points->InsertNextPoint(point_mm.data());
  }
  vtkNew<vtkCellArray> faces;
  for (Eigen::Index f = 0; f < mesh.faces.rows(); ++f)
    faces->InsertNextCell({mesh.faces(f, 0), mesh.faces(f, 1), mesh.faces(f, 2)});
  data.SetPoints(points);
  data.SetPolys(faces);
}

// The format itself has no place for the unit.
void add_unit(vtkPolyData& data) {
  vtkNew<vtkStringArray> unit;
  unit->SetName("length_unit");
  unit->InsertNextValue("mm");
  data.GetFieldData()->AddArray(unit);
}

void add_point_field(const PointField& field, vtkPolyData& data) {
  vtkNew<vtkFloatArray> array;
  array->SetName(field.name.c_str());
  array->SetNumberOfComponents(static_cast<int>(field.values.cols()));
  array->SetNumberOfTuples(field.values.rows());
  for (Eigen::Index row = 0; row < field.values.rows(); ++row)
    for (int column = 0; column < field.values.cols(); ++column)
      array->SetTypedComponent(row, column, static_cast<float>(field.values(row, column)));
  data.GetPointData()->AddArray(array);
}

void add_face_field(const FaceField& field, vtkPolyData& data) {
  vtkNew<vtkIntArray> array;
  array->SetName(field.name.c_str());
  array->SetNumberOfTuples(field.values.size());
  for (Eigen::Index row = 0; row < field.values.size(); ++row) array->SetValue(row, field.values[row]);
  data.GetCellData()->AddArray(array);
}

Problem wrong_length(const std::string& name) {
  return bad_input(Phrase::worded(
      "field '%1' does not have one value an element of the surface it is written on.", {name_of(name)}));
}

}  // namespace

Result<std::string> vtp_bytes(const TriangleMesh& mesh, const std::vector<PointField>& point_fields,
                              const std::vector<FaceField>& face_fields) {
  vtkNew<vtkPolyData> data;
  add_shape(mesh, *data);
  add_unit(*data);
  for (const PointField& field : point_fields) {
    if (field.values.rows() != mesh.vertices_m.rows()) return wrong_length(field.name);
    add_point_field(field, *data);
  }
  for (const FaceField& field : face_fields) {
    if (field.values.size() != mesh.faces.rows()) return wrong_length(field.name);
    add_face_field(field, *data);
  }
  if (!point_fields.empty()) data->GetPointData()->SetActiveScalars(point_fields.front().name.c_str());
  vtkNew<vtkXMLPolyDataWriter> writer;
  writer->SetInputData(data);
  writer->WriteToOutputStringOn();
  writer->SetDataModeToBinary();
  if (!writer->Write() || writer->GetErrorCode() != vtkErrorCode::NoError)
    return bad_input(Phrase::worded("the surface could not be written as a VTK file."));
  return std::string(writer->GetOutputString());
}

}  // namespace wrapgauge
