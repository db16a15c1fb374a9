#include "app/picture/picture_program.hpp"

#include <QFont>
#include <QFontInfo>
#include <QGuiApplication>
#include <QHashFunctions>

namespace wrapgauge {
namespace {

// What the toolkit has to say about its surroundings is nothing a reader of results can act on.
void drop_message(QtMsgType, const QMessageLogContext&, const QString&) {}

}  // namespace

Result<std::monostate> start_picture_program() {
  if (!QCoreApplication::instance()) {
    // Set here and not left to the user: without a display Qt would end the program.
    qInstallMessageHandler(drop_message);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    // Qt orders its hashes anew in every run, and a PDF's fonts with them: same input, same bytes.
    QHashSeed::setDeterministicGlobalSeed();
    static int count = 1;
    static char name[] = "wrapgauge";
    static char* arguments[] = {name, nullptr};
    static QGuiApplication application(count, arguments);
  }
  if (QFontInfo(QFont()).family().isEmpty())
    return bad_input(Phrase::worded(
        "no font is installed, so pictures would have no words: install one, e.g. fonts-dejavu-core."));
  return std::monostate{};
}

}  // namespace wrapgauge
