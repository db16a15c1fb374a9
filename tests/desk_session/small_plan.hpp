#pragma once
// A plan that is solved in a fraction of a second: one chamber on a cylinder.

#include <gtest/gtest.h>

#include <QGuiApplication>
#include <QTemporaryDir>
#include <filesystem>

#include "app/desk/session/plan_session.hpp"
#include "tests/desk_session/wait_until.hpp"

namespace wrapgauge {

inline Polygon square_m(double half) {
  return {{-half, -half}, {half, -half}, {half, half}, {-half, half}};
}

inline Layout small_layout() {
  Layout layout;
  layout.name = "square pad";
  layout.outline_m = square_m(0.03);
  layout.chambers = {{"cell", square_m(0.02), {}, {}}};
  layout.inlets = {{"tube", {0.0, 0.0}}};
  layout.skin_sheet = layout.outer_sheet = {"00-30", 2.0 * mm, 1.0};
  layout.rim_bonded = true;
  return layout;
}

inline Plan small_plan() {
  Plan plan;
  plan.name = "small pad";
  plan.body = BodyForm{"cylinder", {}, {}};
  plan.part = BodyPart::kForearm;
  plan.tissue_site = "forearm relaxed";
  plan.layout = small_layout();
  plan.placement.anchor = AnchorAtStation{100.0 * mm, 0.0};
  plan.inflation = {{"tube", 2.0 * kPa, {}}};
  plan.mesh_edge = 9.0 * mm;
  plan.solver.steps = 2;
  return plan;
}

struct WithSession {
  // With fonts, for what is drawn into files.
  static QGuiApplication& application() {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    static int count = 1;
    static char name[] = "test";
    static char* arguments[] = {name, nullptr};
    static QGuiApplication app(count, arguments);
    return app;
  }
  QGuiApplication& app = application();
  QTemporaryDir folder;
  std::filesystem::path root = folder.path().toStdString();
  PlanSession session{root / "recovery"};

  void open_small() {
    QObject::connect(&session, &PlanSession::changed, [this](const SessionState& before) {
      if (const auto& problem = session.now().problem; problem && problem != before.problem)
        ADD_FAILURE() << problem->message;
    });
    ASSERT_TRUE(write_plan(small_plan(), root / "pad.json").ok());
    ASSERT_TRUE(session.open(root / "pad.json").ok());
    ASSERT_TRUE(wait_until([&] { return session.checked() != nullptr; }));
    for (const PlanStep step : {PlanStep::kBody, PlanStep::kLayout, PlanStep::kWear, PlanStep::kInflation})
      EXPECT_NE(session.state(step).kind, StepState::Kind::kNeeds)
          << session.state(step).words.toStdString() << ": "
          << session.state(step).findings.join(", ").toStdString();
  }
};

}  // namespace wrapgauge
