#pragma once
#include "app/desk/views/flat_view.hpp"
#include "tests/desk_views/small_estimate.hpp"

namespace wrapgauge {

struct WithFlatView : WithShown {
  FlatView view{shown, selection};

  void open() {
    view.resize(700, 600);
    view.show();
    shown.show_estimate(two_chamber_estimate());
    wait_until_at_rest(view);
  }
  QPoint pixel_of(double x_mm, double y_mm) { return view.mapFromScene(QPointF(x_mm, -y_mm)); }
};

}  // namespace wrapgauge
