#include <QAbstractSpinBox>
#include <QComboBox>
#include <QScrollBar>
#include <set>
#include <vector>

#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

// Buttons and boxes with words say those; everything else needs a name.
bool has_name(const QWidget& widget) {
  if (!widget.accessibleName().isEmpty()) return true;
  const auto* button = qobject_cast<const QAbstractButton*>(&widget);
  return button && !button->text().isEmpty();
}

// The inner line of a spin box or list, and what scrolls, is part of the widget around it.
bool is_inner(const QWidget& widget) {
  const QWidget* around = widget.parentWidget();
  return qobject_cast<const QAbstractSpinBox*>(around) || qobject_cast<const QComboBox*>(around) ||
         qobject_cast<const QScrollBar*>(&widget) || widget.objectName().startsWith(QStringLiteral("qt_"));
}

bool takes_focus(const QWidget& widget) {
  return widget.isVisible() && widget.isEnabled() && (widget.focusPolicy() & Qt::TabFocus) &&
         !widget.focusProxy() && !is_inner(widget);
}

QString described(const QWidget& widget) {
  return QString::fromLatin1(widget.metaObject()->className()) + QStringLiteral(" '") + widget.objectName() +
         QStringLiteral("' in ") +
         QString::fromLatin1(widget.parentWidget() ? widget.parentWidget()->metaObject()->className() : "");
}

std::vector<const QWidget*> focus_takers(const QWidget& window) {
  std::vector<const QWidget*> all;
  for (const QWidget* widget : window.findChildren<QWidget*>())
    if (takes_focus(*widget)) all.push_back(widget);
  return all;
}

// Everywhere the Tab key goes to until it comes round.
std::set<const QWidget*> reached_by_tab(QWidget& window) {
  constexpr int kMost = 400;
  std::set<const QWidget*> reached;
  for (int presses = 0; presses < kMost; ++presses) {
    QWidget* at = window.focusWidget() ? window.focusWidget() : &window;
    QTest::keyClick(at, Qt::Key_Tab);
    const QWidget* next = window.focusWidget();
    reached.insert(next);
    if (next == at) break;  // it keeps the key for itself
  }
  return reached;
}

TEST_F(WindowTest, TheTabKeyReachesEveryFieldAndEachHasANameForScreenReaders) {
  window_.start({});
  ASSERT_TRUE(wait_for_result());
  std::set<const QWidget*> all;
  for (const PlanStep step : kPlanSteps) {
    window_.column().open_step(step);
    ASSERT_TRUE(wait_until_at_rest(window_));
    const auto reached = reached_by_tab(window_);
    for (const QWidget* widget : focus_takers(window_)) {
      all.insert(widget);
      EXPECT_TRUE(has_name(*widget)) << described(*widget).toStdString();
      EXPECT_TRUE(reached.contains(widget)) << described(*widget).toStdString();
    }
  }
  std::printf("%zu fields and buttons, each with a name and reached by Tab\n", all.size());
}

}  // namespace
}  // namespace wrapgauge
