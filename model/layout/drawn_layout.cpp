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
      layout_.inlets.push_back({part_called(s, "inlet", layout_.inlets.size()), moved(middle_m(s))});
    });
    for (const Inlet& inlet : map_.details.inlets) added_inlet(inlet);
    check_size();
    if (faults_.empty()) return std::move(layout_);
    std::vector<std::string> texts;
    for (const DrawnFault& fault : faults_) texts.push_back(fault_text(drawing_, fault));
    return bad_input(faults_sentence(drawing_.file, texts));
  }
  std::vector<DrawnFault> take_faults() { return std::move(faults_); }

 private:
  void fail(Phrase words, Phrase remedy, std::string by_option = {}) {
    faults_.push_back({{}, std::move(words), std::move(remedy), std::move(by_option)});
  }
  // About the shape that is being made; what comes back takes what else is known.
  DrawnFault& fail_here(Phrase words, Phrase remedy, std::string by_option = {}) {
    faults_.push_back({index_, std::move(words), std::move(remedy), std::move(by_option)});
    return faults_.back();
  }
  Phrase part_here() const { return part_words(*parts_[index_].part); }
  static Phrase leave_out() { return Phrase::worded("correct it in the drawing, or leave it out"); }

  void added_inlet(const Inlet& inlet) {
    std::string name = inlet.name;
    for (std::size_t number = 2; !names_.emplace("inlet", name).second; ++number)
      name = inlet.name + " " + std::to_string(number);
    layout_.inlets.push_back({name, {tidy(inlet.point_m.x()), tidy(inlet.point_m.y())}});
  }

  template <class Make>
  void for_each(DrawnPart part, const Make& make) {
    for (index_ = 0; index_ < drawing_.shapes.size(); ++index_) {
      const DrawnShape& shape = drawing_.shapes[index_];
      if (parts_[index_].part != part) continue;
      if (!shape.fault.empty())
        fail_here(table_words(shape.fault), leave_out(), "correct it, or map it to ignore");
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
      return said.skin_sheet ? fail(Phrase::worded("a drawing does not say what the outer sheet is"),
                                    Phrase::worded("say its silicone and thickness"),
                                    "give --outer MATERIAL THICKNESS, or outer_sheet in the mapping file")
                             : fail(Phrase::worded("a drawing does not say what the skin sheet is"),
                                    Phrase::worded("say its silicone and thickness"),
                                    "give --skin MATERIAL THICKNESS, or skin_sheet in the mapping file");
    layout_.skin_sheet = *said.skin_sheet;
    layout_.outer_sheet = *said.outer_sheet;
  }

  // The outline, alone and whole, says where the layout's frame lies.
  void place_frame() {
    const DrawnShape* outline = nullptr;
    for_each(DrawnPart::kOutline, [&](const DrawnShape& shape) {
      if (outline)
        return void(fail_here(
            Phrase::worded("is a second outline; the first is the %1", {name_of(place_text(*outline))}),
            Phrase::worded("leave one of them out"), "map one of them to ignore"));
      outline = &shape;
      const Bounds2 box = bounds(shape);
      corner_ = drawing_.y_down ? Vec2(box.low.x(), box.high.y()) : box.low;
      if (shape.paths.size() != 1)
        return void(fail_here(Phrase::worded("is the outline and has %1 paths",
                                             {figures_of(static_cast<int>(shape.paths.size()))}),
                              Phrase::worded("draw it as one closed path")));
      layout_.outline_m = loop_of(shape.paths[0]);
    });
    const bool said = std::any_of(parts_.begin(), parts_.end(),
                                  [](const DrawnAs& as) { return as.part == DrawnPart::kOutline; });
    if (!said)
      fail(Phrase::worded("no shape is the outline"), Phrase::worded("say which one is"),
           "map one, e.g. --map 'NAME=outline' (layout read without --out lists the shapes)");
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
  std::string part_called(const DrawnShape& shape, const std::string& kind, std::size_t before,
                          bool alone = true) {
    const bool own = alone && !shape.name.empty();
    std::string name = own ? shape.name : kind + " " + std::to_string(before + 1);
    for (std::size_t number = own ? 2 : before + 2; !names_.emplace(kind, name).second; ++number)
      name = (own ? shape.name : kind) + " " + std::to_string(number);
    return name;
  }

  // Joining is offered where the gap is small enough.
  void fail_open(const Vec2& from, const Vec2& to) {
    if (from == to) {
      fail_here(Phrase::worded("is to be the %1 but is a single point, at %2", {part_here(), at_mm(from)}),
                Phrase::worded("draw it as a closed line"));
      return;
    }
    const double gap_m = (to - from).norm();
    DrawnFault& fault = fail_here(
        Phrase::worded("is to be the %1 but is open, from %2 to %3", {part_here(), at_mm(from), at_mm(to)}),
        Phrase::worded("close it"));
    fault.places_m = {from, to};
    if (gap_m > kWidestJoin.si()) return;
    const double join_mm = std::ceil(gap_m / 1e-4 - 1e-6) / 10.0;
    fault.join = join_mm * mm;
    fault.remedy =
        Phrase::worded("close it, or join line ends up to %1 apart", {millimetres_of(*fault.join)});
    fault.by_option = "close it, or read with --join-mm " + fixed_text(join_mm, 1);
  }

  Polygon loop_of(const DrawnPath& path) {
    if (!path.closed) {
      fail_open(path.points_m.front(), path.points_m.back());
    } else if (const auto place = self_crossing(path.points_m)) {
      fail_here(Phrase::worded("crosses or touches itself at %1 of the drawing", {at_mm(*place)}),
                Phrase::worded("redraw it as one simple loop"))
          .places_m = {*place};
    }
    return counter_clockwise(moved(path.points_m));
  }

  // Paths inside others are holes, in a chamber alone.
  void chambers(const DrawnShape& shape) {
    std::vector<const DrawnPath*> walls, holes;
    for (const DrawnPath& path : shape.paths) (lies_in_another(shape, path) ? holes : walls).push_back(&path);
    for (const DrawnPath* wall : walls)
      layout_.chambers.push_back({part_called(shape, "chamber", layout_.chambers.size(), walls.size() == 1),
                                  loop_of(*wall),
                                  {},
                                  {}});
    for (const DrawnPath* path : holes) hole(shape, *path);
  }

  // A hole is fused, so a round or rectangular one is an inset seam.
  void hole(const DrawnShape& shape, const DrawnPath& path) {
    const Phrase at = at_mm(path.points_m.front());
    if (!is_hole(shape, path)) {
      fail_here(Phrase::worded("has a path at %1 inside another that is no hole by its fill rule", {at}),
                Phrase::worded("take it out, or set the rule to evenodd"))
          .places_m = {path.points_m.front()};
      return;
    }
    if (const auto circle = as_circle(path)) return spot(*circle);
    auto line = as_strip(path);
    if (!line) {
      fail_here(Phrase::worded(
                    "has a path at %1 inside another, a hole that is neither a circle nor a rectangle", {at}),
                Phrase::worded("inset seams are spots and lines of one width, so draw it as such"))
          .places_m = {path.points_m.front()};
      return;
    }
    line->path_m = moved(line->path_m);
    line->width = tidy(line->width);
    inset_line(std::move(*line));
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
      return void(fail_here(Phrase::worded("is a strap, and a drawing does not say its cloth"),
                            Phrase::worded("say its stiffness and thickness"),
                            "give --strap STIFFNESS THICKNESS (N/mm, mm), or strap in the mapping file"));
    for (const DrawnPath& path : shape.paths) {
      if (lies_in_another(shape, path))
        return void(
            fail_here(Phrase::worded("is a strap and has a hole at %1", {at_mm(path.points_m.front())}),
                      Phrase::worded("fill it")));
      const StrapCloth cloth = *cloth_of(shape.name);
      layout_.straps.push_back({part_called(shape, "strap", layout_.straps.size(), shape.paths.size() == 1),
                                loop_of(path), cloth.stiffness, cloth.thickness});
    }
  }

  // An open line with the width said, or a closed rectangle.
  std::optional<InsetLine> strip(const DrawnPath& path, const char* option) {
    if (path.closed) {
      auto strip = as_strip(path);
      if (!strip) {
        fail_here(Phrase::worded("is closed and no rectangle, so it cannot be %1", {part_here()}),
                  Phrase::worded("draw it as an open line"));
        return std::nullopt;
      }
      strip->path_m = moved(strip->path_m);
      strip->width = tidy(strip->width);
      return strip;
    }
    if (!parts_[index_].width) {
      fail_here(Phrase::worded("is a line without a width"), Phrase::worded("say how wide such lines are"),
                std::string("give ") + option + " MM");
      return std::nullopt;
    }
    if (path.points_m.size() < 2) {
      fail_here(Phrase::worded("is a single point and no line"), Phrase::worded("draw a line"));
      return std::nullopt;
    }
    return InsetLine{moved(path.points_m), tidy(*parts_[index_].width)};
  }

  void channels(const DrawnShape& shape) {
    for (const DrawnPath& path : shape.paths)
      if (auto line = strip(path, "--channel-width"))
        layout_.channels.push_back(
            {part_called(shape, "channel", layout_.channels.size(), shape.paths.size() == 1),
             std::move(line->path_m), line->width});
  }

  void inset_seams(const DrawnShape& shape) {
    for (const DrawnPath& path : shape.paths) {
      const auto circle = shape.circle ? shape.circle : as_circle(path);
      if (circle)
        spot(*circle);
      else if (auto line = strip(path, "--inset-width"))
        inset_line(std::move(*line));
    }
  }

  void spot(const DrawnCircle& circle) {
    const Vec2 middle = moved(circle.centre_m), rim(circle.radius_m, 0.0);
    if (Chamber* chamber = chamber_round(middle, middle + rim))
      chamber->inset_spots.push_back({middle, tidy(Length(circle.radius_m))});
    points_ += 12;  // as in layout files
  }

  void inset_line(InsetLine line) {
    const Vec2 along = line.path_m[1] - line.path_m[0], middle = line.path_m[0] + 0.5 * along;
    const Vec2 left = Vec2(-along.y(), along.x()).normalized();
    if (Chamber* chamber = chamber_round(middle, middle + 0.5 * line.width.si() * left))
      chamber->inset_lines.push_back(std::move(line));
  }

  // The innermost chamber that holds an inset seam's middle; before it one that holds its edge too, since a
  // ring's hole may hold a chamber of its own.
  Chamber* chamber_round(const Vec2& middle, const Vec2& edge) {
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
      fail_here(
          Phrase::worded("is an inset seam and lies in no chamber, at %1 of the layout", {at_mm(middle)}),
          Phrase::worded("move it, or say that it is something else"), "move it or map it anew");
    return found;
  }

  void check_size() {
    if (!faults_.empty()) return;
    if (points_ > kMostLayoutPoints)
      return fail(Phrase::worded("the parts have %1 points and 20 000 are read",
                                 {figures_of(static_cast<int>(points_))}),
                  Phrase::worded("simplify the curves"));
    Bounds2 box = bounds(layout_.outline_m);
    if (box.high.maxCoeff() > kFarthestPoint)
      fail(Phrase::worded("the outline measures %1 by %2 mm",
                          {figures_of(fixed_text(box.high.x() / 1e-3, 1)),
                           figures_of(fixed_text(box.high.y() / 1e-3, 1))}),
           Phrase::worded("check the unit"), "check the unit (--unit)");
  }

  const Drawing& drawing_;
  const DrawingMap map_;
  std::vector<DrawnAs> parts_;
  std::size_t index_ = 0;  // of the shape being made
  Vec2 corner_ = Vec2::Zero();
  std::size_t points_ = 0;
  Layout layout_;
  std::set<std::pair<std::string, std::string>> names_;  // kind and name of parts
  std::vector<DrawnFault> faults_;
};

// A whole layout, but for what is said otherwise.
Layout with_details(Layout layout, const LayoutDetails& said) {
  if (!said.name.empty()) layout.name = said.name;
  if (said.skin_sheet) layout.skin_sheet = *said.skin_sheet;
  if (said.outer_sheet) layout.outer_sheet = *said.outer_sheet;
  if (!(said.backing == Backing{})) layout.backing = said.backing;
  if (said.closure) layout.closure = said.closure;
  layout.rim_bonded = layout.rim_bonded || said.rim_bonded;
  layout.inlets.insert(layout.inlets.end(), said.inlets.begin(), said.inlets.end());
  for (Strap& strap : layout.straps) {
    if (said.strap_stiffness) strap.stiffness = *said.strap_stiffness;
    if (said.strap_thickness) strap.thickness = *said.strap_thickness;
  }
  return layout;
}

// Nothing said of a template: the layout that it carries holds, or nothing does.
bool is_read_as_template(const Drawing& drawing, const DrawingMap& map) {
  return map.rules.empty() && (drawing.changed_template || drawing.layout);
}

DrawnFault changed_since() {
  return {
      {},
      Phrase::worded("the file is a template that another program saved since it was written, so its lines "
                     "may differ from the layout it carries"),
      Phrase::worded("edit the drawing of the layout instead, or say what each of its lines is"),
      "edit the drawing that 'layout read LAYOUT --out X.svg' writes instead, or say with --map what its "
      "lines are"};
}

}  // namespace

Result<Layout> layout_from_drawing(const Drawing& drawing, const DrawingMap& map) {
  if (!is_read_as_template(drawing, map)) return LayoutMaker(drawing, map).make();
  if (drawing.changed_template)
    return bad_input(faults_sentence(drawing.file, {fault_text(drawing, changed_since())}));
  return with_details(*drawing.layout, map.details);
}

std::vector<DrawnFault> drawn_faults(const Drawing& drawing, const DrawingMap& map) {
  if (is_read_as_template(drawing, map))
    return drawing.changed_template ? std::vector{changed_since()} : std::vector<DrawnFault>{};
  LayoutMaker maker(drawing, map);
  if (maker.make()) return {};
  return maker.take_faults();
}

}  // namespace wrapgauge
