#pragma once
// Whether a window has come to rest: its layouts are done and the screen has answered all it was asked.

#include <QScreen>
#include <QWidget>
#include <utility>
#include <vector>

#include "tests/desk_session/wait_until.hpp"

namespace wrapgauge {

using WidgetPlaces = std::vector<std::pair<const QWidget*, QRect>>;

// Where each widget that is seen stands in its parent.
inline WidgetPlaces places_of(const QWidget& window) {
  WidgetPlaces places{{&window, window.geometry()}};
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (widget->isVisible()) places.emplace_back(widget, widget->geometry());
  return places;
}

// Waits until nothing has moved over some turns of the event loop in a row. Before each look one pixel is
// read from the screen: by the time it comes, the screen has answered every size that was asked of it, and
// the answers are among the events of the next turn.
inline bool wait_until_at_rest(const QWidget& window) {
  constexpr int kTurns = 4;
  WidgetPlaces before;
  int turns = 0;
  return wait_until([&] {
    window.screen()->grabWindow(0, 0, 0, 1, 1);
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents();  // a layout may ask for another one
    WidgetPlaces now = places_of(window);
    turns = now == before ? turns + 1 : 0;
    before = std::move(now);
    return turns >= kTurns;
  });
}

}  // namespace wrapgauge
