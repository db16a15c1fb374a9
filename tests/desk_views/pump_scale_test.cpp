#include "app/desk/views/pump_scale.hpp"

#include <QSlider>

#include "small_estimate.hpp"

namespace wrapgauge {
namespace {

std::shared_ptr<const Estimate> estimate_at(Pressure inside) {
  Plan plan = two_chamber_plan();
  plan.inflation[0].target = inside;
  const auto job = complete_job(plan);
  if (!job) throw std::runtime_error(job.problem().message);
  auto found = estimate(job->plan, job->body, job->resources, {false, false});
  if (!found) throw std::runtime_error(found.problem().message);
  return std::make_shared<const Estimate>(std::move(found).value());
}

struct WithPieces : WithShown {
  explicit WithPieces(Pressure inside) { read = show_all_states(estimate_at(inside)); }
  bool read = false;

  Severity severity_at(int state) const {
    Severity worst = Severity::kNote;
    for (const Finding& finding : shown.contact(state)->findings) worst = std::max(worst, finding.severity);
    return worst;
  }
  std::string told() const {
    std::string all;
    for (int state = 0; state < shown.state_count(); ++state)
      for (const Finding& finding : shown.contact(state)->findings)
        all += std::to_string(state) + " " + finding.where + " " +
               std::string(severity_text(finding.severity)) + " " + std::to_string(finding.share_of_limit) +
               "\n";
    return all;
  }
  double share_at(int state) const {
    double share = 0.0;
    for (const Finding& finding : shown.contact(state)->findings)
      share = std::max(share, finding.share_of_limit);
    return share;
  }
};

TEST(TravelPieces, BetweenTwoStatesTheGraverOneCounts) {
  using Pieces = std::vector<TravelPiece>;
  const WorstOfState note{Severity::kNote, 0.5}, warn{Severity::kWarn, 0.9},
      above{Severity::kAboveLimit, 1.5}, unshared{Severity::kAboveLimit, 0.4};
  EXPECT_EQ(travel_pieces({{note, warn}}), (Pieces{{0.0, 1.0, Severity::kWarn}}));
  EXPECT_EQ(travel_pieces({{above, note}}), (Pieces{{0.0, 1.0, Severity::kAboveLimit}}));
  EXPECT_EQ(travel_pieces({{note, unshared}}), (Pieces{{0.0, 1.0, Severity::kAboveLimit}}))
      << "no share says where it is passed";
  EXPECT_EQ(travel_pieces({{note, above, above}}),
            (Pieces{{0.0, 0.5, Severity::kWarn}, {0.5, 2.0, Severity::kAboveLimit}}));
  EXPECT_EQ(travel_pieces({{note, std::nullopt}}), (Pieces{{0.0, 1.0, std::nullopt}}));
}

TEST(TravelPieces, LeaveNoGapAndAreNowhereMilderThanAStateInThem) {
  for (const Pressure inside : {0.5 * kPa, 2.0 * kPa, 12.0 * kPa}) {
    const WithPieces with(inside);
    ASSERT_TRUE(with.read);
    const auto pieces = travel_pieces(with.shown);
    ASSERT_FALSE(pieces.empty());
    EXPECT_EQ(pieces.front().from, 0.0);
    EXPECT_EQ(pieces.back().to, with.shown.state_count() - 1);
    for (std::size_t k = 1; k < pieces.size(); ++k) {
      EXPECT_EQ(pieces[k].from, pieces[k - 1].to);
      EXPECT_NE(pieces[k].severity, pieces[k - 1].severity);
    }
    for (int state = 0; state < with.shown.state_count(); ++state)
      for (const TravelPiece& piece : pieces)
        if (piece.from < state && state < piece.to) {
          EXPECT_GE(piece.severity, with.severity_at(state)) << inside / kPa << " kPa, state " << state;
        }
    EXPECT_EQ(pieces.back().severity, with.severity_at(with.shown.state_count() - 1));
  }
}

TEST(TravelPieces, ALimitIsPassedWhereTheShareComesToOne) {
  const WithPieces with(2.0 * kPa);
  ASSERT_TRUE(with.read);
  int passed = 0;
  for (const TravelPiece& piece : travel_pieces(with.shown)) {
    if (piece.severity < Severity::kAboveLimit || piece.from == std::floor(piece.from)) continue;
    const int before = static_cast<int>(piece.from);
    EXPECT_NEAR(std::lerp(with.share_at(before), with.share_at(before + 1), piece.from - before), 1.0, 1e-9);
    ++passed;
  }
  EXPECT_EQ(passed, 1) << with.told();
}

TEST(TravelPieces, AreUnknownWhileTheirContactIsBeingRead) {
  WithShown with;
  with.shown.show_estimate(two_chamber_estimate());
  ASSERT_FALSE(with.shown.contact(0)) << "it is handed over by the event loop, which does not run here";
  EXPECT_FALSE(travel_pieces(with.shown).front().severity);
}

TEST(PumpScale, SaysWhereALimitIsPassed) {
  WithPieces with(2.0 * kPa);
  ASSERT_TRUE(with.read);
  QSlider slider(Qt::Horizontal);
  const PumpScale scale(with.shown, with.selection, slider);
  const QString words = scale.accessibleDescription();
  EXPECT_TRUE(words.contains(QStringLiteral("above a limit from"))) << words.toStdString();
  EXPECT_TRUE(words.contains(QStringLiteral("kPa"))) << words.toStdString();
}

}  // namespace
}  // namespace wrapgauge
