// The window answers while something takes long. Not held to a time: on the window's own thread no event
// would be handled before the work is done, on any machine.

#include <QTextBrowser>
#include <QTimer>

#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class Answering : public JobTest {
 protected:
  // Counts the events that are handled while `when` holds.
  void count_while(std::function<bool()> when) {
    QObject::connect(&beat_, &QTimer::timeout, [this, when = std::move(when)] { answers_ += when(); });
    beat_.start(2);
  }
  int answers_ = 0;

 private:
  QTimer beat_;
};

TEST_F(Answering, AnEstimateLeavesTheWindowAnsweringAndIsCancelledByAButton) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  const auto preview = window_.session().solved();
  QString stage;
  QObject::connect(&window_.session().runner(), &EstimateRunner::progressed, &window_,
                   [&](const QString& words, double) { stage = words; });
  window_.session().estimate_standard();
  count_while([&] { return window_.session().runner().busy() && stage == QStringLiteral("inflating"); });
  ASSERT_TRUE(wait_until([&] { return answers_ >= 20 || !window_.session().runner().busy(); }));
  EXPECT_GE(answers_, 20) << "events handled while it was inflated";
  hand::press(window_, QStringLiteral("Cancel"));
  EXPECT_FALSE(window_.session().runner().busy());
  EXPECT_EQ(window_.session().solved(), preview) << "what is cancelled gives no result";
}

// On a coarse mesh, so that the test is quick; the note is as long on any.
TEST_F(Answering, TheNotesPreviewIsMadeWhileTheWindowAnswers) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  open(PlanStep::kNote);
  open_fine_settings(QStringLiteral("Mesh and solving"));
  hand::type(window_, QStringLiteral("Edge of the final mesh"), QStringLiteral("9"));
  ASSERT_TRUE(wait_for_result());
  auto* preview = named<QTextBrowser>(QStringLiteral("note preview"));
  ASSERT_TRUE(preview);
  count_while(
      [preview] { return preview->toPlainText().startsWith(QStringLiteral("The note is being made")); });
  window_.session().estimate_standard();
  ASSERT_TRUE(wait_until([&] {
    return state(PlanStep::kNote) == "ready" &&
           preview->toPlainText().contains(QStringLiteral("Not a medical device"), Qt::CaseInsensitive);
  }));
  EXPECT_GT(answers_, 0) << "no event was handled while the note was made";
}

}  // namespace
}  // namespace wrapgauge
