#include "app/desk/window/verdict_bar.hpp"

#include <QHBoxLayout>
#include <QPainter>
#include <QVBoxLayout>

#include "app/desk/window/share_bar.hpp"

namespace wrapgauge {
namespace {

constexpr int kLines = 2;  // of the verdict and of the highest inflation

QFont bold_font(QFont font) {
  font.setBold(true);
  return font;
}

}  // namespace

// The share of the limit: a number over a bar. A result that is out of date is pale.
class VerdictBar::Bar : public QWidget {
 public:
  Bar(const VerdictLine& line, QWidget* parent) : QWidget(parent), line_(line) {
    const int number = QFontMetrics(large_font()).horizontalAdvance(QStringLiteral("000.0 %"));
    setFixedWidth(number + kBeside + fontMetrics().horizontalAdvance(VerdictBar::tr("of the limit")) + 4);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  }

 protected:
  void paintEvent(QPaintEvent*) override {
    if (!line_.share || !line_.severity) return;
    QPainter painter(this);
    const QColor ink =
        palette().color(line_.out_of_date ? QPalette::Disabled : QPalette::Active, QPalette::WindowText);
    QColor mark = severity_colour(*line_.severity);
    if (line_.out_of_date) mark.setAlpha(110);
    const QFont large = large_font();
    painter.setFont(large);
    painter.setPen(ink);
    const QString number = line_.share_words;
    const int line = QFontMetrics(large).height();
    painter.drawText(QRect(0, 0, width(), line), Qt::AlignLeft | Qt::AlignVCenter, number);
    painter.setFont(font());
    const int after = QFontMetrics(large).horizontalAdvance(number) + kBeside;
    painter.drawText(QRect(after, 0, width() - after, line), Qt::AlignLeft | Qt::AlignVCenter,
                     VerdictBar::tr("of the limit"));
    draw_share_bar(painter, QRect(0, line + 6, width() - 4, 9), *line_.share, mark, ink, palette());
  }

 private:
  static constexpr int kBeside = 6;

  QFont large_font() const {
    QFont large = bold_font(font());
    large.setPointSizeF(1.5 * font().pointSizeF());
    return large;
  }

  const VerdictLine& line_;
};

VerdictBar::VerdictBar(PlanSession& session, QWidget* parent)
    : QFrame(parent),
      session_(session),
      bar_(new Bar(line_, this)),
      words_(new BriefLabel(kLines, this)),
      made_of_(new BriefLabel(1, this)),
      highest_(new BriefLabel(kLines, this)),
      highest_name_(new QLabel(tr("Highest inflation within the limits, final mesh"), this)),
      button_(new QPushButton(this)) {
  setObjectName(QStringLiteral("verdict"));
  words_->setFont(bold_font(words_->font()));
  words_->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
  highest_->setFont(bold_font(highest_->font()));
  button_->setObjectName(QStringLiteral("verdict button"));
  connect(button_, &QPushButton::clicked, this, &VerdictBar::act);
  connect(&session, &PlanSession::changed, this, &VerdictBar::show_line);
  arrange();
  show_line();
}

void VerdictBar::arrange() {
  auto* left = new QVBoxLayout;
  left->setSpacing(0);
  left->addWidget(words_);
  left->addWidget(made_of_);
  auto* right = new QVBoxLayout;
  right->setSpacing(0);
  right->addWidget(highest_name_);
  right->addWidget(highest_);
  auto* row = new QHBoxLayout(this);
  row->setContentsMargins(14, 6, 10, 6);
  row->setSpacing(16);
  row->addLayout(left, 5);
  row->addWidget(bar_);
  row->addLayout(right, 3);
  row->addWidget(button_, 0, Qt::AlignVCenter);
  highest_name_->setMinimumWidth(highest_name_->sizeHint().width());
  button_->setMinimumWidth(QFontMetrics(button_->font()).horizontalAdvance(tr("Find the highest")) + 24);
}

void VerdictBar::show_line() {
  VerdictLine line = verdict_line(session_.now());
  if (line == line_ && !words_->text().isEmpty()) return;
  line_ = std::move(line);
  words_->setText(line_.words);
  words_->setEnabled(!line_.out_of_date);
  made_of_->setText(line_.made_of);
  highest_->setText(line_.highest);
  highest_->setToolTip(line_.highest_help);
  highest_name_->setVisible(!line_.highest.isEmpty());
  button_->setText(line_.act_words);
  button_->setVisible(line_.act != VerdictLine::Act::kNone);
  button_->setEnabled(line_.act_enabled);
  setAccessibleName(tr("Verdict"));
  setAccessibleDescription(QStringList{line_.words, line_.made_of, line_.highest}.join(QChar(' ')));
  update();
  bar_->update();
}

void VerdictBar::act() {
  switch (line_.act) {
    case VerdictLine::Act::kFindHighest:
      return session_.find_ceiling();
    case VerdictLine::Act::kFindChanges:
      session_.find_advice();
      return void(emit stepAsked(PlanStep::kLimits));
    case VerdictLine::Act::kCancel:
      return session_.cancel();
    case VerdictLine::Act::kOpenStep:
      return void(emit stepAsked(line_.step));
    case VerdictLine::Act::kSetHighest:
      if (auto plan = plan_set_down(session_.now()))
        session_.edit(tr("Set to the highest inflation within the limits"), std::move(*plan));
      return;
    case VerdictLine::Act::kNone:
      return;
  }
}

}  // namespace wrapgauge
