#include "model/layout/forms/form_dimensions.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>

namespace wrapgauge {
namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

class Dimensions {
 public:
  Dimensions(const std::map<std::string, double>& values, const Layout& layout)
      : values_(values), layout_(layout), box_(bounds(layout.outline_m)) {}

  std::vector<FormDimension> all() {
    whole();
    if (values_.contains("diameter"))
      pad();
    else
      band();
    spots();
    straps();
    return std::move(out_);
  }

 private:
  bool has(const char* name) const {
    const auto found = values_.find(name);
    return found != values_.end() && found->second > 0.0;
  }
  double metres(const char* name) const { return 1e-3 * values_.at(name); }
  void add(const char* name, const Vec2& from, const Vec2& to, bool whole = false) {
    out_.push_back({name, from, to, whole});
  }

  void whole() {
    const double middle = 0.5 * (box_.low.y() + box_.high.y());
    if (has("diameter")) {
      add("diameter", {box_.low.x(), middle}, {box_.high.x(), middle}, true);
    } else if (const auto ends = ends_across(layout_.outline_m, middle)) {
      add(kWidthDimension, {ends->first, middle}, {ends->second, middle}, true);
    }
    if (has("height")) add("height", {box_.high.x(), box_.low.y()}, {box_.high.x(), box_.high.y()}, true);
  }

  // Rings: outwards from the middle, where no ring has its opening.
  void pad() {
    const double radius = 0.5 * metres("diameter");
    add("rim", {radius - metres("rim"), 0.0}, {radius, 0.0});
    if (layout_.chambers.size() < 2) return;
    const double middle = bounds(layout_.chambers.front().boundary_m).high.x();
    add("seam", {0.0, -middle}, {0.0, -middle - metres("seam")});
  }

  void band() {
    if (layout_.chambers.empty()) return;
    const Bounds2 first = bounds(layout_.chambers.front().boundary_m);
    const double x = 0.5 * (first.low.x() + first.high.x());
    if (has("rim")) add("rim", {x, box_.low.y()}, {x, first.low.y()});
    if (has("corner")) corner(first);
    seam();
    if (!has("channel") || layout_.channels.empty()) return;
    const Channel& channel = layout_.channels.back();  // the seam's arrow stands at the first
    const Vec2 along = channel.path_m.back() - channel.path_m.front();
    const Vec2 middle = 0.5 * (channel.path_m.back() + channel.path_m.front());
    const Vec2 half = 0.5 * channel.width.si() * Vec2(-along.y(), along.x()).normalized();
    add("channel", middle - half, middle + half);
  }

  void corner(const Bounds2& chamber) {
    const Vec2 size = chamber.high - chamber.low;
    const double radius = metres("corner");
    if (2.0 * radius > size.minCoeff()) return;  // drawn smaller than it is asked for
    const Vec2 centre(chamber.low.x() + radius, chamber.high.y() - radius);
    add("corner", centre, centre + radius * std::sqrt(0.5) * Vec2(-1.0, 1.0));
  }

  // Between rows where there are some, since a taper leaves heights as they are; else halfway up.
  void seam() {
    if (!has("seam")) return;
    const Bounds2 first = bounds(layout_.chambers.front().boundary_m);
    for (const Chamber& chamber : layout_.chambers)
      if (const Bounds2 above = bounds(chamber.boundary_m); above.low.y() > first.high.y()) {
        const double x = first.low.x() + 0.75 * (first.high.x() - first.low.x());
        return add("seam", {x, first.high.y()}, {x, above.low.y()});
      }
    if (layout_.chambers.size() < 2) return;
    const double y = 0.5 * (box_.low.y() + box_.high.y());
    const auto left = ends_across(layout_.chambers[0].boundary_m, y),
               right = ends_across(layout_.chambers[1].boundary_m, y);
    if (left && right) add("seam", {left->second, y}, {right->first, y});
  }

  void spots() {
    for (const Chamber& chamber : layout_.chambers) {
      if (chamber.inset_spots.empty()) continue;
      const Vec2 at = chamber.inset_spots.front().centre_m;
      if (has("spot-radius")) add("spot-radius", at, at + Vec2(metres("spot-radius"), 0.0));
      if (has("spacing")) spacing(chamber, at);
      return;
    }
  }

  // The pitch is fitted to the chamber: it may be a little less than what is asked for.
  void spacing(const Chamber& chamber, const Vec2& at) {
    const InsetSpot* nearest = nullptr;
    for (const InsetSpot& spot : chamber.inset_spots)
      if (const double off = (spot.centre_m - at).norm();
          off > 0.0 && (!nearest || off < (nearest->centre_m - at).norm()))
        nearest = &spot;
    if (nearest) add("spacing", at, nearest->centre_m);
  }

  void straps() {
    if (layout_.straps.empty()) return;
    const Bounds2 strap = bounds(layout_.straps.front().boundary_m);
    if (has("strap-width")) {
      const double x = 0.5 * (std::max(strap.low.x(), box_.high.x()) + strap.high.x());
      add("strap-width", {x, strap.low.y()}, {x, strap.high.y()});
    }
    if (!has("overlap")) return;
    const double y = strap.high.y();
    const auto ends = ends_across(layout_.straps.front().boundary_m, y - 1e-9);
    if (ends) add("overlap", {ends->second - metres("overlap"), y}, {ends->second, y});
  }

  const std::map<std::string, double>& values_;
  const Layout& layout_;
  Bounds2 box_;
  std::vector<FormDimension> out_;
};

}  // namespace

std::optional<std::pair<double, double>> ends_across(const Polygon& loop_m, double y_m) {
  double low = kNone, high = -kNone;
  for (std::size_t k = 0; k < loop_m.size(); ++k) {
    const Vec2 &a = loop_m[k], &b = loop_m[(k + 1) % loop_m.size()];
    if ((a.y() > y_m) == (b.y() > y_m)) continue;
    const double x = a.x() + (y_m - a.y()) / (b.y() - a.y()) * (b.x() - a.x());
    low = std::min(low, x);
    high = std::max(high, x);
  }
  if (low > high) return std::nullopt;
  return std::pair(low, high);
}

std::vector<FormDimension> form_dimensions(const std::map<std::string, double>& values,
                                           const Layout& layout) {
  return Dimensions(values, layout).all();
}

}  // namespace wrapgauge
