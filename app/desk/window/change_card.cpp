#include "app/desk/window/change_card.hpp"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

#include "app/desk/words/phrase_text.hpp"
#include "model/core/beside_limit.hpp"
#include "model/study/advice_report.hpp"

namespace wrapgauge {
namespace {

constexpr int kNotEnoughAtMost = 3;

struct Words {
  Q_DECLARE_TR_FUNCTIONS(ChangeCard)
};

bool helps(const TriedChange& change) {
  return change.fate == ChangeFate::kAdvised || (change.plan && !change.outcome.failed);
}

QString share_words(double share) {
  return text(percent_beside(share));
}

QString nearest_words(const ChangeOutcome& before, const ChangeOutcome& after) {
  if (after.where.empty()) return Words::tr("Then no place comes near a limit.");
  return Words::tr("Then '%1' is nearest to its limit, at %2; now %3 at '%4'.")
      .arg(QString::fromStdString(after.where), share_words(after.share), share_words(before.share),
           QString::fromStdString(before.where));
}

// "left 2.1 to 1.2 kPa", of chambers where it shows.
QString means_words(const Advice& advice, const TriedChange& change) {
  const ChangeOutcome& before = before_of(advice, change);
  QStringList words;
  const std::size_t chambers =
      std::min({advice.chambers.size(), before.mean.size(), change.outcome.mean.size()});
  for (std::size_t c = 0; c < chambers; ++c) {
    const QString from = fixed_words(before.mean[c] / kPa, 1),
                  to = fixed_words(change.outcome.mean[c] / kPa, 1);
    if (from != to)
      words.push_back(
          Words::tr("%1 from %2 to %3 kPa").arg(QString::fromStdString(advice.chambers[c]), from, to));
  }
  return words.isEmpty() ? Words::tr("Mean contact pressure stays as it is, to 0.1 kPa.")
                         : Words::tr("Mean contact pressure: %1.").arg(words.join(QStringLiteral(", ")));
}

QString mesh_words(const Advice& advice, const TriedChange& change) {
  if (change.edge == advice.edge) return {};
  return Words::tr("Calculated on the preview's mesh only.");
}

QString label_of(ChangeFate fate) {
  return fate == ChangeFate::kAdvised ? Words::tr("Within the limits") : Words::tr("Better, but not enough");
}

int count_of(const Advice& advice, ChangeFate fate) {
  return static_cast<int>(std::count_if(advice.changes.begin(), advice.changes.end(),
                                        [&](const TriedChange& change) { return change.fate == fate; }));
}

}  // namespace

std::vector<const TriedChange*> changes_to_show(const Advice& advice) {
  std::vector<const TriedChange*> shown;
  int not_enough = 0;
  for (const TriedChange& change : advice.changes)
    if (helps(change) && (change.fate == ChangeFate::kAdvised || ++not_enough <= kNotEnoughAtMost))
      shown.push_back(&change);
  return shown;
}

FindingCard card_of(const Advice& advice, const TriedChange& change) {
  const ChangeOutcome& after = change.outcome;
  FindingCard card{.severity = change.fate == ChangeFate::kAdvised ? Severity::kNote : Severity::kAboveLimit,
                   .label = label_of(change.fate),
                   .place = text(change.words),
                   .figures = nearest_words(before_of(advice, change), after),
                   .share_words = {},
                   .share = {},
                   .words = {}};
  if (!after.where.empty()) {
    card.share = after.share;
    card.share_words = share_words(after.share);
  }
  QStringList words{means_words(advice, change), mesh_words(advice, change)};
  words.removeAll(QString());
  card.words = words.join(QChar(' '));
  return card;
}

QString advice_verdict(const Advice& advice) {
  if (advice.plan.within)
    return Words::tr(
        "Nothing predicted exceeds the limits used, so no change was looked for. This is not approval to "
        "wear the device.");
  const int advised = count_of(advice, ChangeFate::kAdvised);
  if (advised == 0)
    return Words::tr(
        "No single change that was tried brings the plan within its limits. Make one that "
        "helps, then look again.");
  if (advised == 1)
    return Words::tr(
        "One change brings the plan within its limits, with nothing else worse; calculated on the "
        "plan's own mesh.");
  return Words::tr(
             "Each of %1 changes brings the plan within its limits, with nothing else worse; calculated on "
             "the plan's own mesh.")
      .arg(advised);
}

QString rest_of_advice(const Advice& advice) {
  const std::pair<ChangeFate, QString> fates[] = {
      {ChangeFate::kNotSolved, Words::tr("within the limits on the preview's mesh only")},
      {ChangeFate::kWorse, Words::tr("making something else worse")},
      {ChangeFate::kNoHelp, Words::tr("of little help")},
      {ChangeFate::kNoAnswer, Words::tr("without an answer")},
      {ChangeFate::kLeftOut, Words::tr("not possible here")}};
  QStringList words;
  for (const auto& [fate, said] : fates)
    if (const int count = count_of(advice, fate))
      words.push_back(QStringLiteral("%1 %2").arg(count).arg(said));
  if (words.isEmpty()) return {};
  return Words::tr("Also tried: %1.").arg(words.join(QStringLiteral("; ")));
}

}  // namespace wrapgauge
