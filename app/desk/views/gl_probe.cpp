#include "app/desk/views/gl_probe.hpp"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QOffscreenSurface>
#include <QOpenGLContext>
#include <QSurfaceFormat>

namespace wrapgauge {
namespace {

QString translated(const char* words) {
  return QCoreApplication::translate("GraphicsProbe", words);
}

QString probe() {
  if (QGuiApplication::platformName() != QStringLiteral("xcb"))
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the window does not run on an X display"));
  QOpenGLContext context;
  context.setFormat(QSurfaceFormat::defaultFormat());
  if (!context.create())
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display offers no OpenGL"));
  QOffscreenSurface surface;
  surface.setFormat(context.format());
  surface.create();
  if (!context.makeCurrent(&surface))
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display's OpenGL cannot be used"));
  const bool desktop = !context.isOpenGLES();
  const QSurfaceFormat got = context.format();
  context.doneCurrent();
  if (!desktop || got.version() < qMakePair(3, 2))
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display offers OpenGL %1.%2; 3.2 is needed"))
        .arg(got.majorVersion())
        .arg(got.minorVersion());
  return {};
}

}  // namespace

QString why_no_graphics() {
  static const QString answer = probe();
  return answer;
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
