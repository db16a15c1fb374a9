#include "app/desk/views/scene_actors.hpp"

#include <vtkCamera.h>
#include <vtkCellArray.h>
#include <vtkDoubleArray.h>
#include <vtkFloatArray.h>
#include <vtkLight.h>
#include <vtkLookupTable.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkProperty.h>

#include "app/desk/views/body_canvas.hpp"

namespace wrapgauge {
namespace {

vtkNew<vtkPoints> points_of(const Points3& points_m) {
  vtkNew<vtkPoints> points;
  points->SetNumberOfPoints(points_m.rows());
  for (Eigen::Index v = 0; v < points_m.rows(); ++v)
    points->SetPoint(v, points_m(v, 0), points_m(v, 1), points_m(v, 2));
  return points;
}

vtkNew<vtkFloatArray> normals_of(const Points3& normals) {
  vtkNew<vtkFloatArray> array;
  array->SetNumberOfComponents(3);
  array->SetNumberOfTuples(normals.rows());
  for (Eigen::Index v = 0; v < normals.rows(); ++v)
    array->SetTuple3(v, normals(v, 0), normals(v, 1), normals(v, 2));
  return array;
}

vtkNew<vtkCellArray> cells_of(const Triangles& triangles) {
  vtkNew<vtkCellArray> cells;
  for (Eigen::Index t = 0; t < triangles.rows(); ++t) {
    const vtkIdType corner[3] = {triangles(t, 0), triangles(t, 1), triangles(t, 2)};
    cells->InsertNextCell(3, corner);
  }
  return cells;
}

// The colours of the pictures; the lowest one is bare skin, so that what is not touched stays grey.
vtkNew<vtkLookupTable> colours(double top_pa, bool dimmed) {
  constexpr int kSteps = 256;
  vtkNew<vtkLookupTable> table;
  table->SetNumberOfTableValues(kSteps);
  table->SetTableRange(0.0, top_pa);
  for (int i = 0; i < kSteps; ++i) {
    const QColor colour = i == 0 ? kBareSkin : surface_colour((i - 0.5) / (kSteps - 1), dimmed);
    table->SetTableValue(i, colour.redF(), colour.greenF(), colour.blueF());
  }
  return table;
}

// The light of limb_view.hpp: 0.62 from everywhere, 0.38 from the upper left.
void light(vtkProperty* property) {
  property->SetInterpolationToPhong();
  property->SetAmbient(0.62);
  property->SetDiffuse(0.38);
  property->SetSpecular(0.0);
}

}  // namespace

SceneActors::SceneActors() {
  renderer_->SetBackgroundAlpha(1.0);
  renderer_->AutomaticLightCreationOff();
  vtkNew<vtkLight> from_upper_left;
  from_upper_left->SetLightTypeToCameraLight();
  from_upper_left->SetPosition(-0.35, 0.35, 0.87);
  from_upper_left->SetFocalPoint(0.0, 0.0, 0.0);
  renderer_->AddLight(from_upper_left);
  for (Surface* surface : {&skin_, &worn_}) {
    surface->mapper->SetInputData(surface->data);
    surface->actor->SetMapper(surface->mapper);
    light(surface->actor->GetProperty());
    renderer_->AddActor(surface->actor);
  }
  skin_.mapper->ScalarVisibilityOff();
  skin_.actor->GetProperty()->SetColor(kBareSkin.redF(), kBareSkin.greenF(), kBareSkin.blueF());
  worn_.mapper->InterpolateScalarsBeforeMappingOn();
  worn_.mapper->UseLookupTableScalarRangeOn();
}

void SceneActors::show(const BodyScene& scene, double pixel_ratio) {
  show_skin(scene);
  show_worn(scene);
  show_lines(scene, pixel_ratio);
}

void SceneActors::show_skin(const BodyScene& scene) {
  if (scene.skin == shown_skin_) return;
  shown_skin_ = scene.skin;
  skin_.data->Initialize();
  if (!shown_skin_) return;
  skin_.data->SetPoints(points_of(shown_skin_->mesh().vertices_m));
  skin_.data->SetPolys(cells_of(shown_skin_->mesh().faces));
  skin_.data->GetPointData()->SetNormals(normals_of(shown_skin_->normals()));
}

void SceneActors::show_worn(const BodyScene& scene) {
  worn_.data->Initialize();
  worn_.actor->SetVisibility(scene.worn.has_value());
  if (!scene.worn) return;
  const WornSurface& worn = *scene.worn;
  worn_.data->SetPoints(points_of(worn.points_m));
  worn_.data->SetPolys(cells_of(worn.triangles));
  worn_.data->GetPointData()->SetNormals(normals_of(worn.normals));
  worn_.mapper->SetScalarVisibility(worn.pressure_pa.size() > 0);
  worn_.actor->GetProperty()->SetColor(kLayoutAlone.redF(), kLayoutAlone.greenF(), kLayoutAlone.blueF());
  if (worn.pressure_pa.size() == 0) return;
  vtkNew<vtkDoubleArray> pressure;
  pressure->SetNumberOfValues(worn.pressure_pa.size());
  for (Eigen::Index v = 0; v < worn.pressure_pa.size(); ++v) pressure->SetValue(v, worn.pressure_pa[v]);
  worn_.data->GetPointData()->SetScalars(pressure);
  worn_.mapper->SetLookupTable(colours(scene.top_pa, scene.dimmed));
}

void SceneActors::show_lines(const BodyScene& scene, double pixel_ratio) {
  for (const auto& old : lines_) renderer_->RemoveActor(old->actor);
  lines_.clear();
  for (const SceneLines& lines : scene.lines) {
    auto shown = std::make_unique<Surface>();
    vtkNew<vtkCellArray> cells;
    for (vtkIdType k = 0; k + 1 < lines.ends_m.rows(); k += 2) {
      const vtkIdType ends[2] = {k, k + 1};
      cells->InsertNextCell(2, ends);
    }
    shown->data->SetPoints(points_of(lines.ends_m));
    shown->data->SetLines(cells);
    shown->mapper->SetInputData(shown->data);
    shown->mapper->ScalarVisibilityOff();
    shown->actor->SetMapper(shown->mapper);
    vtkProperty* property = shown->actor->GetProperty();
    property->SetColor(lines.colour.redF(), lines.colour.greenF(), lines.colour.blueF());
    property->SetLineWidth(static_cast<float>(lines.width * pixel_ratio));
    property->LightingOff();
    renderer_->AddActor(shown->actor);
    lines_.push_back(std::move(shown));
  }
}

void SceneActors::look(const LimbView& view) {
  constexpr double kAway_m = 4.0;  // farther than any body reaches
  vtkCamera* camera = renderer_->GetActiveCamera();
  const Vec3 eye = view.centre_m + kAway_m * view.rows.row(2).transpose();
  camera->ParallelProjectionOn();
  camera->SetFocalPoint(view.centre_m.data());
  camera->SetPosition(eye.data());
  camera->SetViewUp(view.rows(1, 0), view.rows(1, 1), view.rows(1, 2));
  camera->SetParallelScale(0.5 * view.height / view.pixels_per_m);
  camera->SetClippingRange(kAway_m - 2.0, kAway_m + 2.0);
}

void SceneActors::set_background(const QColor& colour) {
  renderer_->SetBackground(colour.redF(), colour.greenF(), colour.blueF());
}

}  // namespace wrapgauge
