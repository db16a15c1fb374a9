#include "app/desk/session/result_words.hpp"

#include <QCoreApplication>
#include <QStringList>

#include "app/desk/words/phrase_text.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ResultWords)
};

QString mm_words(Length length) {
  return figures_text(number_text(length / mm, 3)) + QStringLiteral(" mm");
}

// The plan's own mesh is the final one; it may be as coarse as a preview's.
QString mesh_words(const SolvedPlan& solved) {
  const Length preview = preview_edge(*solved.plan), standard = solved.plan->mesh_edge;
  if (solved.fineness == Fineness::kPreview)
    return Words::tr("Preview, mesh edge %1.").arg(mm_words(preview));
  if (standard >= preview)
    return Words::tr("Final estimate, mesh edge %1: as coarse as a preview's.").arg(mm_words(standard));
  return Words::tr("Final estimate, mesh edge %1.").arg(mm_words(standard));
}

// Nobody may have said it: the strictest is taken then.
QString limits_used_words(UsePattern use) {
  const QString words[] = {Words::tr("Limits of a session."), Words::tr("Limits of a minute at most."),
                           Words::tr("Limits of pulses.")};
  return words[static_cast<std::size_t>(use)];
}

}  // namespace

QString out_of_date_words(const SessionState& state) {
  const QString parts = parts_words(state.stale);
  return parts.isEmpty() ? QString() : Words::tr("Out of date: %1 changed.").arg(parts);
}

QString made_of_words(const SessionState& state) {
  if (!state.solved) return {};
  QStringList words{out_of_date_words(state), mesh_words(*state.solved),
                    limits_used_words(state.solved->plan->use)};
  if (const auto& met = state.solved->summary->limit_point)
    words.push_back(Words::tr("Not reached: %1").arg(QString::fromStdString(*met)));
  words.removeAll(QString());
  return words.join(QChar(' '));
}

}  // namespace wrapgauge
