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

class SceneActors {
 public:
  SceneActors();

  vtkRenderer* renderer() { return renderer_; }
  void show(const BodyScene& scene, double pixel_ratio);
  void look(const LimbView& view);
  void set_background(const QColor& colour);

 private:
  struct Surface {
    vtkNew<vtkPolyData> data;
    vtkNew<vtkPolyDataMapper> mapper;
    vtkNew<vtkActor> actor;
  };
  void show_skin(const BodyScene& scene);
  void show_worn(const BodyScene& scene);
  void show_lines(const BodyScene& scene, double pixel_ratio);

  vtkNew<vtkRenderer> renderer_;
  Surface skin_, worn_;
  std::vector<std::unique_ptr<Surface>> lines_;
  std::shared_ptr<const SkinSurface> shown_skin_;
};

}  // namespace wrapgauge
