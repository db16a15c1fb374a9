#pragma once
// The demo cuff in all views, in one window of a given size.

#include <gtest/gtest.h>

#include <QApplication>
#include <QDir>
#include <QSplitter>

#include "app/desk/views/body_view.hpp"
#include "app/desk/views/chamber_table.hpp"
#include "app/desk/views/flat_view.hpp"
#include "app/desk/views/gl_probe.hpp"
#include "app/desk/views/path_strip.hpp"
#include "app/desk/views/probe_panel.hpp"
#include "app/job/job.hpp"
#include "tests/desk_views/at_rest.hpp"

namespace wrapgauge {

// Coarse, so that it is solved in seconds; the body and its skin mesh are those of the demo.
inline std::shared_ptr<const Estimate> demo_estimate() {
  static const std::shared_ptr<const Estimate> solved = [] {
    auto job = read_job(WRAPGAUGE_SOURCE_DIR "/resources/plans/forearm-cuff.json");
    if (!job) throw std::runtime_error(job.problem().message);
    Job ready = std::move(job).value();
    if (!qEnvironmentVariableIsSet("WRAPGAUGE_FINE")) {
      ready.plan.mesh_edge = 9.0 * mm;
      ready.plan.mesh_seam_edge = 9.0 * mm;
    }
    auto found = estimate(ready.plan, ready.body, ready.resources, {false, false});
    if (!found) throw std::runtime_error(found.problem().message);
    return std::make_shared<const Estimate>(std::move(found).value());
  }();
  return solved;
}

struct DemoViews {
  Selection selection;
  ShownPlan shown{selection};
  QSplitter window{Qt::Vertical};
  BodyView* body = nullptr;
  FlatView* flat = nullptr;
  PathStrip* strip = nullptr;
  ChamberTable* table = nullptr;
  ProbePanel* probe = nullptr;

  explicit DemoViews(const QSize& size) {
    auto* above = new QSplitter(&window);
    body = new BodyView(shown, selection, above);
    flat = new FlatView(shown, selection, above);
    auto* below = new QSplitter(&window);
    strip = new PathStrip(shown, selection, below);
    table = new ChamberTable(shown, selection, below);
    probe = new ProbePanel(shown, selection, below);
    above->setSizes({size.width() / 2, size.width() / 2});
    below->setSizes({size.width() / 3, size.width() / 2, size.width() / 6});
    window.setSizes({2 * size.height() / 3, size.height() / 3});
    window.resize(size);
    window.show();
    wait_until_at_rest(window);
  }

  bool show_estimate() {
    shown.show_estimate(demo_estimate());
    return wait_until([&] {
      for (int state = 0; state < shown.state_count(); ++state)
        if (!shown.contact(state)) return false;
      return true;
    });
  }
};

inline QString picture_folder() {
  const QString folder = QStringLiteral(WRAPGAUGE_PICTURE_DIR);
  QDir().mkpath(folder);
  return folder;
}

}  // namespace wrapgauge
