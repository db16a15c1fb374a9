#include <QApplication>
#include <QCommandLineParser>
#include <QLibraryInfo>
#include <QLocale>
#include <QMessageBox>
#include <QSettings>
#include <QStandardPaths>
#include <QTranslator>
#include <cstdio>
#include <exception>
#include <optional>

#include "app/desk/window/main_window.hpp"
#include "app/desk/window/recent_plans.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/job/program_end.hpp"
#include "model/core/freed_memory.hpp"
#include "model/core/thrown.hpp"
#include "model/core/version.hpp"

namespace {

// What an answer to a click, a key or a timer throws ends here with a sentence: the plan is still there to be
// saved.
class Desk : public QApplication {
 public:
  using QApplication::QApplication;

  bool notify(QObject* receiver, QEvent* event) override {
    std::optional<wrapgauge::Problem> problem;
    try {
      return QApplication::notify(receiver, event);
    } catch (...) {
      problem = wrapgauge::problem_of(std::current_exception());
    }
    std::fprintf(stderr, "wrapgauge-desk: %s\n", problem->message.c_str());
    if (!saying_) {  // drawing what lies under the sentence may fail again
      saying_ = true;
      QMessageBox::critical(activeWindow(), applicationName(), text(*problem));
      saying_ = false;
    }
    return false;
  }

 private:
  bool saying_ = false;
};

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

// All of it is gone when this returns: what the window keeps for recovery is put away.
int run_window(int count, char** arguments) {
  Desk application(count, arguments);
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
  const bool first_use = files.isEmpty() && wrapgauge::recent_plans().isEmpty();
  window.start(files.isEmpty() ? std::string() : files.front().toStdString());
  if (first_use) window.show_start_page();
  return QApplication::exec();
}

}  // namespace

int main(int count, char** arguments) {
  wrapgauge::end_with_a_sentence("wrapgauge-desk");
  wrapgauge::hold_libraries_to_one_thread(arguments);
  wrapgauge::keep_freed_memory();
  int code = 2;
  try {
    code = run_window(count, arguments);
  } catch (...) {
    std::fprintf(stderr, "wrapgauge-desk: %s\n",
                 wrapgauge::problem_of(std::current_exception()).message.c_str());
  }
  wrapgauge::end_program(code);
}
