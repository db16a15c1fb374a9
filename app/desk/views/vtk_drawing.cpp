#include "app/desk/views/vtk_drawing.hpp"

#include <vtkNew.h>
#include <vtkRenderWindow.h>
#include <vtkUnsignedCharArray.h>

#include <QGuiApplication>

#include "app/desk/views/scene_actors.hpp"

namespace wrapgauge {

struct VtkDrawing::Pipeline {
  SceneActors actors;
  vtkNew<vtkRenderWindow> window;
  vtkNew<vtkUnsignedCharArray> pixels;
};

VtkDrawing::VtkDrawing() : vtk_(std::make_unique<Pipeline>()) {
  // The display that the window is on, whatever the environment names.
  if (const auto* x11 = qGuiApp->nativeInterface<QNativeInterface::QX11Application>())
    vtk_->window->SetDisplayId(x11->display());
  vtk_->window->OffScreenRenderingOn();
  vtk_->window->SetMultiSamples(0);  // four samples cost three times the frame on software OpenGL
  vtk_->window->AddRenderer(vtk_->actors.renderer());
}

VtkDrawing::~VtkDrawing() = default;

QImage VtkDrawing::picture(const BodyFrame& frame) {
  const int width = frame.pixels.width(), height = frame.pixels.height();
  vtk_->window->SetSize(width, height);
  if (frame.scene) vtk_->actors.show(*frame.scene, frame.pixel_ratio);
  vtk_->actors.look(frame.view);
  vtk_->actors.set_background(frame.background);
  vtk_->window->Render();
  vtk_->window->GetRGBACharPixelData(0, 0, width - 1, height - 1, 0, vtk_->pixels);
  const QImage upside_down(vtk_->pixels->GetPointer(0), width, height, QImage::Format_RGBX8888);
  return upside_down.mirrored().convertToFormat(QImage::Format_RGB32);
}

}  // namespace wrapgauge
