#pragma once
// A body scene as VTK actors.

#include <vtkActor.h>
#include <vtkNew.h>
#include <vtkPolyData.h>
#include <vtkPolyDataMapper.h>
#include <vtkRenderer.h>

#include <memory>
#include <vector>

#include "app/desk/views/body_scene.hpp"
#include "app/picture/limb_view.hpp"

namespace wrapgauge {

// One thing drawn.
struct SceneActor {
  SceneActor();

  vtkNew<vtkPolyData> data;
  vtkNew<vtkPolyDataMapper> mapper;
  vtkNew<vtkActor> actor;
  double lift_m = 0.0;  // towards the eye
};

class SceneActors {
 public:
  SceneActors();

  vtkRenderer* renderer() { return renderer_; }
  void show(const BodyScene& scene, double pixel_ratio);
  void look(const LimbView& view);
  void set_background(const QColor& colour);

 private:
  // Actors stay when a part goes out of sight: it is often shown again, as when states are scrubbed.
  struct PartActors {
    std::shared_ptr<const ScenePart> part;
    std::vector<std::unique_ptr<SceneActor>> actors;
  };
  void show_skin(std::shared_ptr<const SkinSurface> skin);
  void add_part(std::shared_ptr<const ScenePart> part, double pixel_ratio);
  void forget_parts();
  void lift(SceneActor& actor) const;

  vtkNew<vtkRenderer> renderer_;
  SceneActor skin_;
  std::vector<PartActors> parts_;
  Vec3 towards_eye_ = Vec3::UnitZ();
  std::shared_ptr<const SkinSurface> shown_skin_;
};

}  // namespace wrapgauge
