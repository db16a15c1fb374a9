#include "app/desk/window/look.hpp"

#include <QApplication>
#include <QPainter>
#include <QProxyStyle>
#include <QStyleOption>

namespace wrapgauge {
namespace {

struct Colours {
  QColor ground, base, other, ink, faint, button, accent, accent_ink, notice, notice_ink;
};

QPalette palette_of(const Colours& c) {
  QPalette palette;
  palette.setColor(QPalette::Window, c.ground);
  palette.setColor(QPalette::WindowText, c.ink);
  palette.setColor(QPalette::Base, c.base);
  palette.setColor(QPalette::AlternateBase, c.other);
  palette.setColor(QPalette::Text, c.ink);
  palette.setColor(QPalette::PlaceholderText, c.faint);
  palette.setColor(QPalette::Button, c.button);
  palette.setColor(QPalette::ButtonText, c.ink);
  palette.setColor(QPalette::BrightText, c.accent_ink);
  palette.setColor(QPalette::Highlight, c.accent);
  palette.setColor(QPalette::HighlightedText, c.accent_ink);
  palette.setColor(QPalette::Link, c.accent);
  palette.setColor(QPalette::ToolTipBase, c.notice);
  palette.setColor(QPalette::ToolTipText, c.notice_ink);
  palette.setColor(QPalette::Light, c.button.lighter(125));
  palette.setColor(QPalette::Midlight, c.button.lighter(110));
  palette.setColor(QPalette::Mid, c.button.darker(120));
  palette.setColor(QPalette::Dark, c.button.darker(150));
  palette.setColor(QPalette::Shadow, c.ground.darker(300));
  for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
    palette.setColor(QPalette::Disabled, role, c.faint);
  palette.setColor(QPalette::Disabled, QPalette::Highlight, c.button);
  palette.setColor(QPalette::Disabled, QPalette::HighlightedText, c.faint);
  return palette;
}

// Boxes to tick and fields get a rim that is seen on any ground: the style's own is a shade of the ground,
// lost on a dark one.
class RimmedStyle : public QProxyStyle {
 public:
  RimmedStyle() : QProxyStyle(QStringLiteral("Fusion")) {}

  void drawPrimitive(PrimitiveElement element, const QStyleOption* option, QPainter* painter,
                     const QWidget* widget) const override {
    QProxyStyle::drawPrimitive(element, option, painter, widget);
    if (element == PE_FrameLineEdit) return draw_rim(*option, *painter);
    const bool box = element == PE_IndicatorCheckBox || element == PE_IndicatorItemViewItemCheck;
    if (!box && element != PE_IndicatorRadioButton) return;
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setBrush(Qt::NoBrush);
    painter->setPen(QPen(option->palette.color(QPalette::PlaceholderText), 1.2));
    const QRectF rim = QRectF(option->rect).adjusted(0.8, 0.8, -0.8, -0.8);
    box ? painter->drawRoundedRect(rim, 2.0, 2.0) : painter->drawEllipse(rim);
    painter->restore();
  }

  void drawComplexControl(ComplexControl control, const QStyleOptionComplex* option, QPainter* painter,
                          const QWidget* widget) const override {
    QProxyStyle::drawComplexControl(control, option, painter, widget);
    if (control == CC_SpinBox || control == CC_ComboBox) draw_rim(*option, *painter);
  }

 private:
  // The field that has the keyboard keeps the style's own.
  static void draw_rim(const QStyleOption& option, QPainter& painter) {
    if (option.state & State_HasFocus) return;
    QColor ink = option.palette.color(QPalette::PlaceholderText);
    if (!(option.state & State_Enabled)) ink.setAlpha(110);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(ink, 1.0));
    painter.drawRoundedRect(QRectF(option.rect).adjusted(0.5, 0.5, -0.5, -0.5), 2.0, 2.0);
    painter.restore();
  }
};

}  // namespace

QPalette light_palette() {
  return palette_of({QColor(0xf3, 0xf2, 0xf5), QColor(0xff, 0xff, 0xff), QColor(0xf0, 0xee, 0xf4),
                     QColor(0x1c, 0x1a, 0x22), QColor(0x6a, 0x66, 0x74), QColor(0xe5, 0xe2, 0xea),
                     QColor(0x5b, 0x3a, 0x86), QColor(0xff, 0xff, 0xff), QColor(0xff, 0xf6, 0xdc),
                     QColor(0x2a, 0x22, 0x08)});
}

QPalette dark_palette() {
  return palette_of({QColor(0x24, 0x22, 0x2a), QColor(0x1a, 0x18, 0x1f), QColor(0x2b, 0x28, 0x32),
                     QColor(0xec, 0xe9, 0xf1), QColor(0x9c, 0x97, 0xa8), QColor(0x37, 0x33, 0x40),
                     QColor(0xb9, 0x9c, 0xe6), QColor(0x17, 0x10, 0x22), QColor(0x47, 0x3f, 0x22),
                     QColor(0xf8, 0xee, 0xcf)});
}

void apply_look(Look look) {
  static const QPalette desktop = QApplication::palette();
  QApplication::setStyle(new RimmedStyle);
  const bool dark =
      look == Look::kDark || (look == Look::kAsDesktop && desktop.color(QPalette::Window).lightness() < 128);
  QApplication::setPalette(dark ? dark_palette() : light_palette());
}

Look look_from_name(const QString& name) {
  if (name == QStringLiteral("light")) return Look::kLight;
  return name == QStringLiteral("dark") ? Look::kDark : Look::kAsDesktop;
}

QString look_name(Look look) {
  if (look == Look::kLight) return QStringLiteral("light");
  return look == Look::kDark ? QStringLiteral("dark") : QStringLiteral("desktop");
}

}  // namespace wrapgauge
