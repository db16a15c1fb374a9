#include "app/desk/window/brief_label.hpp"

#include <QEvent>
#include <QHelpEvent>
#include <QPainter>
#include <QTextLayout>
#include <QToolTip>

namespace wrapgauge {

BriefLabel::BriefLabel(int lines, QWidget* parent) : QLabel(parent), lines_(lines) {
  setTextFormat(Qt::PlainText);
  setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
}

QSize BriefLabel::sizeHint() const {
  return {160, lines_ * fontMetrics().lineSpacing()};
}

QSize BriefLabel::minimumSizeHint() const {
  return {40, sizeHint().height()};
}

QStringList BriefLabel::broken() const {
  // A number and its sign stay on one line.
  const QString words = text().replace(QStringLiteral(" %"), QString(QChar(QChar::Nbsp)) + QChar('%'));
  QTextLayout layout(words, font());
  QStringList lines;
  layout.beginLayout();
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(contentsRect().width());
    const bool last = static_cast<int>(lines.size()) + 1 == lines_;
    const QString piece = last ? words.mid(line.textStart()) : words.mid(line.textStart(), line.textLength());
    lines.push_back(last ? fontMetrics().elidedText(piece, Qt::ElideRight, contentsRect().width())
                         : piece.trimmed());
    if (last) break;
  }
  layout.endLayout();
  return lines;
}

bool BriefLabel::shows_all() const {
  return text().simplified() == broken().join(QChar(' ')).simplified();
}

bool BriefLabel::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip && toolTip().isEmpty() && !shows_all()) {
    QToolTip::showText(static_cast<QHelpEvent*>(event)->globalPos(), text(), this);
    return true;
  }
  return QLabel::event(event);
}

void BriefLabel::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setPen(palette().color(isEnabled() ? QPalette::Active : QPalette::Disabled, foregroundRole()));
  painter.setFont(font());
  const QRect room = contentsRect();
  const QStringList lines = broken();
  int top = room.top();
  if (alignment() & Qt::AlignBottom)
    top = room.bottom() + 1 - static_cast<int>(lines.size()) * fontMetrics().lineSpacing();
  for (const QString& line : lines) {
    painter.drawText(QRect(room.left(), top, room.width(), fontMetrics().lineSpacing()),
                     Qt::AlignLeft | Qt::AlignVCenter, line);
    top += fontMetrics().lineSpacing();
  }
}

}  // namespace wrapgauge
