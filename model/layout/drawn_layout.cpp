#include "model/layout/drawn_layout.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "model/core/number_text.hpp"
#include "model/geometry/polygon_checks.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/layout/drawn_shape_forms.hpp"
#include "model/layout/layout_check_parts.hpp"
#include "model/layout/layout_fields.hpp"
#include "model/layout/part_words.hpp"

namespace wrapgauge {
namespace {

constexpr double kFarthestPoint = 10.0;  // m
constexpr Length kWidestJoin = 10.0 * mm;
constexpr const char* kGuessed = " (parts guessed)";

class LayoutMaker {
 public:
  LayoutMaker(const Drawing& drawing, const DrawingMap& said)
      : drawing_(drawing), map_(whole_map(drawing, said)), parts_(drawn_parts(drawing, said)) {}

  Result<Layout> make() {
    say_details();
    place_frame();
    for_each(DrawnPart::kChamber, [&](const DrawnShape& s) { chambers(s); });
    for_each(DrawnPart::kStrap, [&](const DrawnShape& s) { straps(s); });
    for_each(DrawnPart::kChannel, [&](const DrawnShape& s) { channels(s); });
    for_each(DrawnPart::kInsetSeam, [&](const DrawnShape& s) { inset_seams(s); });
    for_each(DrawnPart::kInlet, [&](const DrawnShape& s) {
      layout_.inlets.push_back({name_of(s, "inlet", layout_.inlets.size()), moved(middle_m(s))});
    });
    check_size();
    if (!faults_.empty()) return bad_input(faults_sentence(drawing_.file, faults_));
    return std::move(layout_);
  }

 private:
  void fail(const std::string& message) { faults_.push_back(message); }
  void fail(const DrawnShape& shape, const std::string& message) {
    fail("the " + place_text(shape) + " " + message);
  }

  template <class Make>
  void for_each(DrawnPart part, const Make& make) {
    for (index_ = 0; index_ < drawing_.shapes.size(); ++index_) {
      const DrawnShape& shape = drawing_.shapes[index_];
      if (parts_[index_].part != part) continue;
      if (!shape.fault.empty())
        fail(shape, shape.fault + "; correct it, or map it to ignore.");
      else
        make(shape);
    }
  }

  void say_details() {
    const LayoutDetails& said = map_.details;
    layout_.name = said.name.empty() ? drawing_.file.substr(0, drawing_.file.rfind('.')) : said.name;
    // Goes with the layout into whatever is made of it.
    if (std::any_of(parts_.begin(), parts_.end(), [](const DrawnAs& as) { return as.guessed; }))
      layout_.name += kGuessed;
    layout_.backing = said.backing;
    layout_.closure = said.closure;
    layout_.rim_bonded = said.rim_bonded;
    if (!said.skin_sheet || !said.outer_sheet)
      return fail(std::string("a drawing does not say what the ") + (said.skin_sheet ? "outer" : "skin") +
                  " sheet is: give --" + (said.skin_sheet ? "outer" : "skin") + " MATERIAL THICKNESS, or " +
                  (said.skin_sheet ? "outer" : "skin") + "_sheet in the mapping file.");
    layout_.skin_sheet = *said.skin_sheet;
    layout_.outer_sheet = *said.outer_sheet;
  }

  // The outline, alone and whole, says where the layout's frame lies.
  void place_frame() {
    const DrawnShape* outline = nullptr;
    for_each(DrawnPart::kOutline, [&](const DrawnShape& shape) {
      if (outline)
        return fail(shape, "is a second outline; the first is the " + place_text(*outline) +
                               ", so map one of them to ignore.");
      outline = &shape;
      const Bounds2 box = bounds(shape);
      corner_ = drawing_.y_down ? Vec2(box.low.x(), box.high.y()) : box.low;
      if (shape.paths.size() != 1)
        return fail(shape, "is the outline and has " + std::to_string(shape.paths.size()) +
                               " paths; draw it as one closed path.");
      layout_.outline_m = loop_of(shape, shape.paths[0]);
    });
    const bool said = std::any_of(parts_.begin(), parts_.end(),
                                  [](const DrawnAs& as) { return as.part == DrawnPart::kOutline; });
    if (!said)
      fail(
          "no shape is the outline; map one, e.g. --map 'NAME=outline' (layout read without --out lists the "
          "shapes).");
  }

  // To a millionth of a millimetre, as layout files are written: drawing and file give the same bytes.
  static double tidy(double length_m) { return rounded_mm(length_m) * 1e-3; }
  static Length tidy(Length length) { return rounded_mm(length.si()) * mm; }

  Vec2 moved(const Vec2& p) const {
    const Vec2& at = map_.details.corner_m;
    const double up = drawing_.y_down ? corner_.y() - p.y() : p.y() - corner_.y();
    return {tidy(p.x() - corner_.x() + at.x()), tidy(up + at.y())};
  }
  std::vector<Vec2> moved(const std::vector<Vec2>& points) {
    points_ += points.size();
    std::vector<Vec2> out;
    for (const Vec2& p : points) out.push_back(moved(p));
    return out;
  }

  // The shape's own name, else its kind and number. Copies of a shape have its name: they are numbered too.
  std::string name_of(const DrawnShape& shape, const std::string& kind, std::size_t before,
                      bool alone = true) {
    const bool own = alone && !shape.name.empty();
    std::string name = own ? shape.name : kind + " " + std::to_string(before + 1);
    for (std::size_t number = own ? 2 : before + 2; !names_.emplace(kind, name).second; ++number)
      name = (own ? shape.name : kind) + " " + std::to_string(number);
    return name;
  }

  // What to do about a gap: joining is offered where it is small enough.
  static std::string closing_advice(double gap_m) {
    if (gap_m > kWidestJoin.si()) return "close it.";
    return "close it, or read with --join-mm " + fixed_text(std::ceil(gap_m / 1e-4 - 1e-6) / 10.0, 1) + ".";
  }

  Polygon loop_of(const DrawnShape& shape, const DrawnPath& path) {
    if (!path.closed) {
      const Vec2 &from = path.points_m.front(), &to = path.points_m.back();
      fail(shape, std::string("is to be the ") + part_name(*parts_[index_].part) + " but is open, from " +
                      at_mm(from) + " to " + at_mm(to) + "; " + closing_advice((to - from).norm()));
    } else if (const auto place = self_crossing(path.points_m)) {
      fail(shape, "crosses or touches itself at " + at_mm(*place) +
                      " of the drawing; redraw it as one simple loop.");
    }
    return counter_clockwise(moved(path.points_m));
  }

  // Paths inside others are holes, in a chamber alone.
  void chambers(const DrawnShape& shape) {
    std::vector<const DrawnPath*> walls, holes;
    for (const DrawnPath& path : shape.paths) (lies_in_another(shape, path) ? holes : walls).push_back(&path);
    for (const DrawnPath* wall : walls)
      layout_.chambers.push_back({name_of(shape, "chamber", layout_.chambers.size(), walls.size() == 1),
                                  loop_of(shape, *wall),
                                  {},
                                  {}});
    for (const DrawnPath* path : holes) hole(shape, *path);
  }

  // A hole is fused, so a round or rectangular one is an inset seam.
  void hole(const DrawnShape& shape, const DrawnPath& path) {
    const std::string what = "has a path at " + at_mm(path.points_m.front()) + " inside another";
    if (!is_hole(shape, path))
      return fail(shape,
                  what + " that is no hole by its fill rule; take it out, or set the rule to evenodd.");
    if (const auto circle = as_circle(path)) return spot(shape, *circle);
    auto line = as_strip(path);
    if (!line)
      return fail(shape, what +
                             ", a hole that is neither a circle nor a rectangle; inset seams are spots and "
                             "lines of one width, so draw it as such.");
    line->path_m = moved(line->path_m);
    line->width = tidy(line->width);
    inset_line(shape, std::move(*line));
  }

  std::optional<StrapCloth> cloth_of(const std::string& name) const {
    const LayoutDetails& said = map_.details;
    for (const StrapCloth& cloth : said.strap_cloths)
      if (cloth.strap == name) return cloth;
    if (!said.strap_stiffness || !said.strap_thickness) return std::nullopt;
    return StrapCloth{name, *said.strap_stiffness, *said.strap_thickness};
  }

  void straps(const DrawnShape& shape) {
    if (!cloth_of(shape.name))
      return fail(shape,
                  "is a strap, and a drawing does not say its cloth: give --strap STIFFNESS THICKNESS (N/mm, "
                  "mm), or strap in the mapping file.");
    for (const DrawnPath& path : shape.paths) {
      if (lies_in_another(shape, path))
        return fail(shape, "is a strap and has a hole at " + at_mm(path.points_m.front()) + "; fill it.");
      const StrapCloth cloth = *cloth_of(shape.name);
      layout_.straps.push_back({name_of(shape, "strap", layout_.straps.size(), shape.paths.size() == 1),
                                loop_of(shape, path), cloth.stiffness, cloth.thickness});
    }
  }

  // An open line with the width said, or a closed rectangle.
  std::optional<InsetLine> strip(const DrawnShape& shape, const DrawnPath& path, const char* option) {
    if (path.closed) {
      auto strip = as_strip(path);
      if (!strip) {
        fail(shape, std::string("is closed and no rectangle, so it cannot be ") +
                        part_name(*parts_[index_].part) + "; draw it as an open line.");
        return std::nullopt;
      }
      strip->path_m = moved(strip->path_m);
      strip->width = tidy(strip->width);
      return strip;
    }
    if (!parts_[index_].width) {
      fail(shape, std::string("is a line without a width; give ") + option + " MM.");
      return std::nullopt;
    }
    if (path.points_m.size() < 2) {
      fail(shape, "is a single point and no line; draw a line.");
      return std::nullopt;
    }
    return InsetLine{moved(path.points_m), tidy(*parts_[index_].width)};
  }

  void channels(const DrawnShape& shape) {
    for (const DrawnPath& path : shape.paths)
      if (auto line = strip(shape, path, "--channel-width"))
        layout_.channels.push_back(
            {name_of(shape, "channel", layout_.channels.size(), shape.paths.size() == 1),
             std::move(line->path_m), line->width});
  }

  void inset_seams(const DrawnShape& shape) {
    for (const DrawnPath& path : shape.paths) {
      const auto circle = shape.circle ? shape.circle : as_circle(path);
      if (circle)
        spot(shape, *circle);
      else if (auto line = strip(shape, path, "--inset-width"))
        inset_line(shape, std::move(*line));
    }
  }

  void spot(const DrawnShape& shape, const DrawnCircle& circle) {
    const Vec2 middle = moved(circle.centre_m), rim(circle.radius_m, 0.0);
    if (Chamber* chamber = chamber_round(shape, middle, middle + rim))
      chamber->inset_spots.push_back({middle, tidy(Length(circle.radius_m))});
    points_ += 12;  // as in layout files
  }

  void inset_line(const DrawnShape& shape, InsetLine line) {
    const Vec2 along = line.path_m[1] - line.path_m[0], middle = line.path_m[0] + 0.5 * along;
    const Vec2 left = Vec2(-along.y(), along.x()).normalized();
    if (Chamber* chamber = chamber_round(shape, middle, middle + 0.5 * line.width.si() * left))
      chamber->inset_lines.push_back(std::move(line));
  }

  // The innermost chamber that holds an inset seam's middle; before it one that holds its edge too, since a
  // ring's hole may hold a chamber of its own.
  Chamber* chamber_round(const DrawnShape& shape, const Vec2& middle, const Vec2& edge) {
    Chamber* found = nullptr;
    bool whole = false;
    for (Chamber& chamber : layout_.chambers) {
      if (!contains(chamber.boundary_m, middle)) continue;
      const bool now_whole = contains(chamber.boundary_m, edge);
      const bool smaller = !found || signed_area_m2(chamber.boundary_m) < signed_area_m2(found->boundary_m);
      if (now_whole == whole ? !smaller : whole) continue;
      found = &chamber;
      whole = now_whole;
    }
    if (!found)
      fail(shape, "is an inset seam and lies in no chamber, at " + at_mm(middle) +
                      " of the layout; move it or map it anew.");
    return found;
  }

  void check_size() {
    if (!faults_.empty()) return;
    if (points_ > kMostLayoutPoints)
      return fail("the parts have " + std::to_string(points_) +
                  " points and 20 000 are read; simplify the curves.");
    Bounds2 box = bounds(layout_.outline_m);
    if (box.high.maxCoeff() > kFarthestPoint)
      fail("the outline measures " + fixed_text(box.high.x() / 1e-3, 1) + " by " +
           fixed_text(box.high.y() / 1e-3, 1) + " mm; check the unit (--unit).");
  }

  const Drawing& drawing_;
  const DrawingMap map_;
  std::vector<DrawnAs> parts_;
  std::size_t index_ = 0;  // of the shape being made
  Vec2 corner_ = Vec2::Zero();
  std::size_t points_ = 0;
  Layout layout_;
  std::set<std::pair<std::string, std::string>> names_;  // kind and name of parts
  std::vector<std::string> faults_;                      // each ends a sentence that names the file
};

// A whole layout, but for what is said otherwise.
Layout with_details(Layout layout, const LayoutDetails& said) {
  if (!said.name.empty()) layout.name = said.name;
  if (said.skin_sheet) layout.skin_sheet = *said.skin_sheet;
  if (said.outer_sheet) layout.outer_sheet = *said.outer_sheet;
  if (!(said.backing == Backing{})) layout.backing = said.backing;
  if (said.closure) layout.closure = said.closure;
  layout.rim_bonded = layout.rim_bonded || said.rim_bonded;
  for (Strap& strap : layout.straps) {
    if (said.strap_stiffness) strap.stiffness = *said.strap_stiffness;
    if (said.strap_thickness) strap.thickness = *said.strap_thickness;
  }
  return layout;
}

}  // namespace

Result<Layout> layout_from_drawing(const Drawing& drawing, const DrawingMap& map) {
  if (map.rules.empty() && drawing.changed_template)
    return bad_input(
        drawing.file +
        " is a template that another program saved since it was written, so its lines may differ "
        "from the layout it carries. Edit the drawing that 'layout read LAYOUT --out X.svg' writes "
        "instead, or say with --map what its lines are.");
  if (map.rules.empty() && drawing.layout) return with_details(*drawing.layout, map.details);
  return LayoutMaker(drawing, map).make();
}

}  // namespace wrapgauge
