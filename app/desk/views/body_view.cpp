#include "app/desk/views/body_view.hpp"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QPainter>
#include <QToolButton>
#include <algorithm>
#include <utility>

#include "app/desk/views/body_overlay.hpp"
#include "app/desk/views/moment.hpp"
#include "app/desk/views/rim_part.hpp"
#include "app/desk/views/save_views.hpp"
#include "app/desk/views/view_colours.hpp"
#include "app/desk/views/view_legend.hpp"

namespace wrapgauge {
namespace {

constexpr int kNoState = -1;

}  // namespace

BodyView::BodyView(const ShownPlan& shown, Selection& selection, QWidget* parent)
    : QWidget(parent),
      shown_(shown),
      selection_(selection),
      canvas_(new BodyCanvas(this)),
      overlay_(new BodyOverlay(shown, selection, this)) {
  setFocusPolicy(Qt::StrongFocus);
  setAccessibleName(tr("The body with the layout on it"));
  setMinimumSize(240, 200);
  canvas_->setObjectName("canvas");
  canvas_->installEventFilter(this);
  canvas_->setFocusPolicy(Qt::NoFocus);
  canvas_->setMouseTracking(true);  // the hand over the ring of the cut
  canvas_->show_background(view_colours(*this).paper);
  add_buttons();
  offer_picture(this, tr("body"), [this] { return picture(); });
  connect(&shown_, &ShownPlan::bodyChanged, this, &BodyView::body_changed);
  for (const auto signal : {&ShownPlan::wornChanged, &ShownPlan::estimateChanged, &ShownPlan::staleChanged,
                            &ShownPlan::marksChanged})
    connect(&shown_, signal, this, &BodyView::forget_states);
  connect(&shown_, &ShownPlan::rimChanged, this, [this] {
    look_at_gap();
    rebuild_scene();
  });
  connect(&shown_, &ShownPlan::stateRead, this, [this](int state) {
    if (state == selection_.state()) rebuild_scene();
  });
  for (const auto signal : {&Selection::chamberChanged, &Selection::placeChanged, &Selection::fillingChanged,
                            &Selection::cutChanged})
    connect(&selection_, signal, this, &BodyView::rebuild_scene);
  connect(&selection_, &Selection::chamberChanged, this, &BodyView::chamber_chosen);
  connect(&selection_, &Selection::unitChanged, overlay_, qOverload<>(&QWidget::update));
  connect(&shown_, &ShownPlan::wouldBeChanged, this, &BodyView::show_view);
  connect(&shown_, &ShownPlan::staleChanged, overlay_, qOverload<>(&QWidget::update));
  connect(&shown_, &ShownPlan::estimateChanged, overlay_, qOverload<>(&QWidget::update));
  body_changed();
}

QToolButton* BodyView::small_button(const QString& words, const QString& help) {
  auto* button = new QToolButton(this);
  button->setText(words);
  button->setToolTip(help);
  button->setAccessibleName(help);
  return button;
}

void BodyView::add_look_buttons(QHBoxLayout& line) {
  line.setSpacing(0);
  const auto add = [&](BodyLook look, const QString& words, const QString& help) {
    QToolButton* button = look_buttons_[look] = small_button(words, help);
    button->setCheckable(true);
    button->setObjectName(QStringLiteral("look"));
    connect(button, &QToolButton::clicked, this, [this, look] { show_look(look); });
    line.addWidget(button);
  };
  add(BodyLook::kDevice, tr("Device"),
      tr("Show the device as it was solved: the outer sheet seen through, the skin side in colours"));
  add(BodyLook::kSkin, tr("Skin"), tr("Show the pressure on the skin, in the very colours of the legend"));
  line.addStretch();
  mark_look(look_);
}

// In bold too: some styles show a button that is down hardly otherwise.
void BodyView::mark_look(BodyLook look) {
  for (const auto& [of, button] : look_buttons_) {
    button->setChecked(of == look);
    QFont words = font();
    words.setBold(of == look);
    button->setFont(words);
  }
}

void BodyView::show_look(BodyLook look) {
  mark_look(look);
  if (look == look_) return;
  look_ = look;
  forget_states();
}

void BodyView::add_buttons() {
  row_ = new QGridLayout;
  row_->setSpacing(6);
  const auto add = [&](const QString& words, const QString& help, auto act) {
    QToolButton* button = small_button(words, help);
    connect(button, &QToolButton::clicked, this, act);
    buttons_.push_back(button);
    return button;
  };
  front_button_ = add(tr("Front"), tr("Look at the anchor"), [this] { look_from(ViewSide::kFront); });
  add(tr("Back"), tr("Look from the opposite side"), [this] { look_from(ViewSide::kBack); });
  add(tr("Proximal"), tr("Look from the end towards the trunk"), [this] { look_from(ViewSide::kProximal); });
  add(tr("Distal"), tr("Look from the end away from the trunk"), [this] { look_from(ViewSide::kDistal); });
  add(tr("All"), tr("Show all of the layout"), [this] { show_all(); });
  place_button_ = add(tr("Place"),
                      tr("Place the layout: click to anchor it, drag to move it along and round the body, "
                         "drag with Ctrl to turn it"),
                      [this] { set_placing(!placing_); });
  place_button_->setCheckable(true);
  auto* box = new QVBoxLayout(this);
  box->setContentsMargins(8, 8, 8, 44);
  auto* looks = new QHBoxLayout;
  add_look_buttons(*looks);
  box->addLayout(looks);
  box->addStretch();
  auto* line = new QHBoxLayout;
  line->addLayout(row_);
  line->addStretch();
  box->addLayout(line);
}

void BodyView::set_placing(bool placing) {
  place_button_->setChecked(placing);
  if (placing == placing_) return;
  placing_ = placing;
  if (placing && !asked_.isEmpty()) {
    ask_for_click({});
    emit clickGivenUp();
  }
  setContextMenuPolicy(placing ? Qt::PreventContextMenu : Qt::ActionsContextMenu);
  show_view();
  emit placingChanged(placing);
}

void BodyView::ask_for_click(const QString& hint) {
  asked_ = hint;
  if (!hint.isEmpty()) set_placing(false);
  canvas_->setCursor(hint.isEmpty() ? Qt::ArrowCursor : Qt::CrossCursor);
  show_view();
}

void BodyView::give_click(const Vec3& place_m) {
  ask_for_click({});
  emit clickGiven(place_m);
}

void BodyView::body_changed() {
  sites_ = std::make_shared<const ScenePart>(sites_part(shown_));
  forget_states();
}

void BodyView::forget_states() {
  states_.clear();
  rebuild_scene();
}

const Wrap* BodyView::wrap() const {
  if (shown_.worn()) return &shown_.worn()->wrap;
  return shown_.estimate() ? &shown_.estimate()->wrap : nullptr;
}

Points3 BodyView::points_to_fit() const {
  if (!scene_ || !scene_->skin) return {};
  if (!scene_->worn()) return scene_->skin->mesh().vertices_m;
  // The layout with a margin along the limb.
  constexpr double kMargin_m = 0.03;
  const Vec3 along = kMargin_m * shown_.body()->axis.direction;
  const Points3& worn = scene_->worn()->points_m;
  Points3 both(2 * worn.rows(), 3);
  both << worn.rowwise() + along.transpose(), worn.rowwise() - along.transpose();
  return both;
}

// Recorded states are kept; what lies between two of them is seen for a moment only.
std::shared_ptr<const ScenePart> BodyView::layout_shown() {
  if (shown_.rim()) return std::make_shared<const ScenePart>();  // its lines stand for it
  const int state = selection_.state();
  const bool contact = shows_contact(shown_, state);
  const double filling = selection_.filling();
  if (contact && filling != state && moment_at(shown_, filling))
    return std::make_shared<const ScenePart>(contact_part(shown_, filling, look_));
  auto& kept = states_[contact ? state : kNoState];
  if (!kept)
    kept =
        std::make_shared<const ScenePart>(contact ? contact_part(shown_, state, look_) : layout_part(shown_));
  return kept;
}

// Later changes leave the eye where it is.
void BodyView::rebuild_scene() {
  BodyScene scene{shown_.skin(), {sites_, layout_shown()}};
  scene.parts.push_back(std::make_shared<const ScenePart>(picked_part(shown_, selection_, look_)));
  // In front of all: no other name takes the place of the gap's.
  if (shown_.rim())
    scene.parts.insert(scene.parts.begin(), std::make_shared<const ScenePart>(rim_part(shown_)));
  scene_ = std::make_shared<const BodyScene>(std::move(scene));
  canvas_->show_scene(scene_);
  if (shown_.skin() && (shown_.skin() != framed_ || (scene_->worn() && !framed_worn_))) {
    const auto framed_before = std::exchange(framed_, shown_.skin());
    eye_is_ours_ |= shown_.skin() != framed_before;
    framed_worn_ = scene_->worn() != nullptr;
    look_at_layout();
  }
  look_at_worst();
  take_size();  // the legend comes and goes with the pressures
  show_view();
}

// Front is the person's own where that is known, else where the layout is anchored.
void BodyView::look_at_layout() {
  const Body& body = *shown_.body();
  const Vec3 outward = wrap() ? wrap()->outward : body.front.value_or(Vec3::UnitX());
  turntable_.set_body(body.axis, body.front.value_or(outward));
  turntable_.fit(points_to_fit());
  turntable_.face(outward);
  const QString help = body.front ? tr("Look at the front of the person") : tr("Look at the anchor");
  front_button_->setToolTip(help);
  front_button_->setAccessibleName(help);
}

// The first that is seen of a result is its worst place: findings are sorted.
void BodyView::look_at_worst() {
  if (!eye_is_ours_ || !scene_->skin || !shown_.estimate() || !shows_contact(shown_, selection_.state()))
    return;
  const auto& findings = shown_.estimate()->findings;
  const auto worst = std::find_if(findings.begin(), findings.end(),
                                  [](const Finding& finding) { return finding.at_m && finding.measured; });
  if (worst == findings.end()) return;
  turntable_.face(scene_->skin->at(*worst->at_m).normal);
  eye_is_ours_ = false;
}

// Closing edges mostly lie behind.
void BodyView::look_at_gap() {
  const auto place = gap_place(shown_);
  if (place && shown_.skin() && eye_is_ours_ && drag_ == Drag::kNone)
    turntable_.face(shown_.skin()->at(*place).normal);
}

// What was chosen elsewhere, in a list or in the flat layout, comes into sight.
void BodyView::chamber_chosen() {
  if (clicked_here_ || !selection_.chamber() || !scene_ || !scene_->skin) return;
  const Layout* layout = shown_.layout().get();
  const std::size_t chosen = index_of(*selection_.chamber());
  if (!layout || chosen >= layout->chambers.size()) return;
  const QString name = QString::fromStdString(layout->chambers[chosen].name);
  for (const auto& part : scene_->parts)
    for (const SceneLabel& label : part->labels)
      if (label.words == name && label.area.points_m.rows() > 0 && !overlay_->is_in_sight(label))
        return turn_to(label.point_m, label.normal);
}

void BodyView::turn_to(const Vec3& place_m, const Vec3& outward) {
  eye_is_ours_ = false;
  turntable_.face(outward);
  bring_clear(place_m);
  show_view();
}

void BodyView::show_view() {
  QString hint = asked_.isEmpty() ? shown_.would_be() : asked_;
  if (placing_) hint = tr("Placing: click to anchor, drag to move, drag with Ctrl to turn. Esc ends it.");
  if (const QString words = rim_words(shown_); !words.isEmpty()) hint += (hint.isEmpty() ? "" : "\n") + words;
  if (!why_software().isEmpty() && hint.isEmpty())
    hint = tr("Drawn without graphics system: %1.").arg(why_software());
  canvas_->show_view(turntable_.view());
  overlay_->show_over(scene_, turntable_.view(), hint);
  if (shown_.body()) emit eyeMoved(turntable_.towards_eye());
}

void BodyView::look_from(ViewSide side) {
  eye_is_ours_ = false;
  turntable_.look_from(side);
  show_view();
}

void BodyView::look_from_direction(const Vec3& outward) {
  eye_is_ours_ = false;
  turntable_.face(outward);
  show_view();
}

void BodyView::show_all() {
  turntable_.fit(points_to_fit());
  show_view();
}

void BodyView::show_place(const Vec3& place_m) {
  if (!shown_.body()) return;
  turn_to(place_m, shown_.skin()->at(place_m).normal);
  selection_.pick_place(place_m);
}

// Off the words above and the buttons below, which would hide it or take its click.
void BodyView::bring_clear(const Vec3& place_m) {
  constexpr double kAbove_pixels = 60.0, kBelow_pixels = 110.0;
  const double y = turntable_.view().project(place_m).y, lowest = height() - kBelow_pixels;
  if (lowest > kAbove_pixels) turntable_.pan(0.0, std::clamp(y, kAbove_pixels, lowest) - y);
}

QImage BodyView::picture() {
  QImage image = canvas_->picture().convertToFormat(QImage::Format_RGB32);
  QPainter painter(&image);
  overlay_->draw(painter);
  return image;
}

void BodyView::resizeEvent(QResizeEvent*) {
  canvas_->setGeometry(rect());
  overlay_->setGeometry(rect());
  canvas_->lower();
  take_size();
  show_view();
}

// Buttons stand in one row, closer where it must be, or in two where there is no room; the body keeps clear
// of the legend.
void BodyView::take_size() {
  const bool pressed = scene_ && scene_->worn() && scene_->worn()->pressure_pa.size() > 0;
  turntable_.set_size(width(), height(), pressed ? legend_width(font(), width()) : 0);
  constexpr int kBeside = 16, kMostBetween = 6, kLeastBetween = 2;
  const int count = static_cast<int>(buttons_.size());
  int room = width() - kBeside;
  for (QToolButton* button : buttons_) room -= button->sizeHint().width();
  const int between = std::min(kMostBetween, room / (count - 1));
  const bool one_row = room >= 0 && between >= kLeastBetween;
  row_->setHorizontalSpacing(one_row ? between : kMostBetween);
  const int columns = one_row ? count : (count + 1) / 2;
  for (int k = 0; k < count; ++k)
    row_->addWidget(buttons_[static_cast<std::size_t>(k)], k / columns, k % columns);
}

void BodyView::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange) {
    canvas_->show_background(view_colours(*this).paper);
    show_view();
  }
  QWidget::changeEvent(event);
}

}  // namespace wrapgauge
