#include <QApplication>
#include <QCommandLineParser>
#include <QLibraryInfo>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTranslator>

#include "app/desk/window/main_window.hpp"
#include "model/core/freed_memory.hpp"
#include "model/core/version.hpp"

namespace {

// The language of the settings, else the desktop's; English where there is no translation.
void take_language(QApplication& application, const QString& asked) {
  const QString chosen = asked.isEmpty() ? QSettings().value(QStringLiteral("language")).toString() : asked;
  const QLocale locale = chosen.isEmpty() ? QLocale() : QLocale(chosen);
  QLocale::setDefault(locale);  // numbers as its readers write them
  auto* own = new QTranslator(&application);
  if (own->load(locale, QStringLiteral("wrapgauge-desk"), QStringLiteral("_"), QStringLiteral(":/i18n")))
    QApplication::installTranslator(own);
  auto* toolkit = new QTranslator(&application);
  if (toolkit->load(locale, QStringLiteral("qtbase"), QStringLiteral("_"),
                    QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QApplication::installTranslator(toolkit);
}

}  // namespace

int main(int count, char** arguments) {
  wrapgauge::keep_freed_memory();
  QApplication application(count, arguments);
  QApplication::setApplicationName(QStringLiteral("wrapgauge-desk"));
  QApplication::setOrganizationName(QStringLiteral("wrapgauge"));
  QApplication::setApplicationVersion(QString::fromUtf8(wrapgauge::program_version().data()));
  QCommandLineParser parser;
  parser.setApplicationDescription(
      QStringLiteral("Predicts how hard an inflatable silicone wearable presses on a body.\n"
                     "Predictions only: not a medical device; ask a clinician before anyone wears it."));
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument(QStringLiteral("plan"), QStringLiteral("Plan to open, a JSON file"),
                               QStringLiteral("[PLAN]"));
  const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("en or de"),
                                    QStringLiteral("CODE"));
  const QCommandLineOption colours(QStringLiteral("colours"), QStringLiteral("desktop, light or dark"),
                                   QStringLiteral("LOOK"));
  parser.addOptions({language, colours});
  parser.process(application);
  take_language(application, parser.value(language));
  wrapgauge::apply_look(wrapgauge::look_from_name(
      parser.isSet(colours) ? parser.value(colours) : QSettings().value(QStringLiteral("look")).toString()));
  const QString data = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
  wrapgauge::MainWindow window(data.toStdString());
  window.show();
  const QStringList files = parser.positionalArguments();
  window.start(files.isEmpty() ? std::string() : files.front().toStdString());
  return QApplication::exec();
}
