#include "app/desk/views/vtk_drawing.hpp"

#include <vtkCallbackCommand.h>
#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkOpenGLFramebufferObject.h>
#include <vtkOpenGLState.h>

#include <QOpenGLContext>
#include <QOpenGLFunctions>

namespace wrapgauge {

struct VtkDrawing::Pipeline {
  vtkNew<vtkGenericOpenGLRenderWindow> window;
  vtkNew<vtkCallbackCommand> make_current, is_current;
  SceneActors actors;
};

VtkDrawing::VtkDrawing(std::function<QOpenGLContext*()> context, std::function<void()> make_current)
    : context_(std::move(context)),
      make_current_(std::move(make_current)),
      vtk_(std::make_unique<Pipeline>()) {
  vtk_->window->SetReadyForRendering(false);
  vtk_->window->SetOwnContext(0);
  vtk_->window->SetMapped(1);
  vtk_->window->SetMultiSamples(0);  // four samples cost three times the frame on software GL
  vtk_->window->SetFrameBlitModeToNoBlit();
  vtk_->window->SetForceMaximumHardwareLineWidth(1.0F);  // a core profile draws no wide lines by itself
  vtk_->make_current->SetClientData(this);
  vtk_->make_current->SetCallback([](vtkObject*, unsigned long, void* drawing, void*) {
    static_cast<VtkDrawing*>(drawing)->make_current_for_vtk();
  });
  vtk_->window->AddObserver(vtkCommand::WindowMakeCurrentEvent, vtk_->make_current);
  vtk_->is_current->SetClientData(this);
  vtk_->is_current->SetCallback([](vtkObject*, unsigned long, void* drawing, void* answer) {
    *static_cast<bool*>(answer) = static_cast<VtkDrawing*>(drawing)->is_current();
  });
  vtk_->window->AddObserver(vtkCommand::WindowIsCurrentEvent, vtk_->is_current);
  vtk_->window->AddRenderer(vtk_->actors.renderer());
}

VtkDrawing::~VtkDrawing() = default;

SceneActors& VtkDrawing::actors() {
  return vtk_->actors;
}

bool VtkDrawing::is_current() const {
  QOpenGLContext* context = context_();
  return context && QOpenGLContext::currentContext() == context;
}

// A canvas that makes its context current may also bind a framebuffer of its own.
void VtkDrawing::make_current_for_vtk() {
  if (!context_() || is_current()) return;
  make_current_();
  vtk_->window->GetState()->ResetFramebufferBindings();
}

void VtkDrawing::start() {
  vtk_->window->SetReadyForRendering(true);
  vtk_->window->OpenGLInit();
}

void VtkDrawing::end() {
  if (!context_() || !vtk_->window->GetReadyForRendering()) return;
  make_current_();
  vtk_->window->Finalize();
  vtk_->window->SetReadyForRendering(false);
  context_()->doneCurrent();
}

void VtkDrawing::draw(const QSize& pixels, double pixel_ratio, unsigned framebuffer) {
  vtk_->window->SetSize(pixels.width(), pixels.height());
  vtk_->window->SetDPI(static_cast<int>(72.0 * pixel_ratio));
  vtkOpenGLState* state = vtk_->window->GetState();
  state->Reset();
  state->ResetFramebufferBindings();
  state->Push();
  state->vtkglDepthFunc(GL_LEQUAL);
  vtk_->window->Render();
  context_()->functions()->glBindFramebuffer(GL_FRAMEBUFFER, framebuffer);
  state->ResetFramebufferBindings();
  state->vtkglDisable(GL_SCISSOR_TEST);
  vtk_->window->BlitDisplayFramebuffer();
  state->Pop();
}

}  // namespace wrapgauge
