#include "model/io/dxf_reader.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "tests/io/drawings.hpp"

namespace wrapgauge {
namespace {

constexpr double kPi = std::numbers::pi;

std::string dxf(const std::string& entities, const std::string& header = "9\n$INSUNITS\n70\n4\n") {
  return "0\nSECTION\n2\nHEADER\n" + header + "0\nENDSEC\n0\nSECTION\n2\nENTITIES\n" + entities +
         "0\nENDSEC\n0\nEOF\n";
}

std::string line(double x0, double y0, double x1, double y1, const std::string& layer = "A") {
  return "0\nLINE\n8\n" + layer + "\n10\n" + std::to_string(x0) + "\n20\n" + std::to_string(y0) + "\n11\n" +
         std::to_string(x1) + "\n21\n" + std::to_string(y1) + "\n";
}

Drawing read(const std::string& bytes, std::optional<Length> unit = {}, Length join = 0.1 * mm) {
  const auto drawing = read_dxf(bytes, "x.dxf", unit, join);
  EXPECT_TRUE(drawing) << drawing.problem().message;
  return drawing ? *drawing : Drawing{};
}

const std::string kSquare = line(0, 0, 10, 0) + line(10, 10, 10, 0) + line(0, 10, 10, 10) + line(0, 10, 0, 0);

TEST(DxfReader, UnitsComeFromTheHeader) {
  const auto area = [](int code) {
    const auto d = read(dxf(kSquare, "9\n$INSUNITS\n70\n" + std::to_string(code) + "\n"));
    return *area_m2(d.shapes.at(0));
  };
  EXPECT_NEAR(area(4), 100e-6, 1e-12);
  EXPECT_NEAR(area(5), 100e-4, 1e-10);
  EXPECT_NEAR(area(1), 100 * 0.0254 * 0.0254, 1e-10);
  const auto none = read(dxf(kSquare, ""));
  EXPECT_NEAR(*area_m2(none.shapes[0]), 100e-6, 1e-12);
  EXPECT_NE(none.notes[0].find("assumed"), std::string::npos);
  EXPECT_NEAR(*area_m2(read(dxf(kSquare, ""), 1.0 * cm).shapes[0]), 100e-4, 1e-10);
  EXPECT_FALSE(read_dxf(dxf(kSquare, "9\n$INSUNITS\n70\n20\n"), "x.dxf"));  // parsec
}

TEST(DxfReader, LinesAreJoinedOnlyWhereTwoEndsMeet) {
  const auto shapes = [](const std::string& entities, double join) {
    return read(dxf(entities), {}, join * mm).shapes.size();
  };
  EXPECT_EQ(shapes(kSquare, 0.1), 1u);
  EXPECT_EQ(shapes(line(0, 0, 10, 0) + line(10.05, 0, 20, 0), 0.1), 1u);
  EXPECT_EQ(shapes(line(0, 0, 10, 0) + line(10.05, 0, 20, 0), 0.01), 2u);
  EXPECT_EQ(shapes(line(0, 0, 10, 0, "A") + line(10, 0, 20, 0, "B"), 0.1), 2u);  // other layers
  const auto branch = read(dxf(line(0, 0, 10, 0) + line(10, 0, 20, 0) + line(10, 0, 10, 9)));
  EXPECT_EQ(branch.shapes.size(), 3u);
  EXPECT_NE(branch.notes.back().find("3 line ends"), std::string::npos);
}

TEST(DxfReader, ShortPiecesOfAFineLoopAreJoinedToo) {
  std::string entities;
  constexpr int kPieces = 200;  // sides of 0.03 mm, below the tolerance for joining
  const auto at = [](int i) {
    return Vec2(std::cos(2 * kPi * i / kPieces), std::sin(2 * kPi * i / kPieces));
  };
  for (int i = 0; i < kPieces; ++i)
    entities += line(at(i).x(), at(i).y(), at((i + 1) % kPieces).x(), at((i + 1) % kPieces).y());
  const auto drawing = read(dxf(entities));
  ASSERT_EQ(drawing.shapes.size(), 1u);
  EXPECT_NEAR(*area_m2(drawing.shapes[0]) / 1e-6, 100 * std::sin(2 * kPi / kPieces), 1e-4);
}

TEST(DxfReader, EveryKindOfCurveHasItsArea) {
  const Drawing cuff = test::drawing_of("cuff.dxf");
  ASSERT_EQ(cuff.shapes.size(), 6u);
  EXPECT_NEAR(*area_m2(cuff.shapes[1]) / 1e-6, 80 * 54 - (4 - kPi) * 100, 1e-2);  // bulges
  EXPECT_NEAR(*area_m2(cuff.shapes[2]) / 1e-6, kPi * 40 * 27, 5e-2);              // ellipse
  EXPECT_NEAR(*area_m2(cuff.shapes[4]) / 1e-6, kPi * 9, 1e-9);                    // circle
  EXPECT_EQ(cuff.left_out.size(), 1u);
  // A quarter circle as a rational spline of degree 2: weights 1, 1/sqrt(2), 1 [Piegl & Tiller, from memory].
  const Drawing quarter = test::drawing_of("quarter_spline.dxf");
  ASSERT_EQ(quarter.shapes.size(), 1u);
  EXPECT_NEAR(*area_m2(quarter.shapes[0]) / 1e-6, kPi * 2500 / 4, 2e-2);
}

TEST(DxfReader, OldPolylinesAndPlanesSeenFromBehindAreRead) {
  const Drawing old = test::drawing_of("r12.dxf");
  ASSERT_EQ(old.shapes.size(), 2u);
  EXPECT_NEAR(*area_m2(old.shapes[0]) / 1e-6, 240 * 85 - (1 - kPi / 4) * 225, 1e-2);
  const Bounds2 box = bounds(old.shapes[1]);  // centre (-100, 50) of a plane whose x is turned over
  EXPECT_NEAR(box.low.x(), 0.090, 1e-9);
  EXPECT_NEAR(box.high.x(), 0.100, 1e-9);
  EXPECT_NEAR(box.high.y(), 0.060, 1e-9);
}

TEST(DxfReader, LayersThatAreOffAreLeftOut) {
  const std::string tables =
      "0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n0\nLAYER\n2\nA\n62\n-"
      "3\n70\n0\n0\nLAYER\n2\nB\n62\n5\n70\n0\n0\nENDTAB\n"
      "0\nENDSEC\n";
  const auto drawing = read(tables + dxf(line(0, 0, 1, 0, "A") + line(5, 0, 9, 0, "B")));
  ASSERT_EQ(drawing.shapes.size(), 1u);
  EXPECT_EQ(drawing.shapes[0].stroke, "colour 5");
  ASSERT_EQ(drawing.left_out.size(), 1u);
  EXPECT_NE(drawing.left_out[0].why.find("hidden layer"), std::string::npos);
}

TEST(DxfReader, LineEndsOfEveryKindAreTheSame) {
  std::string crlf;
  for (const char c : dxf(kSquare)) crlf += c == '\n' ? std::string("\r\n") : std::string(1, c);
  EXPECT_NEAR(*area_m2(read(crlf).shapes.at(0)), 100e-6, 1e-12);
}

TEST(DxfReader, HostileFilesAreRefusedOrTheirEntityIs) {
  EXPECT_NE(test::refusal_of("truncated.dxf").find("cut short"), std::string::npos);
  EXPECT_NE(test::refusal_of("bad_group_code.dxf").find("\"ten\" at line 5"), std::string::npos);
  EXPECT_NE(test::drawing_of("nan.dxf").shapes[0].fault.find("\"nan\" at line 26"), std::string::npos);
  EXPECT_FALSE(test::drawing_of("count_too_big.dxf").shapes[0].fault.empty());
  EXPECT_FALSE(test::drawing_of("count_negative.dxf").shapes[0].fault.empty());
  EXPECT_FALSE(all_closed(test::drawing_of("one_corner.dxf").shapes[0]));
  EXPECT_TRUE(crossing_of(test::drawing_of("bow_tie.dxf").shapes[0]));
  EXPECT_FALSE(read_dxf(std::string("\0\1\2", 3), "x.dxf"));
  EXPECT_FALSE(read_dxf("0\nLINE\n10\n5\n0\nEOF\n", "x.dxf"));
}

}  // namespace
}  // namespace wrapgauge
