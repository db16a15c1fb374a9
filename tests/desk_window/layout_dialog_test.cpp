#include "app/desk/window/layout_dialog.hpp"

#include <QLabel>

#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class LayoutIsMade : public JobTest {
 protected:
  void SetUp() override {
    window_.start({});
    ASSERT_TRUE(wait_for_result());
    dialog = std::make_unique<LayoutDialog>(window_.session(), &window_);
    dialog->show();
    wait_until_at_rest(*dialog);
  }
  const LayoutPicture& picture_of() const { return *dialog->findChild<LayoutPicture*>(); }
  std::optional<QString> size_of(const QString& name) const {
    for (const PictureArrow& arrow : picture_of().arrows())
      if (arrow.name == name) return arrow.size;
    return std::nullopt;
  }
  bool says(const QString& words) const {
    for (const QLabel* label : dialog->findChildren<QLabel*>())
      if (label->isVisible() && label->text().contains(words)) return true;
    return false;
  }
  std::unique_ptr<LayoutDialog> dialog;
};

TEST_F(LayoutIsMade, AsItIsTypedWithAnArrowNamedLikeEachField) {
  EXPECT_EQ(size_of(QStringLiteral("Seam")), QStringLiteral("10.0 mm"));
  hand::type(*dialog, QStringLiteral("Seam"), QStringLiteral("16"));
  EXPECT_EQ(size_of(QStringLiteral("Seam")), QStringLiteral("16.0 mm"));
  hand::type(*dialog, QStringLiteral("Height"), QStringLiteral("80"));
  EXPECT_EQ(size_of(QStringLiteral("Height")), QStringLiteral("80.0 mm"));
  EXPECT_EQ(picture_of().layout(), dialog->made());
  hand::type(*dialog, QStringLiteral("Overlap"), QStringLiteral("0"));
  EXPECT_FALSE(size_of(QStringLiteral("Overlap"))) << "there is no strap to measure";
  EXPECT_TRUE(says(QStringLiteral("starts at 0.3 kPa (2 mmHg): low on purpose")));
}

TEST_F(LayoutIsMade, WordsOfArrowsStandClearOfOneAnother) {
  const std::vector<QRectF> places = picture_of().label_places();
  for (std::size_t i = 0; i < places.size(); ++i) {
    EXPECT_TRUE(QRectF(picture_of().rect()).contains(places[i])) << i;
    for (std::size_t k = i + 1; k < places.size(); ++k)
      EXPECT_FALSE(places[i].intersects(places[k])) << i << k;
  }
}

// The sentence names the largest seam that can be, so that typing it works.
TEST_F(LayoutIsMade, WhatCannotBeIsSaidBesideTheFieldWithWhatCan) {
  hand::type(*dialog, QStringLiteral("Chambers"), QStringLiteral("8"));
  const Layout before = dialog->made();
  hand::type(*dialog, QStringLiteral("Seam"), QStringLiteral("60"));
  EXPECT_FALSE(hand::button(*dialog, QStringLiteral("Make"))->isEnabled());
  EXPECT_EQ(picture_of().layout(), before) << "what could be made last is still to be seen";
  QString most;
  for (const QLabel* label : dialog->findChildren<QLabel*>())
    if (label->text().startsWith(QStringLiteral("Seam: with these other sizes at most ")))
      most = label->text().section(QStringLiteral("at most "), 1).section(u' ', 0, 0);
  ASSERT_FALSE(most.isEmpty());
  take_picture(*dialog, QStringLiteral("make-refused"));
  hand::type(*dialog, QStringLiteral("Seam"), most);
  EXPECT_TRUE(hand::button(*dialog, QStringLiteral("Make"))->isEnabled()) << most.toStdString();
  hand::type(*dialog, QStringLiteral("Seam"), QString::number(most.toDouble() + 0.1, 'f', 1));
  EXPECT_FALSE(hand::button(*dialog, QStringLiteral("Make"))->isEnabled()) << most.toStdString();
}

}  // namespace
}  // namespace wrapgauge
