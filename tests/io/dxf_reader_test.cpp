#include "model/io/readers/dxf_reader.hpp"

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
  const auto drawing = read_dxf(bytes, "x.dxf", {unit, 1.0, join});
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
  EXPECT_NE(note_text(none.notes[0]).find("assumed"), std::string::npos);
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
  EXPECT_NE(note_text(branch.notes.back()).find("3 line ends"), std::string::npos);
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

// Appended one by one: a chain of + trips a false warning of the compiler.
std::string joined(std::initializer_list<std::string_view> pieces) {
  std::string text;
  for (const std::string_view piece : pieces) text.append(piece);
  return text;
}

std::string group(std::string_view code, std::string_view value) {
  return joined({code, "\n", value, "\n"});
}

std::string block(std::string_view name, std::string_view inside, std::string_view base = "") {
  return joined({"0\nBLOCK\n2\n", name, "\n70\n0\n", base, inside, "0\nENDBLK\n"});
}

std::string with_blocks(std::string_view blocks, const std::string& entities) {
  return joined({"0\nSECTION\n2\nBLOCKS\n", blocks, "0\nENDSEC\n", dxf(entities)});
}

std::string insert(std::string_view name, std::string_view more = "", std::string_view layer = "A") {
  return joined({"0\nINSERT\n8\n", layer, "\n2\n", name, "\n", more});
}

const std::string kSlot =  // 4 by 2 mm from the origin
    "0\nLWPOLYLINE\n8\n0\n62\n0\n90\n4\n70\n1\n10\n0\n20\n0\n10\n4\n20\n0\n10\n4\n20\n2\n10\n0\n20\n2\n";

void expect_box(const DrawnShape& shape, double x0, double y0, double x1, double y1) {
  const Bounds2 box = bounds(shape);
  EXPECT_NEAR((box.low / 1e-3 - Vec2(x0, y0)).norm(), 0.0, 1e-6);
  EXPECT_NEAR((box.high / 1e-3 - Vec2(x1, y1)).norm(), 0.0, 1e-6);
}

// Worked by hand: base point, then scale, then turn, then the place (DXF reference, from memory).
TEST(DxfReader, BlocksLieWhereInsertPutsThem) {
  const auto shapes = [](const std::string& more, const std::string& base = "") {
    return read(with_blocks(block("Slot", kSlot, base), insert("SLOT", more))).shapes;
  };
  const std::string at = group("10", "100") + group("20", "50");
  expect_box(shapes(at).at(0), 100, 50, 104, 52);
  expect_box(shapes(at, group("10", "4") + group("20", "2")).at(0), 96, 48, 100, 50);
  expect_box(shapes(at + group("41", "3") + group("42", "-2")).at(0), 100, 46, 112, 50);
  expect_box(shapes(at + group("50", "90")).at(0), 98, 50, 100, 54);
  expect_box(shapes(at + group("50", "90") + group("41", "3")).at(0), 98, 50, 100, 62);
  expect_box(shapes(at + group("230", "-1")).at(0), -104, 50, -100, 52);  // seen from behind
  const auto grid = shapes(at + group("70", "3") + group("71", "2") + group("44", "10") + group("45", "20"));
  ASSERT_EQ(grid.size(), 6u);
  expect_box(grid[5], 120, 70, 124, 72);
  for (const DrawnShape& shape : grid) EXPECT_NEAR(*area_m2(shape) / 1e-6, 8.0, 1e-9);
}

TEST(DxfReader, ShapesOfABlockTakeLayerAndColourOfItsInsert) {
  const auto drawing = read(
      with_blocks(block("slot", kSlot + line(0, 9, 4, 9, "B")), insert("slot", group("62", "3"), "CHAMBER")));
  ASSERT_EQ(drawing.shapes.size(), 2u);
  EXPECT_EQ(drawing.shapes[0].groups, (std::vector<std::string>{"CHAMBER", "slot", "CHAMBER"}));
  EXPECT_EQ(drawing.shapes[0].stroke, "colour 3");
  EXPECT_EQ(drawing.shapes[1].groups.front(), "B");
  EXPECT_EQ(drawing.shapes[1].stroke, "colour 7");
}

TEST(DxfReader, CurvesOfABlockAreFollowedAtTheirFinalSize) {
  const std::string circle = "0\nCIRCLE\n8\n0\n10\n0\n20\n0\n40\n0.01\n";
  const std::string bulged = "0\nLWPOLYLINE\n8\n0\n90\n2\n70\n1\n10\n-1\n20\n0\n42\n1\n10\n1\n20\n0\n42\n1\n";
  const auto big =
      read(with_blocks(block("c", circle), insert("c", group("41", "5000") + group("42", "5000"))));
  ASSERT_TRUE(big.shapes.at(0).circle);
  EXPECT_NEAR(*area_m2(big.shapes[0]) / 1e-6, kPi * 2500, 1e-6);
  EXPECT_GT(big.shapes[0].paths[0].points_m.size(), 60u);
  const auto oval =
      read(with_blocks(block("c", circle + bulged),
                       insert("c", group("41", "4000") + group("42", "-2000") + group("50", "30"))));
  ASSERT_FALSE(oval.shapes.at(0).circle);
  EXPECT_NEAR(*area_m2(oval.shapes[0]) / 1e-6, kPi * 40 * 20, 1e-5 * kPi * 800);
  EXPECT_NEAR(*area_m2(oval.shapes.at(1)) / 1e-6, kPi * 4000 * 2000, 1e-5 * kPi * 8e6);
}

TEST(DxfReader, BlocksWithinBlocksAddUpAndNeverGoRound) {
  const std::string blocks = block("slot", kSlot) +
                             block("pair", insert("slot", "", "0") + insert("slot", group("10", "10"), "0")) +
                             block("loop", kSlot + insert("loop", "", "0"));
  const auto drawing = read(with_blocks(blocks, insert("pair", group("41", "2")) + insert("loop") +
                                                    insert("gone") + insert("slot", group("42", "0"))));
  ASSERT_EQ(drawing.shapes.size(), 3u);
  expect_box(drawing.shapes[1], 20, 0, 28, 2);
  ASSERT_EQ(drawing.left_out.size(), 3u);
  EXPECT_EQ(drawing.left_out[0].why, "puts \"loop\" into itself");
  EXPECT_EQ(drawing.left_out[1].why, "puts in \"gone\", which is not there");
  EXPECT_EQ(drawing.left_out[2].why, "has a scale of 0");
  std::string doubling = block("b0", kSlot);
  for (int i = 1; i < 16; ++i) {
    const std::string inner = insert(joined({"b", std::to_string(i - 1)}));
    doubling += block(joined({"b", std::to_string(i)}), inner + inner + inner);
  }
  const auto bomb = read_dxf(with_blocks(doubling, insert("b15")), "x.dxf");
  ASSERT_FALSE(bomb);
  EXPECT_NE(bomb.problem().message.find("more than"), std::string::npos);
  const auto many = read_dxf(
      with_blocks(block("e", ""), insert("e", group("70", "99999") + group("71", "99999"))), "x.dxf");
  ASSERT_FALSE(many);
  EXPECT_NE(many.problem().message.find("100 000 entities"), std::string::npos);
}

std::string fit_spline(const std::vector<Vec2>& points, int flags, std::string_view more = "") {
  std::string text = joined({"0\nSPLINE\n8\nA\n71\n3\n72\n0\n73\n0\n", group("70", std::to_string(flags)),
                             group("74", std::to_string(points.size())), more});
  for (const Vec2& p : points)
    text += group("11", std::to_string(p.x())) + group("21", std::to_string(p.y()));
  return text;
}

// Cubic spline interpolation is exact on straight lines, goes through its points, and its error on a smooth
// curve falls with the fourth power of the spacing [de Boor, 1978, from memory].
TEST(DxfReader, SplinesGivenByPointsGoThroughThemAndConvergeToTheCurve) {
  const auto circle_error = [](int count) {
    std::vector<Vec2> points;
    for (int i = 0; i < count; ++i)
      points.push_back(50.0 * Vec2(std::cos(2 * kPi * i / count), std::sin(2 * kPi * i / count)));
    const auto drawing = read(dxf(fit_spline(points, 1)));
    EXPECT_NE(note_text(drawing.notes.back()).find("given only by points"), std::string::npos);
    EXPECT_TRUE(all_closed(drawing.shapes.at(0)));
    double worst = 0.0;
    for (const Vec2& p : drawing.shapes[0].paths[0].points_m)
      worst = std::max(worst, std::abs(p.norm() / 1e-3 - 50.0));
    EXPECT_LT(worst, 0.2);
    return std::abs(*area_m2(drawing.shapes[0]) / 1e-6 - kPi * 2500);
  };
  const double coarse = circle_error(8), fine = circle_error(16);
  EXPECT_LT(coarse, 0.005 * kPi * 2500);
  EXPECT_GT(coarse / fine, 10.0);  // 16 in the limit
  const auto straight = read(dxf(fit_spline({{0, 0}, {3, 4}, {30, 40}}, 0)));
  EXPECT_NEAR(length_m(straight.shapes.at(0)) / 1e-3, 50.0, 1e-9);
  // One piece from (0, 0) to (10, 0), leaving upwards and arriving downwards: the highest point of the cubic
  // with end slopes of length 1 is at chord / 4, its area chord^2 / 5 (derived).
  const auto arch = read(dxf(fit_spline({{0, 0}, {10, 0}}, 0, "12\n0\n22\n5\n13\n0\n23\n-5\n")));
  const Bounds2 box = bounds(arch.shapes.at(0));
  EXPECT_NEAR(box.high.y() / 1e-3, 2.5, 0.05);
  EXPECT_NEAR(std::abs(arch.shapes[0].paths[0].swept_m2) / 1e-6, 100.0 / 5.0, 1e-3);
  EXPECT_FALSE(read(dxf(fit_spline({{1, 1}, {1, 1}}, 0))).shapes.at(0).fault.empty());
}

// Written, taken apart and measured by an independent library (ezdxf 0.18.1 as in Debian 12, its curves
// followed to 0.0001 mm): a block within a mirrored and turned block, and a spline by points with end
// directions.
TEST(DxfReader, AFileOf2018FromAnotherProgramHasTheAreasThatProgramFinds) {
  const Drawing drawing = test::drawing_of("r2018_blocks.dxf");
  ASSERT_EQ(drawing.shapes.size(), 4u);
  const double areas_mm2[] = {15000.0, 1307.5183, 1059.0898},
               lengths_mm[] = {620.7984, 141.0584, 126.9525, 159.6963};
  for (int i = 0; i < 3; ++i)
    EXPECT_NEAR(*area_m2(drawing.shapes[i]) / 1e-6, areas_mm2[i], 1e-5 * areas_mm2[i]);
  for (int i = 0; i < 4; ++i)
    EXPECT_NEAR(length_m(drawing.shapes[i]) / 1e-3, lengths_mm[i], 1e-5 * lengths_mm[i]);
  const Bounds2 box = bounds(drawing.shapes[2]);  // chords: within 0.05 mm of the curve
  EXPECT_NEAR((box.low / 1e-3 - Vec2(58.8897, -0.9121)).cwiseAbs().maxCoeff(), 0.0, 0.05);
  EXPECT_NEAR((box.high / 1e-3 - Vec2(100.3522, 34.5239)).cwiseAbs().maxCoeff(), 0.0, 0.05);
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

// Under 300 bytes each, they took 9 and more than 20 seconds.
TEST(DxfReader, CurvesThatCannotBeReadAreNotTracedOverAndOver) {
  for (const char* bomb : {"far_arc_bomb.dxf", "far_spline_bomb.dxf"})
    EXPECT_NE(test::refusal_of(bomb).find("400 000 points in curves that cannot be read"), std::string::npos)
        << bomb;
}

}  // namespace
}  // namespace wrapgauge
