#include "app/desk/window/view_area.hpp"

#include <QDataStream>
#include <QTabWidget>
#include <QVBoxLayout>

#include "app/desk/session/mend_words.hpp"
#include "app/desk/session/result_words.hpp"
#include "app/desk/window/kept_panel.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/words/phrase_text.hpp"
#include "model/layout/part_edits.hpp"

namespace wrapgauge {
namespace {

constexpr int kBeforeLook_ms = 150;

QString what_helps(BodyNeed need) {
  switch (need) {
    case BodyNeed::kOtherUnit:
      return ViewArea::tr("Choose another unit of the file in the step Body.");
    case BodyNeed::kMending:
      return ViewArea::tr("Tick Raw scan: repair it in the step Body.");
    case BodyNeed::kOtherMending:
      return ViewArea::tr("Change the steps of repair in the step Body.");
    case BodyNeed::kOtherMeasures:
    case BodyNeed::kOtherFile:
      break;
  }
  return ViewArea::tr("Open another file in the step Body.");
}

// Empty: there is a body, or none was asked for.
QString no_body_words(const CheckedPlan& checked) {
  if (checked.body || !checked.body_problem) return {};
  const QString why = body_problem_words(checked);
  const auto* file = std::get_if<BodyFile>(&checked.plan->body);
  if (!file) return why;
  const QString words = ViewArea::tr("%1 could not be read as a body.\n%2\n%3");
  return words.arg(QString::fromStdString(file->file.filename().string()), why,
                   what_helps(checked.body_need.value_or(BodyNeed::kOtherFile)));
}

}  // namespace

ViewArea::ViewArea(PlanSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      shown_(selection_),
      body_(new BodyView(shown_, selection_, this)),
      flat_(new FlatView(shown_, selection_, this)),
      strip_(new PathStrip(shown_, selection_, this)),
      across_(new QSplitter(Qt::Horizontal, this)),
      down_(new QSplitter(Qt::Vertical, this)),
      below_(new QSplitter(Qt::Horizontal, this)) {
  arrange();
  connect_edits();
  connect(&session, &PlanSession::changed, this,
          [this](const SessionState& before) { show_state(session_.now(), before); });
  show_result(session.now(), {});
  look_timer_.setSingleShot(true);
  look_timer_.setInterval(kBeforeLook_ms);
  connect(&look_timer_, &QTimer::timeout, this, &ViewArea::begin_look);
}

void ViewArea::arrange() {
  body_->setAccessibleName(tr("Body with the layout on it"));
  flat_->setAccessibleName(tr("Flat layout"));
  strip_->setAccessibleName(tr("Inflation strip"));
  across_->addWidget(body_);
  across_->addWidget(flat_);
  across_->setChildrenCollapsible(false);
  auto* tabs = new QTabWidget(this);
  tabs->setDocumentMode(true);
  auto* table = new ChamberTable(shown_, selection_, tabs);
  table->setAccessibleName(tr("Figures of each chamber"));
  tabs->addTab(table, tr("Chambers"));
  QWidget* probe = in_scroll(new ProbePanel(shown_, selection_, tabs), tabs);
  tabs->addTab(probe, tr("Picked spot"));
  auto* cut = new CutView(shown_, selection_, tabs);
  cut->setAccessibleName(tr("Section of the limb with the device on it"));
  tabs->addTab(cut, tr("Cut"));
  connect(body_, &BodyView::ringMoved, cut, &CutView::cut_at);
  auto* kept = new KeptPanel(
      session_, [this] { return body_->picture(); }, tabs);
  tabs->addTab(kept, tr("Kept"));
  connect(kept, &KeptPanel::problemMet, this, &ViewArea::problemMet);
  connect(&selection_, &Selection::placeChanged, tabs, [this, tabs, probe, cut] {
    if (selection_.place_m() && tabs->currentWidget() != cut) tabs->setCurrentWidget(probe);
  });
  below_->addWidget(strip_);
  below_->addWidget(tabs);
  below_->setChildrenCollapsible(false);
  down_->addWidget(across_);
  down_->addWidget(below_);
  down_->setStretchFactor(0, 3);
  down_->setStretchFactor(1, 1);
  down_->setSizes({540, 260});
  down_->setChildrenCollapsible(false);
  across_->setSizes({560, 480});
  below_->setSizes({320, 720});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(2);
  column->addWidget(down_, 1);
}

// Another plan was opened: nothing of the one before is to be seen while its body is read.
void ViewArea::forget_plan() {
  shown_.show_worn(nullptr);
  shown_.show_rim(nullptr);
  shown_.show_body(nullptr);
  shown_.mark({});
  shown_.say_no_body(tr("The body is being read…"));
}

void ViewArea::show_state(const SessionState& now, const SessionState& before) {
  if (now.differs_in_work(before)) end_look();
  if (before.check && !now.check) forget_plan();
  if (now.plan != before.plan) show_plan(*now.plan);
  if (now.check != before.check && now.check) show_checked(*now.check);
  if (now.differs_in_work(before)) show_result(now, before);
}

void ViewArea::show_plan(const Plan& plan) {
  shown_.show_layout(has_layout(plan) ? std::make_shared<const Layout>(plan.layout) : nullptr);
  if (has_body(plan)) {
    if (!shown_.body() && shown_.no_body().isEmpty()) shown_.say_no_body(tr("The body is being read…"));
    return;
  }
  shown_.show_body(nullptr);
  shown_.say_no_body({});
}

void ViewArea::connect_edits() {
  connect(body_, &BodyView::eyeMoved, flat_, &FlatView::show_eye);
  connect(flat_, &FlatView::lookAsked, body_, &BodyView::look_from_direction);
  connect(body_, &BodyView::anchorMoved, this, &ViewArea::take_anchor);
  connect(body_, &BodyView::turned, this, &ViewArea::take_turn);
  connect(flat_, &FlatView::chamberMoved, this, [this](ChamberId chamber, const Vec2& by_m) {
    move_part({LayoutPart::Kind::kChamber, index_of(chamber), 0}, by_m);
  });
  connect(flat_, &FlatView::partMoved, this, &ViewArea::move_part);
  connect(flat_, &FlatView::gripMoved, this, &ViewArea::take_grip);
}

void ViewArea::move_part(const LayoutPart& part, const Vec2& by_m) {
  session_.edit_layout(tr("Move %1").arg(text(part_title(session_.plan().layout, part))),
                       with_part_moved(session_.plan().layout, part, by_m));
}

void ViewArea::take_grip(const LayoutGrip& grip, const Layout& changed) {
  const bool point = grip.kind == LayoutGrip::Kind::kPoint;
  const Layout& layout = session_.plan().layout;
  session_.edit_layout(
      point ? tr("Move a point of %1").arg(text(part_title(layout, grip.part))) : tr("Closing"), changed);
}

void ViewArea::show_checked(const CheckedPlan& checked) {
  if (checked.body) {
    std::vector<BonySite> sites = checked.body->body.bony_sites;
    sites.insert(sites.end(), checked.plan->bony_sites.begin(), checked.plan->bony_sites.end());
    const auto& surface = checked.surface;
    shown_.show_body(
        std::shared_ptr<const Body>(checked.body, &checked.body->body), std::move(sites),
        checked.plan->regions,
        {checked.skin,
         surface ? std::shared_ptr<const PlaneSections>(surface, &surface->sections()) : nullptr});
  } else {
    shown_.show_body(nullptr);
  }
  shown_.say_no_body(no_body_words(checked));
  shown_.show_worn(checked.prepared);
  shown_.show_rim(checked.rim);
  std::vector<ProblemPlace> places;
  for (const auto& problem : checked.layout_problems)
    places.insert(places.end(), problem.places.begin(), problem.places.end());
  for (const auto& problem : {checked.body_problem, checked.wear_problem})
    if (problem) places.insert(places.end(), problem->places.begin(), problem->places.end());
  shown_.mark(std::move(places));
}

void ViewArea::show_result(const SessionState& now, const SessionState& before) {
  // Another result may be the same estimate under another name.
  const auto estimate = now.solved ? now.solved->estimate : nullptr;
  if (estimate != (before.solved ? before.solved->estimate : nullptr)) shown_.show_estimate(estimate);
  shown_.show_stale(out_of_date_words(now));
}

// Its lines go with the hand; the check that follows shows it as it then lies.
void ViewArea::show_in_hand(const Plan& moved) {
  const auto& check = session_.now().check;
  if (!check || !check->surface || !has_layout(moved) || moved.placement == session_.plan().placement) return;
  auto rim = laid_rim(*check->surface, moved.layout, moved.placement);
  shown_.show_rim(rim ? std::make_shared<const LaidRim>(std::move(rim).value()) : nullptr);
}

void ViewArea::take_anchor(const AnchorAtStation& anchor, const Vec3&, bool finished) {
  Plan plan = session_.plan();
  plan.placement.anchor = anchor;
  show_in_hand(plan);
  session_.edit(tr("Move the layout"), std::move(plan), QStringLiteral("wear.drag"));
  if (finished) session_.end_merge();
}

void ViewArea::take_turn(double by_deg, bool finished) {
  if (!turn_before_) turn_before_ = session_.plan().placement.turn_deg;
  Plan plan = session_.plan();
  plan.placement.turn_deg = *turn_before_ + by_deg;
  show_in_hand(plan);
  session_.edit(tr("Turn the layout"), std::move(plan), QStringLiteral("wear.drag.turn"));
  if (!finished) return;
  turn_before_.reset();
  session_.end_merge();
}

void ViewArea::show_chamber(int chamber) {
  selection_.select_chamber(static_cast<ChamberId>(chamber));
}

void ViewArea::show_place(const Vec3& place_m) {
  selection_.pick_place(place_m);
  body_->show_place(place_m);
}

QByteArray ViewArea::save_state() const {
  QByteArray all;
  QDataStream out(&all, QIODevice::WriteOnly);
  out << across_->saveState() << down_->saveState() << below_->saveState();
  return all;
}

void ViewArea::restore_state(const QByteArray& state) {
  QDataStream in(state);
  QByteArray across, down, below;
  in >> across >> down >> below;
  if (in.status() != QDataStream::Ok) return;
  across_->restoreState(across);
  down_->restoreState(down);
  below_->restoreState(below);
}

}  // namespace wrapgauge
