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

std::optional<Vec3> site_called(const std::vector<BonySite>& sites, const std::string& name) {
  for (const BonySite& site : sites)
    if (site.name == name) return site.point_m;
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
                      chamber_called(estimate.setup.layout, finding.where),
                      site_called(estimate.limit_inputs.bony_sites, finding.where),
                      finding.model_factor.has_value()});
  for (const Hazard& hazard : estimate.hazards)
    if (hazard.severity != Severity::kNote)
      listed.push_back({hazard.severity,
                        severity_words(hazard.severity),
                        text(in_a_row({in_a_row({hazard.name, hazard.sentence}, ": "), hazard.control})),
                        {},
                        {}});
  std::stable_sort(listed.begin(), listed.end(),
                   [](const ListedFinding& a, const ListedFinding& b) { return a.severity > b.severity; });
  return listed;
}

std::vector<ListedFinding> listed_findings(const CheckedPlan& checked) {
  std::vector<ListedFinding> listed;
  for (const Problem& problem : checked.layout_problems)
    listed.push_back({Severity::kAboveLimit,
                      FindingsList::tr("To mend"),
                      QString::fromStdString(problem.message),
                      chamber_of(problem.places),
                      {}});
  for (const CastingFinding& finding : checked.casting)
    listed.push_back({Severity::kWarn,
                      FindingsList::tr("When casting"),
                      QString::fromStdString(finding.sentence),
                      chamber_of(finding.parts),
                      {}});
  return listed;
}

QString plain_words(const std::vector<ListedFinding>& findings) {
  const auto names_factor = [](const ListedFinding& finding) { return finding.names_model_factor; };
  if (std::none_of(findings.begin(), findings.end(), names_factor)) return {};
  return FindingsList::tr(
      "Model factor: predicted pressures are multiplied by it before they are held against a limit, because "
      "no measurement has confirmed them yet.");
}

FindingsList::FindingsList(const QString& name, QWidget* parent) : QListWidget(parent) {
  setAccessibleName(name);
  setWordWrap(true);
  setAlternatingRowColors(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setSizeAdjustPolicy(QAbstractScrollArea::AdjustIgnored);
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
    addItem(finding.label + QStringLiteral(": ") + finding.sentence);
    item(count() - 1)->setToolTip(plain_words({finding}));
  }
  setVisible(!findings_.empty());
  fit();
}

void FindingsList::resizeEvent(QResizeEvent* event) {
  QListWidget::resizeEvent(event);
  fit();
}

// As tall as its sentences, so that the column scrolls and not the list in it.
void FindingsList::fit() {
  const int width = viewport()->width() - 8;
  int height = 4;
  for (int i = 0; i < count(); ++i) {
    const int lines =
        fontMetrics()
            .boundingRect(QRect(0, 0, std::max(width, 80), 10000), Qt::TextWordWrap, item(i)->text())
            .height();
    item(i)->setSizeHint(QSize(0, lines + 8));
    height += lines + 8;
  }
  setFixedHeight(height + 2 * frameWidth());
}

}  // namespace wrapgauge
