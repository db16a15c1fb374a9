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
#include <utility>

#include "app/picture/colour_map.hpp"

namespace wrapgauge {
namespace {

const QColor kLayoutAlone(214, 208, 226), kSilicone(118, 108, 136);

vtkNew<vtkFloatArray> array_of(const Points3& rows) {
  using Floats = Eigen::Matrix<float, Eigen::Dynamic, 3, Eigen::RowMajor>;
  vtkNew<vtkFloatArray> array;
  array->SetNumberOfComponents(3);
  array->SetNumberOfTuples(rows.rows());
  Eigen::Map<Floats>(array->GetPointer(0), rows.rows(), 3) = rows.cast<float>();
  return array;
}

vtkNew<vtkPoints> points_of(const Points3& points_m) {
  vtkNew<vtkPoints> points;
  points->SetData(array_of(points_m));
  return points;
}

// The light of limb_view.hpp: 0.62 from everywhere, 0.38 from the upper left.
void fill_surface(const Points3& points_m, const Points3& normals, const Triangles& triangles,
                  const QColor& colour, SceneActor& made) {
  vtkNew<vtkCellArray> cells;
  for (Eigen::Index t = 0; t < triangles.rows(); ++t)
    cells->InsertNextCell({triangles(t, 0), triangles(t, 1), triangles(t, 2)});
  made.data->SetPoints(points_of(points_m));
  made.data->SetPolys(cells);
  made.data->GetPointData()->SetNormals(array_of(normals));
  vtkProperty* property = made.actor->GetProperty();
  property->SetInterpolationToPhong();
  property->SetAmbient(0.62);
  property->SetDiffuse(0.38);
  property->SetSpecular(0.0);
  property->SetColor(colour.redF(), colour.greenF(), colour.blueF());
}

// The colours of the pictures; the lowest one is bare skin, so that what is not touched stays grey.
vtkNew<vtkLookupTable> colours(double top_pa, bool dimmed) {
  constexpr int kSteps = 256;
  vtkNew<vtkLookupTable> table;
  table->SetNumberOfTableValues(kSteps);
  table->SetTableRange(0.0, top_pa);
  for (int i = 0; i < kSteps; ++i) {
    const QColor colour = i == 0 ? kBareSkin : map_colour((i - 0.5) / (kSteps - 1), dimmed);
    table->SetTableValue(i, colour.redF(), colour.greenF(), colour.blueF());
  }
  return table;
}

void fill_worn(const WornSurface& worn, SceneActor& made) {
  fill_surface(worn.points_m, worn.normals, worn.triangles, kLayoutAlone, made);
  made.lift_m = worn.lift_m;
  if (worn.pressure_pa.size() == 0) return;
  vtkNew<vtkDoubleArray> pressure;
  pressure->SetNumberOfValues(worn.pressure_pa.size());
  std::copy(worn.pressure_pa.begin(), worn.pressure_pa.end(), pressure->GetPointer(0));
  made.data->GetPointData()->SetScalars(pressure);
  made.mapper->ScalarVisibilityOn();
  made.mapper->InterpolateScalarsBeforeMappingOn();
  made.mapper->UseLookupTableScalarRangeOn();
  made.mapper->SetLookupTable(colours(worn.top_pa, worn.dimmed));
}

// It hides little: what matters lies below it. Darker than the colours of low pressures, so that none of them
// looks lower through it.
void fill_outer(const OuterSheet& outer, SceneActor& made) {
  fill_surface(outer.points_m, outer.normals, outer.triangles, kSilicone, made);
  made.lift_m = outer.lift_m;
  vtkProperty* property = made.actor->GetProperty();
  property->SetAmbient(0.35);
  property->SetDiffuse(0.65);
  property->SetSpecular(0.5);
  property->SetSpecularPower(18.0);
  property->SetOpacity(kOuterOpacity);
  property->BackfaceCullingOn();
}

void fill_lines(const SceneLines& lines, double pixel_ratio, SceneActor& made) {
  vtkNew<vtkCellArray> cells;
  for (vtkIdType k = 0; k + 1 < lines.ends_m.rows(); k += 2) cells->InsertNextCell({k, k + 1});
  made.data->SetPoints(points_of(lines.ends_m));
  made.data->SetLines(cells);
  made.lift_m = lines.lift_m;
  vtkProperty* property = made.actor->GetProperty();
  property->SetColor(lines.colour.redF(), lines.colour.greenF(), lines.colour.blueF());
  property->SetLineWidth(static_cast<float>(lines.width * pixel_ratio));
  property->LightingOff();
}

}  // namespace

SceneActor::SceneActor() {
  mapper->SetInputData(data);
  mapper->ScalarVisibilityOff();
  actor->SetMapper(mapper);
}

SceneActors::SceneActors() {
  renderer_->SetBackgroundAlpha(1.0);
  renderer_->AutomaticLightCreationOff();
  vtkNew<vtkLight> from_upper_left;
  from_upper_left->SetLightTypeToCameraLight();
  from_upper_left->SetPosition(-0.35, 0.35, 0.87);
  from_upper_left->SetFocalPoint(0.0, 0.0, 0.0);
  renderer_->AddLight(from_upper_left);
  renderer_->AddActor(skin_.actor);
}

void SceneActors::show(const BodyScene& scene, double pixel_ratio) {
  constexpr std::size_t kMostKept = 32;
  if (parts_.size() > kMostKept || scene.skin != shown_skin_) forget_parts();
  show_skin(scene.skin);
  const auto is = [](const auto& part) { return [&](const PartActors& kept) { return kept.part == part; }; };
  for (const auto& part : scene.parts)
    if (std::none_of(parts_.begin(), parts_.end(), is(part))) add_part(part, pixel_ratio);
  for (PartActors& kept : parts_) {
    const bool wanted = std::find(scene.parts.begin(), scene.parts.end(), kept.part) != scene.parts.end();
    for (const auto& actor : kept.actors) actor->actor->SetVisibility(wanted);
  }
}

void SceneActors::forget_parts() {
  for (const PartActors& kept : parts_)
    for (const auto& actor : kept.actors) renderer_->RemoveActor(actor->actor);
  parts_.clear();
}

void SceneActors::show_skin(std::shared_ptr<const SkinSurface> skin) {
  if (skin == shown_skin_) return;
  shown_skin_ = std::move(skin);
  skin_.data->Initialize();
  if (shown_skin_)
    fill_surface(shown_skin_->mesh().vertices_m, shown_skin_->normals(), shown_skin_->mesh().faces, kBareSkin,
                 skin_);
}

void SceneActors::add_part(std::shared_ptr<const ScenePart> part, double pixel_ratio) {
  PartActors& kept = parts_.emplace_back();
  const auto added = [&]() -> SceneActor& {
    kept.actors.push_back(std::make_unique<SceneActor>());
    renderer_->AddActor(kept.actors.back()->actor);
    return *kept.actors.back();
  };
  if (part->surface) {
    SceneActor& made = added();
    fill_worn(*part->surface, made);
    lift(made);
  }
  if (part->outer) {
    SceneActor& made = added();
    fill_outer(*part->outer, made);
    lift(made);
  }
  for (const SceneLines& lines : part->lines) {
    SceneActor& made = added();
    fill_lines(lines, pixel_ratio, made);
    lift(made);
  }
  kept.part = std::move(part);
}

// The projection is a parallel one: what is moved towards the eye is seen at the same place.
void SceneActors::lift(SceneActor& actor) const {
  Vec3 by_m = actor.lift_m * towards_eye_;
  actor.actor->SetPosition(by_m.data());
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
    for (const auto& actor : kept.actors) lift(*actor);
}

void SceneActors::set_background(const QColor& colour) {
  renderer_->SetBackground(colour.redF(), colour.greenF(), colour.blueF());
}

}  // namespace wrapgauge
