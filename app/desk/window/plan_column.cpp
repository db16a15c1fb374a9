#include "app/desk/window/plan_column.hpp"

#include <QEvent>
#include <QPainter>
#include <QStyleOption>
#include <QTimer>
#include <QVBoxLayout>

namespace wrapgauge {
namespace {

constexpr int kIndent = 26, kMargin = 7;

// Beside the words, a shape that differs for each state: filled disc, ring with a gap, triangle, ring.
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

StepHeader::StepHeader(PlanStep step, QWidget* parent) : QAbstractButton(parent), name_(step_name(step)) {
  setCheckable(true);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  setAttribute(Qt::WA_Hover);
}

void StepHeader::show_state(const StepState& state) {
  state_ = state;
  setText(name_ + QStringLiteral(": ") + state.words);  // what a screen reader says
  setToolTip(state.findings.join(QStringLiteral("\n")));
  updateGeometry();
  update();
}

QRect StepHeader::words_rect(int width) const {
  const QRect room(0, 0, width - kIndent - kMargin, 1000);
  return fontMetrics().boundingRect(room, Qt::TextWordWrap, state_.words);
}

int StepHeader::heightForWidth(int width) const {
  return fontMetrics().height() + words_rect(width).height() + 2 * kMargin;
}

QSize StepHeader::sizeHint() const {
  return {220, heightForWidth(width() > 100 ? width() : 300)};
}

bool StepHeader::event(QEvent* event) {
  if (event->type() == QEvent::Resize) updateGeometry();
  return QAbstractButton::event(event);
}

void StepHeader::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const QPalette& look = palette();
  QColor ground = isChecked() ? look.color(QPalette::Highlight) : look.color(QPalette::Button);
  const QColor ink = isChecked() ? look.color(QPalette::HighlightedText) : look.color(QPalette::ButtonText);
  if (underMouse() && !isChecked()) ground = ground.lighter(ground.lightness() < 128 ? 130 : 104);
  painter.setPen(Qt::NoPen);
  painter.setBrush(ground);
  painter.drawRoundedRect(rect().adjusted(0, 1, 0, -1), 4, 4);
  const int line = fontMetrics().height();
  draw_mark(painter, QRectF(8, kMargin + 0.5 * line - 5, 10, 10), state_.kind, ink);
  painter.setPen(ink);
  QFont bold = font();
  bold.setBold(true);
  painter.setFont(bold);
  painter.drawText(QRect(kIndent, kMargin, width() - kIndent, line), Qt::AlignVCenter, name_);
  painter.setFont(font());
  painter.drawText(QRect(kIndent, kMargin + line, width() - kIndent - kMargin, height()), Qt::TextWordWrap,
                   state_.words);
  if (!hasFocus()) return;
  QStyleOptionFocusRect focus;
  focus.initFrom(this);
  focus.rect = rect().adjusted(2, 3, -2, -3);
  style()->drawPrimitive(QStyle::PE_FrameFocusRect, &focus, &painter, this);
}

PlanColumn::PlanColumn(PlanSession& session, QWidget* parent) : QScrollArea(parent), session_(session) {
  setWidgetResizable(true);
  setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  setFrameShape(QFrame::NoFrame);
  setAccessibleName(tr("Steps of the plan"));
  auto* inside = new QWidget(this);
  auto* column = new QVBoxLayout(inside);
  column->setContentsMargins(6, 6, 6, 6);
  column->setSpacing(3);
  column->addStretch(1);
  setWidget(inside);
  setMinimumWidth(300);
  connect(&session, &PlanSession::changed, this, [this](const SessionState& before) {
    if (session_.now().differs_in_work(before)) show_states();
  });
}

void PlanColumn::add_step(PlanStep step, StepForm* form) {
  auto* column = static_cast<QVBoxLayout*>(widget()->layout());
  auto* header = new StepHeader(step, widget());
  form->setParent(widget());
  form->hide();
  form->layout()->setContentsMargins(10, 4, 4, 10);
  form->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
  column->insertWidget(column->count() - 1, header);
  column->insertWidget(column->count() - 1, form);
  steps_[step] = {header, form};
  connect(header, &QAbstractButton::clicked, this, [this, step] { open_step(step); });
}

void PlanColumn::open_step(PlanStep step) {
  opened_ = step;
  for (const auto& [other, parts] : steps_) {
    parts.form->setVisible(other == step);
    parts.header->setChecked(other == step);
  }
  show_states();
  // After the column has been laid out anew.
  QTimer::singleShot(0, this, [this, step] {
    const Step& parts = steps_.at(step);
    ensureWidgetVisible(parts.form, 0, 0);
    ensureWidgetVisible(parts.header, 0, 0);
  });
  emit stepOpened(step);
}

void PlanColumn::show_states() {
  for (const auto& [step, parts] : steps_) parts.header->show_state(session_.state(step));
}

}  // namespace wrapgauge
