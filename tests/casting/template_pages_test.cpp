#include "model/casting/template_pages.hpp"

#include <algorithm>

#include "tables.hpp"

namespace wrapgauge {
namespace {

TemplateDrawing drawing_of(double width_m, double height_m) {
  Layout layout;
  layout.name = "sheet";
  layout.outline_m = {{0, 0}, {width_m, 0}, {width_m, height_m}, {0, height_m}};
  return template_drawing(layout, {});
}

TEST(TemplatePages, OnePageHoldsWhatFitsBetweenMarginsAndFooter) {
  // A4 upright: 297 - 20 - 14 mm high less 2 x 3 mm of room round the drawing.
  const auto pages = template_pages(drawing_of(0.184, 0.257), *paper_of("a4"));
  ASSERT_TRUE(pages);
  EXPECT_EQ(pages->pages.size(), 1u);
  EXPECT_FALSE(pages->lying);
  EXPECT_EQ(template_pages(drawing_of(0.184, 0.258), *paper_of("a4"))->pages.size(), 2u);
  EXPECT_EQ(template_pages(drawing_of(0.1851, 0.257), *paper_of("a4"))->pages.size(), 2u);
}

TEST(TemplatePages, LieWhenThatTakesFewer) {
  const auto pages = template_pages(drawing_of(0.26, 0.1), *paper_of("a4"));
  ASSERT_TRUE(pages.ok());
  EXPECT_EQ(pages->pages.size(), 1u);
  EXPECT_TRUE(pages->lying);
  EXPECT_EQ(pages->width / mm, 297.0);
}

TEST(TemplatePages, NeighboursShareTheOverlapAndAllOfTheDrawingIsShown) {
  for (const char* paper : {"a4", "letter"}) {
    const TemplateDrawing drawing = drawing_of(0.9, 0.7);
    const auto pages = template_pages(drawing, *paper_of(paper));
    ASSERT_TRUE(pages);
    ASSERT_EQ(pages->pages.size(), static_cast<std::size_t>(pages->rows * pages->columns));
    for (const TemplatePage& page : pages->pages) {
      if (page.column + 1 == pages->columns) {
        EXPECT_GE(page.window.high.x(), drawing.box.high.x());
      } else {
        EXPECT_NEAR(page.window.high.x() - (&page + 1)->window.low.x(), 0.010, 1e-12);
      }
      if (page.row + 1 == pages->rows) {
        EXPECT_LE(page.window.low.y(), drawing.box.low.y());
      }
    }
    EXPECT_EQ(pages->pages.back().label,
              static_cast<char>('A' + pages->rows - 1) + std::to_string(pages->columns));
  }
}

TEST(TemplatePages, RefuseMoreThanTwoHundred) {
  const auto pages = template_pages(drawing_of(3.0, 3.0), *paper_of("a4"));
  ASSERT_FALSE(pages);
  EXPECT_NE(pages.problem().message.find("above the 200 allowed"), std::string::npos)
      << pages.problem().message;
  EXPECT_FALSE(paper_of("a3"));
}

TEST(TemplateDrawing, AClosingLineThatBendsIsFoldedAlongBothPanels) {
  Layout layout;
  layout.outline_m = {{0, 0}, {0.2, 0}, {0.2, 0.1}, {0, 0.1}};
  layout.closure = Closure{0.0, 0.15 * metre, std::nullopt, 0.0, 0.2};
  std::vector<std::vector<Vec2>> folds;
  for (const TemplateLine& line : template_drawing(layout, {0.15 * metre, Vec2(0.08, 0.05), {}}).lines)
    if (line.stroke == TemplateStroke::kFold) folds.push_back(line.path_m);
  ASSERT_EQ(folds.size(), 2u);
  ASSERT_EQ(folds[1].size(), 3u);
  const double x_m[] = {0.145, 0.150, 0.145};
  for (std::size_t k = 0; k < 3; ++k) EXPECT_NEAR(folds[1][k].x(), x_m[k], 1e-12);
}

TEST(TemplateDrawing, CarriesArrowCentreLineClosingLinesAndSites) {
  Layout layout;
  layout.outline_m = {{0, 0}, {0.2, 0}, {0.2, 0.1}, {0, 0.1}};
  layout.closure = Closure{0.0, std::nullopt, 0.05, 0.2};
  const TemplateDrawing drawing = template_drawing(
      layout,
      {0.15 * metre, Vec2(0.08, 0.05), {{"styloid", SiteKind::kBone, {0.19, 0.05}, 20.0 * mm, 0.0 * mm}}});
  std::vector<const TemplateLine*> fold;
  const TemplateLine* centre = nullptr;
  for (const TemplateLine& line : drawing.lines) {
    if (line.stroke == TemplateStroke::kFold) fold.push_back(&line);
    if (line.stroke == TemplateStroke::kCentre) centre = &line;
  }
  ASSERT_EQ(fold.size(), 2u);
  EXPECT_NEAR(fold[1]->path_m[0].x(), 0.145, 1e-12);  // slants by half the taper
  EXPECT_NEAR(fold[1]->path_m[1].x(), 0.155, 1e-12);
  ASSERT_TRUE(centre);
  EXPECT_EQ(centre->path_m[0].x(), 0.08);
  EXPECT_NEAR(drawing.box.high.x(), 0.21, 1e-3);  // the site's circle reaches beyond the outline
}

// Two chambers that a channel joins, a third on its own, an inset spot and a strap.
Layout three_chambers() {
  Layout layout;
  layout.name = "three";
  layout.outline_m = {{0, 0}, {0.2, 0}, {0.2, 0.1}, {0, 0.1}};
  const auto box = [](double x) { return Polygon{{x, 0.02}, {x + 0.04, 0.02}, {x + 0.04, 0.08}, {x, 0.08}}; };
  layout.chambers = {
      {"a", box(0.02), {{{0.04, 0.06}, 4.0 * mm}}, {}}, {"b", box(0.08), {}, {}}, {"c", box(0.14), {}, {}}};
  layout.channels = {{"ab", {{0.05, 0.05}, {0.09, 0.05}}, 5.0 * mm}};
  layout.inlets = {{"one", {0.1, 0.06}}, {"two", {0.16, 0.06}}};
  layout.straps = {
      {"closing strap", {{0.2, 0.02}, {0.24, 0.02}, {0.24, 0.08}, {0.2, 0.08}}, 20.0 * N_per_mm, 1.0 * mm}};
  layout.skin_sheet = {"00-30", 1.5 * mm};
  layout.outer_sheet = {"A10", 2.0 * mm};
  return layout;
}

TEST(TemplateDrawing, HasOneOutlineAPressureGroupAndNoLineAcrossAChannelsMouth) {
  const TemplateDrawing drawing = template_drawing(three_chambers(), {});
  std::vector<double> areas;
  for (const TemplateLine& line : drawing.lines) {
    if (line.stroke != TemplateStroke::kSeam) continue;
    areas.push_back(1e6 * signed_area_m2(line.path_m));
    for (const double x : {0.06, 0.08}) EXPECT_GT(distance_to_loop_m(line.path_m, {x, 0.05}), 2.4e-3);
  }
  std::sort(areas.begin(), areas.end());
  ASSERT_EQ(areas.size(), 2u);
  EXPECT_NEAR(areas[0], 2400.0, 1e-6);
  EXPECT_NEAR(areas[1], 2 * 2400.0 + 20 * 5.0, 1e-6);
}

TEST(TemplateDrawing, NamesPartsSheetsAmountsStrapsAndSites) {
  const Layout layout = three_chambers();
  TemplateMarks marks;
  marks.allowance = casting_allowance(test::rules());
  marks.amounts = silicone_amounts(layout, test::grades_of(layout), marks.allowance);
  marks.sites = {{"peroneal nerve", SiteKind::kNerve, {0.05, 0.05}, 8.0 * mm, 0.0 * mm}};
  const TemplateDrawing drawing = template_drawing(layout, marks);
  std::string said;
  for (const TemplateWords& words : drawing.words) said += words.words + "\n";
  for (const char* words :
       {"a\n", "b\n", "c\n", "inlet one", "inlet two", "closing strap", "distal",
        "keep clear: peroneal nerve", "skin: 00-30, 1.5 mm thick; outer: A10, 2.0 mm thick"})
    EXPECT_NE(said.find(words), std::string::npos) << words;
  std::string notes;
  for (const std::string& note : drawing.notes) notes += note + "\n";
  // (200 + 20) x (100 + 20) mm less the corners is 263 cm2: x 1.5 mm x 1.15 x 1.07 g/mL = 48.6 g.
  for (const char* words :
       {"skin sheet: 00-30, 1.5 mm thick, mix about 50 g\n", "outer sheet: A10, 2.0 mm thick, mix about ",
        "fusing layer: A10, 0.5 mm thick, mix about ", "trim border of 10.0 mm and 15 % for spill",
        "strap closing strap: cloth, 1.0 mm thick", "keep clear: peroneal nerve (nerve)"})
    EXPECT_NE(notes.find(words), std::string::npos) << words << "\n" << notes;
}

TEST(TemplateDrawing, TheLegendHasEveryKindOfLineThatIsThereAndNoOther) {
  const TemplateDrawing drawing = template_drawing(three_chambers(), {});
  const auto strokes = strokes_of(drawing);
  EXPECT_EQ(strokes.size(), 5u);  // no closing lines, no sites
  for (const TemplateLine& line : drawing.lines)
    EXPECT_NE(std::find(strokes.begin(), strokes.end(), line.stroke), strokes.end());
}

// A ring's name lies in the ring, not in its middle.
TEST(TemplateDrawing, ANameLiesInItsChamber) {
  Layout layout;
  layout.outline_m = {{-0.1, -0.1}, {0.1, -0.1}, {0.1, 0.1}, {-0.1, 0.1}};
  const Polygon letter_u{{-0.06, -0.06}, {0.06, -0.06},  {0.06, 0.06},  {0.03, 0.06},
                         {0.03, -0.04},  {-0.03, -0.04}, {-0.03, 0.06}, {-0.06, 0.06}};
  layout.chambers = {{"horseshoe", letter_u, {}, {}}};
  for (const TemplateWords& words : template_drawing(layout, {}).words)
    if (words.words == "horseshoe") {
      EXPECT_TRUE(contains(letter_u, words.place_m));
      EXPECT_GT(distance_to_loop_m(letter_u, words.place_m), 9e-3);
    }
}

TEST(TemplateDrawing, TheSkinSideIsTheMirrorImageAndSaysSo) {
  const Layout layout = three_chambers();
  TemplateMarks marks;
  const TemplateDrawing outer = template_drawing(layout, marks);
  marks.skin_side = true;
  const TemplateDrawing skin = template_drawing(layout, marks);
  EXPECT_EQ(outer.title(), "three, template 1:1, outer sheet towards you");
  EXPECT_EQ(skin.title(), "three, template 1:1, skin sheet towards you (mirrored)");
  ASSERT_EQ(outer.lines.size(), skin.lines.size());
  const auto mirrored = [](const Vec2& p) { return Vec2(-p.x(), p.y()); };
  for (std::size_t i = 0; i < outer.lines.size(); ++i)
    for (std::size_t k = 0; k < outer.lines[i].path_m.size(); ++k)
      EXPECT_EQ(mirrored(outer.lines[i].path_m[k]), skin.lines[i].path_m[k]);
  EXPECT_EQ(mirrored(outer.inlets_m[0]), skin.inlets_m[0]);
  EXPECT_EQ(outer.box.low.x(), -skin.box.high.x());
}

}  // namespace
}  // namespace wrapgauge
