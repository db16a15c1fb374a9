#pragma once
// Every picture and table can be copied and saved: the same two actions, by menu and key, on each view.

#include <QImage>
#include <QString>
#include <QWidget>
#include <functional>

class QPainter;

namespace wrapgauge {

// Adds "Copy picture" and "Save picture..." to the widget's context menu. `name`: of the suggested file.
void offer_picture(QWidget* widget, const QString& name, std::function<QImage()> picture);
// "Save drawing..." as SVG, of what `draw` paints into a room of `size`.
void offer_drawing(QWidget* widget, const QString& name, const QSize& size,
                   std::function<void(QPainter&)> draw);
// "Copy".
void offer_copy(QWidget* widget, std::function<QString()> text);
// "Copy table" and "Save table as CSV...".
void offer_table(QWidget* widget, const QString& name, std::function<QString()> text,
                 std::function<QString()> csv);

}  // namespace wrapgauge
