#include "app/desk/session/mend_words.hpp"

#include <QCoreApplication>

#include "app/desk/session/text.hpp"
#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(MendWords)
};

}  // namespace

QString step_title(MendKind kind) {
  const QString titles[] = {Words::tr("Table"),
                            Words::tr("Loose crumbs"),
                            Words::tr("Holes"),
                            Words::tr("Smoothing"),
                            Words::tr("Even triangles"),
                            Words::tr("Part kept"),
                            Words::tr("Standing upright"),
                            Words::tr("Left and right"),
                            Words::tr("Damaged faces")};
  return titles[static_cast<std::size_t>(kind)];
}

QStringList body_words(const ReadBody& read) {
  QStringList words;
  for (const MendReport& report : read.mending)
    words.push_back(step_title(report.step) + QStringLiteral(": ") + text(report.sentence));
  for (const Phrase& phrase : read.words) words.push_back(text(phrase));
  return words;
}

QString body_problem_words(const CheckedPlan& checked) {
  const QString message = text(*checked.body_problem);
  const auto* file = std::get_if<BodyFile>(&checked.plan->body);
  const auto step = failed_step(*checked.body_problem);
  if (!file || !step || *step >= file->mend.size()) return message;
  return Words::tr("Step %1 (%2): %3")
      .arg(QString::number(*step + 1), step_title(kind_of(file->mend[*step])), message);
}

}  // namespace wrapgauge
