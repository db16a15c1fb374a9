#include "app/desk/window/kept_panel.hpp"

#include <QHBoxLayout>
#include <QInputDialog>
#include <QMessageBox>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desk/session/plan_files.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "app/picture/png.hpp"
#include "app/picture/thumbnail.hpp"
#include "model/core/beside_limit.hpp"

namespace wrapgauge {
namespace {

constexpr QSize kPicture(120, 90);

QString kpa_words(Pressure pressure) {
  return fixed_words(pressure / kPa, 1) + QStringLiteral(" kPa");
}

QString share_words(const KeptFigures& figures) {
  return text(percent_beside(figures.share_of_limit));
}

KeptFigures figures_of(const SolvedPlan& solved) {
  KeptFigures figures;
  for (const Finding& finding : solved.estimate->findings)
    figures.share_of_limit = std::max(figures.share_of_limit, finding.share_of_limit);
  figures.peak = solved.estimate->figures.peak_anywhere;
  for (const ChamberFigures& chamber : solved.estimate->figures.chambers)
    figures.inside = std::max(figures.inside, chamber.gauge);
  figures.above = solved.summary->worst >= Severity::kAboveLimit;
  figures.edge = solved.fineness == Fineness::kPreview ? preview_edge(*solved.plan) : solved.plan->mesh_edge;
  return figures;
}

std::string picture_bytes(const QImage& picture) {
  const auto bytes = png_bytes(thumbnail(picture, 2 * kPicture));
  return bytes ? *bytes : std::string();
}

}  // namespace

QString figures_words(const KeptFigures& figures) {
  return KeptPanel::tr("%1 of the limit, peak %2, inside %3")
      .arg(share_words(figures), kpa_words(figures.peak), kpa_words(figures.inside));
}

QString difference_words(const KeptPlan& from, const KeptPlan& to) {
  const auto before = read_plan(from.plan), after = read_plan(to.plan);
  if (!before || !after) return text((before ? after : before).problem());
  const QString parts = parts_words(changed_parts(*before, *after));
  const QString inputs =
      parts.isEmpty() ? KeptPanel::tr("No input differs") : KeptPanel::tr("What differs: %1").arg(parts);
  QString figures =
      KeptPanel::tr("from '%1' to '%2' the share of the limit goes from %3 to %4, the peak from %5 to %6")
          .arg(QString::fromStdString(from.name), QString::fromStdString(to.name), share_words(from.figures),
               share_words(to.figures), kpa_words(from.figures.peak), kpa_words(to.figures.peak));
  if (from.figures.edge != to.figures.edge)
    figures += KeptPanel::tr("; they were calculated on different meshes (%1 and %2 mm)")
                   .arg(fixed_words(from.figures.edge / mm, 1), fixed_words(to.figures.edge / mm, 1));
  return QStringLiteral("%1; %2.").arg(inputs, figures);
}

KeptPanel::KeptPanel(PlanSession& session, std::function<QImage()> picture, QWidget* parent)
    : QWidget(parent),
      session_(session),
      picture_(std::move(picture)),
      list_(new QListWidget(this)),
      words_(words_label({}, this)),
      keep_(action_button(
          this, tr("Keep this one"), [this] { keep(); }, tr("Keep the plan as it stands in the tray"))),
      take_up_(action_button(
          this, tr("Take it up"), [this] { take_up(); }, tr("Make the chosen variant the plan"))),
      drop_(action_button(
          this, tr("Drop it"), [this] { drop(); }, tr("Delete the chosen variants"))) {
  list_->setAccessibleName(tr("Kept variants"));
  list_->setObjectName(QStringLiteral("kept"));
  list_->setIconSize(kPicture);
  list_->setSelectionMode(QAbstractItemView::ExtendedSelection);
  list_->setWordWrap(true);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(4, 4, 4, 4);
  column->addWidget(words_);
  column->addWidget(list_, 1);
  auto* row = new QHBoxLayout;
  for (QPushButton* button : {keep_, take_up_, drop_}) row->addWidget(button);
  column->addLayout(row);
  connect(list_, &QListWidget::itemSelectionChanged, this, &KeptPanel::show_buttons);
  connect(list_, &QListWidget::itemActivated, this, &KeptPanel::take_up);
  connect(&session_, &PlanSession::changed, this, [this](const SessionState& before) {
    if (!isVisible()) return;
    if (session_.now().file != before.file) return read();
    if (session_.now().differs_in_work(before)) show_buttons();
  });
}

void KeptPanel::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  read();
}

void KeptPanel::read() {
  kept_ = session_.file().empty() ? std::vector<KeptPlan>{} : kept_plans(session_.file());
  list_->clear();
  for (const KeptPlan& kept : kept_) {
    const QString above = kept.figures.above ? tr("above a limit: ") : QString();
    auto* item = new QListWidgetItem(
        QString::fromStdString(kept.name) + QChar('\n') + above + figures_words(kept.figures), list_);
    if (const QPixmap picture(QString::fromStdString(kept.picture.string())); !picture.isNull())
      item->setIcon(picture);
  }
  show_buttons();
}

std::vector<const KeptPlan*> KeptPanel::chosen() const {
  std::vector<const KeptPlan*> plans;
  for (int row = 0; row < list_->count(); ++row)
    if (list_->item(row)->isSelected()) plans.push_back(&kept_[static_cast<std::size_t>(row)]);
  return plans;
}

QString KeptPanel::compared() const {
  const auto plans = chosen();
  if (plans.size() == 2) return difference_words(*plans[0], *plans[1]);
  if (session_.file().empty()) return tr("Save the plan first: variants are kept beside it.");
  if (kept_.empty()) return tr("Nothing is kept yet. Keep the plan as it stands, change it, and compare.");
  return tr("Choose one to take it up, two to compare them.");
}

void KeptPanel::show_buttons() {
  const auto& now = session_.now();
  keep_->setEnabled(!session_.file().empty() && now.solved && now.stale.empty());
  const std::size_t count = chosen().size();
  take_up_->setEnabled(count == 1);
  drop_->setEnabled(count > 0);
  words_->setText(compared());
}

void KeptPanel::keep() {
  bool wanted = false;
  const QString name =
      QInputDialog::getText(this, tr("Keep this one"), tr("What it is called"), QLineEdit::Normal,
                            tr("Variant %1").arg(kept_.size() + 1), &wanted);
  const auto solved = session_.solved();
  if (!wanted || !solved || !session_.stale().empty()) return;
  const auto kept =
      keep_plan(session_.file(), with_files_seen_from(session_.plan(), kept_folder(session_.file())),
                name.trimmed().toStdString(), figures_of(*solved), picture_bytes(picture_()));
  if (!kept) emit problemMet(kept.problem());
  read();
}

// An edit of the plan: its own file stays what it is until it is saved.
void KeptPanel::take_up() {
  const auto plans = chosen();
  if (plans.size() != 1) return;
  auto plan = read_plan(plans.front()->plan);
  if (!plan) return void(emit problemMet(plan.problem()));
  session_.edit(tr("Take up '%1'").arg(QString::fromStdString(plans.front()->name)), std::move(plan).value());
}

// What is dropped cannot be taken back.
void KeptPanel::drop() {
  const auto sure = QMessageBox::question(
      this, tr("Drop it"), tr("Delete what is chosen from the tray? It cannot be taken back."));
  if (sure != QMessageBox::Yes) return;
  for (const KeptPlan* plan : chosen())
    if (auto dropped = drop_kept(*plan); !dropped) emit problemMet(dropped.problem());
  read();
}

}  // namespace wrapgauge
