#include "app/desk/window/findings_list.hpp"

#include <algorithm>

#include "app/desk/words/phrase_text.hpp"

namespace wrapgauge {
namespace {

QString severity_words(Severity severity) {
  const QString words[] = {FindingsList::tr("Note"), FindingsList::tr("Warning"),
                           FindingsList::tr("Above limit"), FindingsList::tr("Stop")};
  return words[static_cast<std::size_t>(severity)];
}

std::optional<int> chamber_called(const Layout& layout, const std::string& name) {
  for (std::size_t i = 0; i < layout.chambers.size(); ++i)
    if (layout.chambers[i].name == name) return static_cast<int>(i);
  return std::nullopt;
}

std::optional<int> chamber_of(const std::vector<ProblemPlace>& places) {
  for (const ProblemPlace& place : places)
    if (place.kind == ProblemPlace::Kind::kChamber) return place.index;
  return std::nullopt;
}

}  // namespace

std::vector<ListedFinding> listed_findings(const Estimate& estimate) {
  std::vector<ListedFinding> listed;
  for (const Finding& finding : estimate.findings)
    listed.push_back({finding.severity, severity_words(finding.severity), text(finding.sentence),
                      chamber_called(estimate.setup.layout, finding.where), finding.at_m,
                      finding.model_factor.has_value(),
                      finding.severity == Severity::kNote && !finding.comes_first,
                      card_of(finding, severity_words(finding.severity))});
  for (const Hazard& hazard : estimate.hazards)
    if (hazard.severity != Severity::kNote)
      listed.push_back({hazard.severity,
                        severity_words(hazard.severity),
                        text(in_a_row({in_a_row({hazard.name, hazard.sentence}, ": "), hazard.control})),
                        {},
                        {}});
  // What all others rest on stays in front.
  const auto leading = std::count_if(estimate.findings.begin(), estimate.findings.end(),
                                     [](const Finding& finding) { return finding.comes_first; });
  std::stable_sort(listed.begin() + leading, listed.end(),
                   [](const ListedFinding& a, const ListedFinding& b) { return a.severity > b.severity; });
  return listed;
}

std::vector<ListedFinding> listed_findings(const CheckedPlan& checked) {
  std::vector<ListedFinding> listed;
  for (const Problem& problem : checked.layout_problems)
    listed.push_back({Severity::kAboveLimit,
                      FindingsList::tr("To correct"),
                      text(problem),
                      chamber_of(problem.places),
                      {}});
  for (const CastingFinding& finding : checked.casting)
    listed.push_back({Severity::kWarn,
                      FindingsList::tr("When casting"),
                      text(finding.sentence),
                      chamber_of(finding.parts),
                      {}});
  return listed;
}

ListedApart listed_apart(const std::vector<ListedFinding>& findings) {
  ListedApart apart;
  for (const ListedFinding& finding : findings)
    (finding.aside ? apart.aside : apart.to_act_on).push_back(finding);
  return apart;
}

QString plain_words(const std::vector<ListedFinding>& findings) {
  const auto names_factor = [](const ListedFinding& finding) { return finding.names_model_factor; };
  if (std::none_of(findings.begin(), findings.end(), names_factor)) return {};
  return FindingsList::tr(
      "Model factor: predicted pressures are multiplied by it before they are held against a limit, because "
      "no measurement has confirmed them yet.");
}

FindingsList::FindingsList(const QString& name, QWidget* parent) : CardList(name, parent) {
  const auto jump = [this](QListWidgetItem* item) {
    const auto at = static_cast<std::size_t>(row(item));
    if (at >= findings_.size()) return;
    if (findings_[at].chamber) emit chamberAsked(*findings_[at].chamber);
    if (findings_[at].place_m) emit placeAsked(*findings_[at].place_m);
  };
  connect(this, &QListWidget::itemClicked, this, jump);
  connect(this, &QListWidget::itemActivated, this, jump);
}

void FindingsList::show_findings(std::vector<ListedFinding> findings) {
  clear();
  findings_ = std::move(findings);
  for (const ListedFinding& finding : findings_) {
    const QString factor = plain_words({finding});
    const QString whole = finding.sentence + (factor.isEmpty() ? QString() : QStringLiteral("\n\n") + factor);
    add(finding.label + QStringLiteral(": ") + finding.sentence, finding.card, finding.card ? whole : factor);
  }
  fit();
}

}  // namespace wrapgauge
