#include "model/casting/template_pages.hpp"

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

}  // namespace
}  // namespace wrapgauge
