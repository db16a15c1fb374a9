#include <QDoubleSpinBox>
#include <QTableWidget>

#include "tests/desk_window/job_fixture.hpp"

namespace wrapgauge {
namespace {

class GirthsJob : public JobTest {
 protected:
  QString largest_girth() {
    const auto* girths = named<QTableWidget>(QStringLiteral("girths"));
    double most = 0.0;
    for (int row = 0; row < girths->rowCount(); ++row)
      most = std::max(most, girths->item(row, 1)->text().section(QChar(' '), 0, 0).toDouble());
    return QString::number(most, 'f', 0);
  }

  void make_calf() {
    hand::choose(window_, QStringLiteral("Where the body comes from"), QStringLiteral("Made from measures"));
    hand::choose(window_, QStringLiteral("Form of the body"), QStringLiteral("Calf"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(window_.session().plan().tissue_site, "calf");
    hand::type(window_, QStringLiteral("Girth calf"), QStringLiteral("350"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(largest_girth(), QStringLiteral("350"));
    hand::type(window_, QStringLiteral("Girth calf"), QStringLiteral("340"));
    ASSERT_TRUE(wait_for_checks());
    EXPECT_EQ(largest_girth(), QStringLiteral("340"));
    picture(QStringLiteral("girths-1-body"));
  }

  // Girths of both edges come from the body.
  void make_sleeve() {
    const auto answer = [](QDialog& dialog) {
      hand::choose(dialog, QStringLiteral("Kind of layout"), QStringLiteral("Sleeve"));
      hand::type(dialog, QStringLiteral("Height"), QStringLiteral("80"));
      hand::type(dialog, QStringLiteral("Bands"), QStringLiteral("1"));
      hand::type(dialog, QStringLiteral("Chambers"), QStringLiteral("2"));
      const auto* stretch = dialog.findChildren<QDoubleSpinBox*>().last();
      for (const auto* field : dialog.findChildren<QDoubleSpinBox*>())
        if (field->accessibleName().startsWith(QStringLiteral("Stretch"))) stretch = field;
      EXPECT_EQ(stretch->text(), QStringLiteral("-12.2 %"))
          << "panelled to the calf's girths, with a panelled sleeve's slack, and thinned for both sheets";
      hand::type(dialog, QStringLiteral("Stretch"), QStringLiteral("4"));
      take_picture(dialog, QStringLiteral("girths-2-sleeve"));
      hand::press(dialog, QStringLiteral("Make"));
    };
    hand::with_answers([this] { hand::press(window_, QStringLiteral("Make a layout from sizes")); },
                       {answer});
    ASSERT_EQ(window_.session().plan().layout.chambers.size(), 2U);
    ASSERT_TRUE(window_.session().plan().layout.closure.has_value());
    EXPECT_NEAR(*window_.session().plan().layout.closure->stretch, 0.04, 1e-9);
  }
};

TEST_F(GirthsJob, ASleeveGoesFromGirthsToANote) {
  window_.start({});
  hand::key(window_, Qt::Key_N, Qt::ControlModifier);
  make_calf();
  open(PlanStep::kWear);
  hand::type(window_, QStringLiteral("Station of the anchor"), QStringLiteral("150"));
  ASSERT_TRUE(wait_for_checks());
  open(PlanStep::kLayout);
  make_sleeve();
  ASSERT_TRUE(wait_for_checks());
  EXPECT_EQ(state(PlanStep::kWear), "ready");
  open(PlanStep::kInflation);
  for (const Inlet& inlet : window_.session().plan().layout.inlets)
    hand::type(window_, QStringLiteral("Pressure of inlet ") + QString::fromStdString(inlet.name),
               QStringLiteral("1"));
  ASSERT_TRUE(wait_for_result()) << window_.message().words().toStdString();
  estimate_on(QStringLiteral("12"));
  picture(QStringLiteral("girths-3-note"));
  save_note("sleeve");
}

}  // namespace
}  // namespace wrapgauge
