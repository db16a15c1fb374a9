#include "app/desk/views/gl_probe.hpp"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QSurfaceFormat>

namespace wrapgauge {
namespace {

QString translated(const char* words) {
  return QCoreApplication::translate("GraphicsProbe", words);
}

struct Probed {
  QString why_not;
  bool software = false;
};

// Mesa's drivers that need no graphics processor.
bool is_software(const QByteArray& renderer) {
  for (const char* name : {"llvmpipe", "softpipe", "swrast", "Software Rasterizer"})
    if (renderer.contains(name)) return true;
  return false;
}

Probed probe() {
  if (QGuiApplication::platformName() != QStringLiteral("xcb"))
    return {translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the window does not run on an X display"))};
  QOpenGLContext context;
  context.setFormat(QSurfaceFormat::defaultFormat());
  if (!context.create())
    return {translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display offers no OpenGL"))};
  QOffscreenSurface surface;
  surface.setFormat(context.format());
  surface.create();
  if (!context.makeCurrent(&surface))
    return {translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display's OpenGL cannot be used"))};
  const bool desktop = !context.isOpenGLES();
  const QSurfaceFormat got = context.format();
  const QByteArray renderer(reinterpret_cast<const char*>(context.functions()->glGetString(GL_RENDERER)));
  context.doneCurrent();
  if (!desktop || got.version() < qMakePair(3, 2))
    return {translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display offers OpenGL %1.%2; 3.2 is needed"))
                .arg(got.majorVersion())
                .arg(got.minorVersion())};
  return {{}, is_software(renderer)};
}

const Probed& probed() {
  static const Probed answer = probe();
  return answer;
}

}  // namespace

QString why_no_graphics() {
  return probed().why_not;
}

bool graphics_are_software() {
  return probed().software;
}

void choose_graphics_format() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setVersion(3, 2);
  format.setRedBufferSize(8);
  format.setGreenBufferSize(8);
  format.setBlueBufferSize(8);
  format.setAlphaBufferSize(8);
  format.setDepthBufferSize(24);
  format.setSamples(0);
  QSurfaceFormat::setDefaultFormat(format);
}

}  // namespace wrapgauge
