#include "app/desk/views/gl_probe.hpp"

#include <QCoreApplication>
#include <QGuiApplication>
#include <QOffscreenSurface>
#include <QOpenGLContext>

namespace wrapgauge {
namespace {

QString translated(const char* words) {
  return QCoreApplication::translate("GraphicsProbe", words);
}

QSurfaceFormat wanted_format() {
  QSurfaceFormat format;
  format.setRenderableType(QSurfaceFormat::OpenGL);
  format.setProfile(QSurfaceFormat::CoreProfile);
  format.setVersion(3, 2);
  return format;
}

QString probe() {
  if (QGuiApplication::platformName() != QStringLiteral("xcb"))
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the window does not run on an X display"));
  QOpenGLContext context;
  context.setFormat(wanted_format());
  // VTK speaks to the display by GLX alone, and ends the program where there is none.
  if (!context.create() || !context.nativeInterface<QNativeInterface::QGLXContext>())
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display offers no OpenGL"));
  QOffscreenSurface surface;
  surface.setFormat(context.format());
  surface.create();
  if (!context.makeCurrent(&surface))
    return translated(QT_TRANSLATE_NOOP("GraphicsProbe", "the display's OpenGL cannot be used"));
  context.doneCurrent();
  const QSurfaceFormat got = context.format();
  if (context.isOpenGLES() || got.version() < wanted_format().version())
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

}  // namespace wrapgauge
