#include "app/desk/window/plan_column.hpp"

#include <QHBoxLayout>
#include <QPainter>
#include <QStyleOption>
#include <QTimer>

#include "app/desk/window/brief_label.hpp"
#include "app/desk/window/fine_settings.hpp"

namespace wrapgauge {
namespace {

constexpr double kMark = 11.0;  // pixels, across
constexpr int kStateLines = 2;

// A shape that differs for each state: filled disc, ring with a gap, triangle, ring.
void draw_mark(QPainter& painter, const QRectF& box, StepState::Kind kind, const QColor& ink) {
  painter.setPen(QPen(ink, 1.8));
  painter.setBrush(Qt::NoBrush);
  switch (kind) {
    case StepState::Kind::kReady:
      painter.setBrush(ink);
      painter.drawEllipse(box);
      break;
    case StepState::Kind::kNeeds:
      painter.drawArc(box, 16 * 120, 16 * 300);
      break;
    case StepState::Kind::kFindings:
      painter.drawPolygon(
          QPolygonF{box.bottomLeft(), QPointF(box.center().x(), box.top()), box.bottomRight()});
      break;
    case StepState::Kind::kWaiting:
      painter.drawEllipse(box);
  }
}

}  // namespace

StepMark::StepMark(PlanStep step, QWidget* parent)
    : QAbstractButton(parent), step_(step), name_(step_name(step)) {
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Preferred);
  setAttribute(Qt::WA_Hover);
}

void StepMark::show_state(const StepState& state) {
  state_ = state;
  setText(name_ + QStringLiteral(": ") + state.words);  // what a screen reader says
  setToolTip((QStringList{text()} + state.findings).join(QStringLiteral("\n")));
  update();
}

QSize StepMark::sizeHint() const {
  QFont bold = font();
  bold.setBold(true);
  const int width = QFontMetrics(bold).horizontalAdvance(name_) + 20;
  return {std::max(76, width), 2 * fontMetrics().height() + 30};
}

QSize StepMark::minimumSizeHint() const {
  return {sizeHint().width(), fontMetrics().height() + static_cast<int>(kMark) + 8};
}

QRectF StepMark::mark_box() const {
  const double middle = 0.5 * (height() - fontMetrics().height()) - 1.0;
  return {0.5 * (width() - kMark), middle - 0.5 * kMark, kMark, kMark};
}

// The steps hang on one thread, in the order of work.
void StepMark::draw_thread(QPainter& painter, const QColor& ink) const {
  constexpr double kGap = 4.0;
  const QRectF box = mark_box();
  QColor faint = ink;
  faint.setAlpha(90);
  painter.setPen(QPen(faint, 1.5));
  const double x = box.center().x();
  if (step_ != kPlanSteps.front()) painter.drawLine(QPointF(x, 0.0), QPointF(x, box.top() - kGap));
  if (step_ != kPlanSteps.back() && height() - box.bottom() > fontMetrics().height() + 2 * kGap)
    painter.drawLine(QPointF(x, box.bottom() + kGap + fontMetrics().height()), QPointF(x, height()));
}

void StepMark::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPalette& look = palette();
  const bool open = isChecked();
  const QColor ink = look.color(open ? QPalette::HighlightedText : QPalette::WindowText);
  draw_thread(painter, look.color(QPalette::WindowText));
  painter.setPen(Qt::NoPen);
  if (open || underMouse()) {
    painter.setBrush(look.color(open ? QPalette::Highlight : QPalette::Button));
    const QRectF box = mark_box();
    const QRectF ground(3.0, box.top() - 6.0, width() - 6.0, box.height() + fontMetrics().height() + 13.0);
    painter.drawRoundedRect(ground, 8.0, 8.0);
  }
  draw_mark(painter, mark_box(), state_.kind, ink);
  painter.setPen(ink);
  QFont words = font();
  words.setBold(open);
  painter.setFont(words);
  painter.drawText(QRectF(0.0, mark_box().bottom() + 2.0, width(), fontMetrics().height()), Qt::AlignCenter,
                   name_);
  if (!hasFocus()) return;
  QStyleOptionFocusRect focus;
  focus.initFrom(this);
  focus.rect = rect().adjusted(4, 2, -4, -2);
  style()->drawPrimitive(QStyle::PE_FrameFocusRect, &focus, &painter, this);
}

PlanColumn::PlanColumn(PlanSession& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      rail_(new QWidget(this)),
      name_(heading_label({}, this)),
      words_(new BriefLabel(kStateLines, this)),
      scroll_(new HeldScroll(this)) {
  setAccessibleName(tr("Steps of the plan"));
  auto* rail = new QVBoxLayout(rail_);
  rail->setContentsMargins(0, 4, 0, 4);
  rail->setSpacing(0);
  rail->addStretch(1);
  auto* inside = new QWidget(this);
  auto* forms = new QVBoxLayout(inside);
  forms->setContentsMargins(0, 0, 0, 0);
  forms->addStretch(1);
  scroll_->setWidget(inside);
  auto* side = new QVBoxLayout;
  side->setContentsMargins(4, 8, 0, 4);
  side->setSpacing(2);
  name_->setContentsMargins(10, 0, 4, 0);
  words_->setContentsMargins(10, 0, 4, 0);
  side->addWidget(name_);
  side->addWidget(words_);
  side->addWidget(scroll_, 1);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(0);
  row->addWidget(rail_);
  row->addLayout(side, 1);
  setFocusProxy(scroll_);
  scroll_->setAccessibleName(tr("Fields of the step that is open"));
  scroll_->setMinimumWidth(290);
  connect(&session, &PlanSession::changed, this, [this](const SessionState& before) {
    if (session_.now().differs_in_work(before)) show_states();
  });
}

QVBoxLayout* PlanColumn::rail_layout() {
  return static_cast<QVBoxLayout*>(rail_->layout());
}

void PlanColumn::add_step(PlanStep step, StepForm* form) {
  auto* forms = static_cast<QVBoxLayout*>(scroll_->widget()->layout());
  auto* mark = new StepMark(step, rail_);
  form->setParent(scroll_->widget());
  form->hide();
  form->layout()->setContentsMargins(10, 4, 4, 10);
  form->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  rail_layout()->insertWidget(rail_layout()->count() - 1, mark, 0, Qt::AlignHCenter);
  forms->insertWidget(forms->count() - 1, form);
  steps_[step] = {mark, form};
  connect(mark, &QAbstractButton::clicked, this, [this, step] { open_step(step); });
}

void PlanColumn::open_step(PlanStep step) {
  if (step != opened_) scroll_->let_go();
  opened_ = step;
  for (const auto& [other, parts] : steps_) {
    parts.form->setVisible(other == step);
    parts.mark->setChecked(other == step);
  }
  show_states();
  emit stepOpened(step);
}

void PlanColumn::show_field(PlanStep step, QWidget& field) {
  open_step(step);
  for (QWidget* at = &field; at; at = at->parentWidget())
    if (auto* drawer = qobject_cast<FineSettings*>(at)) drawer->open();
  field.setFocus(Qt::ShortcutFocusReason);
  // Where it lies is known when the form has been laid out.
  QTimer::singleShot(0, &field,
                     [this, &field] { scroll_->ensureWidgetVisible(&field, 0, 2 * field.height()); });
}

void PlanColumn::show_states() {
  for (const auto& [step, parts] : steps_) {
    const StepState state = session_.state(step);
    parts.mark->show_state(state);
    if (step != opened_) continue;
    name_->setText(step_name(step));
    words_->setText(state.words);
    words_->setToolTip(state.findings.join(QStringLiteral("\n")));
  }
}

}  // namespace wrapgauge
