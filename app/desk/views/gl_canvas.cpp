#include "app/desk/views/gl_canvas.hpp"

#include <vtkCallbackCommand.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLState.h>

#include <QOpenGLContext>
#include <QOpenGLFunctions>

#include "app/desk/views/scene_actors.hpp"

namespace wrapgauge {

struct GlCanvas::Pipeline {
  vtkNew<vtkGenericOpenGLRenderWindow> window;
  vtkNew<vtkCallbackCommand> make_current, is_current;
  SceneActors actors;
};

GlCanvas::GlCanvas(QWidget* parent) : QOpenGLWidget(parent), vtk_(std::make_unique<Pipeline>()) {
  vtk_->window->SetReadyForRendering(false);
  vtk_->window->SetOwnContext(0);
  vtk_->window->SetMapped(1);
  vtk_->window->SetMultiSamples(0);  // four samples cost three times the frame on software GL
  vtk_->window->SetFrameBlitModeToNoBlit();
  vtk_->window->SetForceMaximumHardwareLineWidth(1.0F);  // a core profile draws no wide lines by itself
  vtk_->make_current->SetClientData(this);
  vtk_->make_current->SetCallback([](vtkObject*, unsigned long, void* canvas, void*) {
    static_cast<GlCanvas*>(canvas)->make_current_for_vtk();
  });
  vtk_->window->AddObserver(vtkCommand::WindowMakeCurrentEvent, vtk_->make_current);
  vtk_->is_current->SetClientData(this);
  vtk_->is_current->SetCallback([](vtkObject*, unsigned long, void* canvas, void* answer) {
    const auto* context = static_cast<GlCanvas*>(canvas)->context();
    *static_cast<bool*>(answer) = context && QOpenGLContext::currentContext() == context;
  });
  vtk_->window->AddObserver(vtkCommand::WindowIsCurrentEvent, vtk_->is_current);
  vtk_->window->AddRenderer(vtk_->actors.renderer());
}

GlCanvas::~GlCanvas() {
  QObject::disconnect(cleaning_);
  clean_up();
}

// QOpenGLWidget::makeCurrent also binds Qt's own framebuffer, and VTK asks in the middle of a frame.
void GlCanvas::make_current_for_vtk() {
  if (!context() || QOpenGLContext::currentContext() == context()) return;
  makeCurrent();
  vtk_->window->GetState()->ResetFramebufferBindings();
}

void GlCanvas::initializeGL() {
  QObject::disconnect(cleaning_);
  cleaning_ = connect(context(), &QOpenGLContext::aboutToBeDestroyed, this, [this] { clean_up(); });
  vtk_->window->SetReadyForRendering(true);
  vtk_->window->OpenGLInit();
}

void GlCanvas::paintGL() {
  const double ratio = devicePixelRatioF();
  vtk_->window->SetSize(static_cast<int>(width() * ratio), static_cast<int>(height() * ratio));
  vtk_->window->SetDPI(static_cast<int>(72.0 * ratio));
  vtkOpenGLState* state = vtk_->window->GetState();
  state->Reset();
  state->ResetFramebufferBindings();
  state->Push();
  state->vtkglDepthFunc(GL_LEQUAL);
  vtk_->window->Render();
  QOpenGLFunctions* gl = context()->functions();
  gl->glBindFramebuffer(GL_FRAMEBUFFER, defaultFramebufferObject());
  state->ResetFramebufferBindings();
  state->vtkglDisable(GL_SCISSOR_TEST);
  vtk_->window->BlitDisplayFramebuffer();
  state->Pop();
}

void GlCanvas::clean_up() {
  if (!context() || !vtk_->window->GetReadyForRendering()) return;
  makeCurrent();
  vtk_->window->Finalize();
  vtk_->window->SetReadyForRendering(false);
  doneCurrent();
}

void GlCanvas::show_scene(std::shared_ptr<const BodyScene> scene) {
  vtk_->actors.show(*scene, devicePixelRatioF());
  update();
}

void GlCanvas::show_view(const LimbView& view) {
  vtk_->actors.look(view);
  update();
}

void GlCanvas::show_background(const QColor& colour) {
  vtk_->actors.set_background(colour);
  update();
}

}  // namespace wrapgauge
