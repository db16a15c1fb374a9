#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/core/number_text.hpp"
#include "model/geometry/stroke.hpp"
#include "model/layout/forms/layout_form_values.hpp"

namespace wrapgauge {
namespace {

constexpr double kTurn = 2.0 * std::numbers::pi;
constexpr double kSmallestWidth_m = 6e-3;   // of a ring: a narrower one cannot open (judgement)
constexpr double kLargestGirthShare = 0.4;  // of the girth: a wider pad wants to be a cuff (judgement)

// Appends points on an arc, chords within the flattening of it, its first point included and its last not.
void add_arc(Polygon& loop, const Vec2& centre, double radius, double from, double to) {
  const double most = 2.0 * std::acos(1.0 - kFlattening / radius);
  const int chords = std::max(4, static_cast<int>(std::ceil(std::abs(to - from) / most)));
  for (int i = 0; i < chords; ++i) {
    const double angle = from + (to - from) * i / chords;
    loop.push_back(centre + radius * Vec2(std::cos(angle), std::sin(angle)));
  }
}

// Where a ring's round end has its middle, so that the gap to the other end is as asked for.
double start_angle(double middle_m, double width_m, double gap_m) {
  return std::asin((gap_m + width_m) / (2.0 * middle_m));
}

// A ring that is open towards +x by `gap_m` between its round ends.
Polygon open_ring(double middle_m, double width_m, double gap_m) {
  const double half = 0.5 * width_m, start = start_angle(middle_m, width_m, gap_m);
  const double end = kTurn - start;
  const auto on_middle = [&](double angle) {
    return Vec2(middle_m * std::cos(angle), middle_m * std::sin(angle));
  };
  Polygon loop;
  add_arc(loop, Vec2::Zero(), middle_m + half, start, end);
  add_arc(loop, on_middle(end), half, end, end + 0.5 * kTurn);
  add_arc(loop, Vec2::Zero(), middle_m - half, end, start);
  add_arc(loop, on_middle(start), half, start - 0.5 * kTurn, start);
  return counter_clockwise(loop);
}

void add_ring(Layout& layout, int number, double middle_m, const LayoutFormValues& values, double width_m) {
  const double seam = values.metres("seam");
  Chamber ring{"ring " + std::to_string(number), open_ring(middle_m, width_m, seam), {}, {}};
  const double start = start_angle(middle_m, width_m, seam);
  const int spots = values.count("spots");
  for (int i = 0; i < spots; ++i) {
    const double angle = start + (kTurn - 2.0 * start) * (i + 0.5) / spots;
    ring.inset_spots.push_back(
        {middle_m * Vec2(std::cos(angle), std::sin(angle)), Length(values.metres("spot-radius"))});
  }
  layout.inlets.push_back({ring.name, middle_m * Vec2(std::cos(start), std::sin(start))});
  layout.chambers.push_back(std::move(ring));
}

Result<Layout> draw_round_pad(const LayoutFormValues& values) {
  const double radius = 0.5 * values.metres("diameter"), seam = values.metres("seam");
  const int rings = values.count("rings");
  if (2.0 * radius > kLargestGirthShare * values.metres("girth"))
    return bad_input(Phrase::worded(
        "The pad's diameter is %1, more than %2 of the girth; make it smaller, or make a cuff instead.",
        {millimetres_of(Length(2.0 * radius)), figures_of(number_text(kLargestGirthShare))}));
  // The middle chamber's radius is a ring's width.
  const double width = (radius - values.metres("rim") - rings * seam) / (rings + 1);
  if (width < kSmallestWidth_m)
    return bad_input(
        Phrase::worded("Rim and seams leave %1 for each ring; at least 6 mm are needed: use fewer rings or a "
                       "larger pad.",
                       {millimetres_of(Length(width))}));
  Layout layout;
  layout.outline_m = flattened_ellipse(Vec2::Zero(), Vec2(radius, radius), kFlattening);
  layout.chambers.push_back(
      {"middle", flattened_ellipse(Vec2::Zero(), Vec2(width, width), kFlattening), {}, {}});
  layout.inlets.push_back({"middle", Vec2::Zero()});
  for (int ring = 1; ring <= rings; ++ring)
    add_ring(layout, ring, ring * (width + seam) + 0.5 * width, values, width);
  layout.rim_bonded = true;
  return layout;
}

}  // namespace

LayoutFormMaker round_pad_layout_form() {
  return {{"round-pad",
           "A round haptic pad, taped or glued on by its rim: a middle chamber and open rings round it, each "
           "with its own inlet.",
           {measured_girth("girth", 270.0, "under the pad's middle", 0.0),
            layout_size("diameter", 90.0, 20.0, 400.0, "of the whole pad"),
            layout_count("rings", 1, 0, 6, "rings round the middle chamber"),
            layout_count("spots", 4, 0, 60, "inset spots in each ring"),
            layout_size("spot-radius", 2.0, 0.5, 20.0, "radius of the inset spots"),
            layout_size("seam", 8.0, 2.0, 60.0, "width of the seams between the chambers"),
            layout_size("rim", 10.0, 2.0, 80.0, "width of the fused rim")},
           {"00-30", 1.5 * mm},
           {"00-30", 1.5 * mm}},
          draw_round_pad};
}

}  // namespace wrapgauge
