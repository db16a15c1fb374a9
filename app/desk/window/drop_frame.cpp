#include "app/desk/window/drop_frame.hpp"

#include <QPainter>

namespace wrapgauge {

DropFrame::DropFrame(QWidget* over) : QLabel(tr("Let go to open: plan, mesh, drawing or layout"), over) {
  setAttribute(Qt::WA_TransparentForMouseEvents);
  setAlignment(Qt::AlignCenter);
  QFont large = font();
  large.setPointSizeF(1.5 * large.pointSizeF());
  setFont(large);
  hide();
}

void DropFrame::light(bool on) {
  if (on) {
    setGeometry(parentWidget()->rect());
    raise();
  }
  setVisible(on);
}

void DropFrame::paintEvent(QPaintEvent* event) {
  {
    QPainter painter(this);
    QColor ground = palette().color(QPalette::Window);
    ground.setAlpha(215);
    painter.fillRect(rect(), ground);
    painter.setPen(QPen(palette().color(QPalette::Highlight), 4.0, Qt::DashLine));
    painter.drawRoundedRect(QRectF(rect()).adjusted(12.0, 12.0, -12.0, -12.0), 10.0, 10.0);
  }
  QLabel::paintEvent(event);
}

}  // namespace wrapgauge
