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

#include <algorithm>

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

void fill_worn(const WornSurface& worn, vtkPolyData* data, vtkPolyDataMapper* mapper, vtkActor* actor) {
  data->SetPoints(points_of(worn.points_m));
  data->SetPolys(cells_of(worn.triangles));
  data->GetPointData()->SetNormals(normals_of(worn.normals));
  light(actor->GetProperty());
  actor->GetProperty()->SetColor(kLayoutAlone.redF(), kLayoutAlone.greenF(), kLayoutAlone.blueF());
  mapper->SetScalarVisibility(worn.pressure_pa.size() > 0);
  if (worn.pressure_pa.size() == 0) return;
  vtkNew<vtkDoubleArray> pressure;
  pressure->SetNumberOfValues(worn.pressure_pa.size());
  for (Eigen::Index v = 0; v < worn.pressure_pa.size(); ++v) pressure->SetValue(v, worn.pressure_pa[v]);
  data->GetPointData()->SetScalars(pressure);
  mapper->InterpolateScalarsBeforeMappingOn();
  mapper->UseLookupTableScalarRangeOn();
  mapper->SetLookupTable(colours(worn.top_pa, worn.dimmed));
}

void fill_lines(const SceneLines& lines, double pixel_ratio, vtkPolyData* data, vtkPolyDataMapper* mapper,
                vtkActor* actor) {
  vtkNew<vtkCellArray> cells;
  for (vtkIdType k = 0; k + 1 < lines.ends_m.rows(); k += 2) {
    const vtkIdType ends[2] = {k, k + 1};
    cells->InsertNextCell(2, ends);
  }
  data->SetPoints(points_of(lines.ends_m));
  data->SetLines(cells);
  mapper->ScalarVisibilityOff();
  vtkProperty* property = actor->GetProperty();
  property->SetColor(lines.colour.redF(), lines.colour.greenF(), lines.colour.blueF());
  property->SetLineWidth(static_cast<float>(lines.width * pixel_ratio));
  property->LightingOff();
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
  skin_.mapper->SetInputData(skin_.data);
  skin_.mapper->ScalarVisibilityOff();
  skin_.actor->SetMapper(skin_.mapper);
  light(skin_.actor->GetProperty());
  renderer_->AddActor(skin_.actor);
  skin_.actor->GetProperty()->SetColor(kBareSkin.redF(), kBareSkin.greenF(), kBareSkin.blueF());
}

void SceneActors::show(const BodyScene& scene, double pixel_ratio) {
  constexpr std::size_t kMostKept = 32;
  if (parts_.size() > kMostKept || scene.skin != shown_skin_) forget_parts();
  show_skin(scene);
  const auto is = [](const auto& part) { return [&](const PartActors& kept) { return kept.part == part; }; };
  for (const auto& part : scene.parts)
    if (std::none_of(parts_.begin(), parts_.end(), is(part))) add_part(part, pixel_ratio);
  for (PartActors& kept : parts_) {
    const bool wanted = std::find(scene.parts.begin(), scene.parts.end(), kept.part) != scene.parts.end();
    for (const auto& surface : kept.surfaces) surface->actor->SetVisibility(wanted);
  }
}

void SceneActors::forget_parts() {
  for (const PartActors& kept : parts_)
    for (const auto& surface : kept.surfaces) renderer_->RemoveActor(surface->actor);
  parts_.clear();
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

void SceneActors::add_part(std::shared_ptr<const ScenePart> part, double pixel_ratio) {
  PartActors kept;
  const auto add = [&] {
    auto surface = std::make_unique<Surface>();
    surface->mapper->SetInputData(surface->data);
    surface->actor->SetMapper(surface->mapper);
    renderer_->AddActor(surface->actor);
    kept.surfaces.push_back(std::move(surface));
    return kept.surfaces.back().get();
  };
  if (part->surface) {
    Surface* made = add();
    fill_worn(*part->surface, made->data, made->mapper, made->actor);
  }
  for (const SceneLines& lines : part->lines) {
    Surface* made = add();
    fill_lines(lines, pixel_ratio, made->data, made->mapper, made->actor);
    made->lift_m = lines.lift_m;
    lift(*made);
  }
  kept.part = std::move(part);
  parts_.push_back(std::move(kept));
}

// The projection is a parallel one: what is moved towards the eye is seen at the same place.
void SceneActors::lift(Surface& surface) const {
  const Vec3 by_m = surface.lift_m * towards_eye_;
  surface.actor->SetPosition(by_m.x(), by_m.y(), by_m.z());
}

void SceneActors::look(const LimbView& view) {
  constexpr double kAway_m = 4.0;  // farther than any body reaches
  vtkCamera* camera = renderer_->GetActiveCamera();
  towards_eye_ = view.rows.row(2).transpose();
  const Vec3 eye = view.centre_m + kAway_m * towards_eye_;
  camera->ParallelProjectionOn();
  camera->SetFocalPoint(view.centre_m.data());
  camera->SetPosition(eye.data());
  camera->SetViewUp(view.rows(1, 0), view.rows(1, 1), view.rows(1, 2));
  camera->SetParallelScale(0.5 * view.height / view.pixels_per_m);
  camera->SetClippingRange(kAway_m - 2.0, kAway_m + 2.0);
  for (PartActors& kept : parts_)
    for (const auto& surface : kept.surfaces) lift(*surface);
}

void SceneActors::set_background(const QColor& colour) {
  renderer_->SetBackground(colour.redF(), colour.greenF(), colour.blueF());
}

}  // namespace wrapgauge
