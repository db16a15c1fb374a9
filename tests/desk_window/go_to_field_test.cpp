#include "app/desk/window/go_to_field.hpp"

#include <QLineEdit>
#include <QListWidget>

#include "app/desk/window/fine_settings.hpp"
#include "tests/desk_window/hand.hpp"
#include "tests/desk_window/window_fixture.hpp"

namespace wrapgauge {
namespace {

class GoToFieldTest : public WindowTest {
 protected:
  void open_demo() {
    window_.start({});
    ASSERT_TRUE(wait_for_result());
  }
  // What is typed into the dialog, then Enter.
  static hand::Answer type_and_go(const QString& letters) {
    return [letters](QDialog& dialog) {
      auto* typed = dialog.findChild<QLineEdit*>();
      QTest::keyClicks(typed, letters);
      take_picture(dialog, QStringLiteral("go-to-field"));
      QTest::keyClick(typed, Qt::Key_Return);
    };
  }
  void go_to(const QString& letters) {
    hand::with_answers([this] { hand::key(window_, Qt::Key_K, Qt::ControlModifier); },
                       {type_and_go(letters)});
    ASSERT_TRUE(wait_until_at_rest(window_));
  }
  QString focused() const {
    const QWidget* at = window_.focusWidget();
    return at ? at->accessibleName() + at->property("text").toString() : QString();
  }
};

TEST_F(GoToFieldTest, OpensTheStepAndTheDrawerOfAFieldAndGivesItTheKeyboard) {
  open_demo();
  window_.column().open_step(PlanStep::kLimits);
  go_to(QStringLiteral("poisson"));
  EXPECT_EQ(window_.column().opened(), PlanStep::kBody);
  EXPECT_TRUE(focused().contains(QStringLiteral("Poisson"))) << focused().toStdString();
  EXPECT_TRUE(window_.focusWidget()->isVisible());
  EXPECT_FALSE(window_.focusWidget()->visibleRegion().isEmpty()) << "scrolled out of sight";
}

TEST_F(GoToFieldTest, EveryPlaceIsFoundByItsNameAndShown) {
  open_demo();
  const auto places = field_places(window_.column());
  EXPECT_GT(places.size(), 60u);
  for (const FieldPlace& place : places) {
    const auto found = matching(places, place.words);
    ASSERT_FALSE(found.empty()) << place.words.toStdString();
    window_.column().show_field(place.step, *place.field);
    EXPECT_EQ(window_.column().opened(), place.step);
    EXPECT_TRUE(place.field->isVisible()) << place.words.toStdString();
  }
}

TEST_F(GoToFieldTest, WhatBeginsWithTheLettersComesFirst) {
  const std::vector<FieldPlace> places{{PlanStep::kBody, "Body: least depth", nullptr},
                                       {PlanStep::kWear, "Wear: Depth of the rim", nullptr},
                                       {PlanStep::kWear, "Wear: Station", nullptr}};
  const auto found = matching(places, QStringLiteral("depth"));
  ASSERT_EQ(found.size(), 2u);
  EXPECT_EQ(found[0].words, "Wear: Depth of the rim");
  EXPECT_EQ(matching(places, QStringLiteral("sta wear")).size(), 1u);
  EXPECT_TRUE(matching(places, QStringLiteral("nothing like it")).empty());
}

}  // namespace
}  // namespace wrapgauge
