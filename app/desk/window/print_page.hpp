#pragma once
// What is on the screen on one sheet of paper: verdict, pictures, what is found, the caution.

#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QStringList>

#include "model/core/result.hpp"

namespace wrapgauge {

struct PrintedPage {
  QString title, verdict, made_of;  // made_of: on which mesh, how old
  std::vector<QImage> pictures;     // side by side
  QStringList findings;             // worst first
  QString caution;                  // stands at the foot, whatever else there is
};

// Into `room`, in the units of the painter's device. What of the findings has no room is counted at the end.
void draw_page(QPainter& painter, const QRectF& room, const PrintedPage& page);

// Problem: the printer or file takes nothing.
Result<std::monostate> print_page(QPrinter& printer, const PrintedPage& page);

}  // namespace wrapgauge
