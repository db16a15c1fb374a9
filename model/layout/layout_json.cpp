#include "model/layout/layout_json.hpp"

#include <cmath>

#include "model/core/file.hpp"
#include "model/core/json_object.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/stroke.hpp"
#include "model/layout/layout_fields.hpp"

namespace wrapgauge {
namespace {

using nlohmann::json;

class LayoutReader {
 public:
  Result<Layout> read(const json& value, const std::string& where) {
    JsonObject object(value, where);
    Layout layout;
    object.format_one("wrapgauge-layout");
    layout.name = object.text_or("name", "layout");
    if (object.has("outline")) {
      JsonObject outline(object.value("outline"), object.place("outline"));
      layout.outline_m = shape(outline);
      close(object, outline);
    } else {
      object.value("outline");  // says that it is missing
    }
    each(object, "chambers", [&](JsonObject& item) { layout.chambers.push_back(chamber(item)); });
    each(object, "channels", [&](JsonObject& item) {
      layout.channels.push_back({item.text("name"), path(item, "path"), width(item)});
    });
    each(object, "inlets", [&](JsonObject& item) {
      layout.inlets.push_back({item.text("name"), point(item, "point")});
    });
    layout.skin_sheet = sheet_from(object, "skin_sheet");
    layout.outer_sheet = sheet_from(object, "outer_sheet");
    if (object.has("backing")) layout.backing = backing_from(object);
    each(object, "straps", [&](JsonObject& item) { layout.straps.push_back(strap(item)); });
    if (object.has("closure")) layout.closure = closure_from(object);
    layout.rim_bonded = object.flag_or("rim_bonded", false);
    if (auto problem = object.finish()) return *problem;
    return layout;
  }

 private:
  static Length in_mm(double value) { return value * mm; }

  // Hands the inner object's first problem to the outer one.
  static void close(JsonObject& outer, JsonObject& inner) {
    if (auto problem = inner.finish()) outer.fail(*problem);
  }

  template <class Read>
  static void each(JsonObject& object, const char* key, const Read& read) {
    const json& list = object.list_or_empty(key);
    for (std::size_t i = 0; i < list.size() && !object.failed(); ++i) {
      JsonObject item(list[i], object.place(key) + " " + std::to_string(i + 1));
      read(item);
      close(object, item);
    }
  }

  static Vec2 point(JsonObject& object, const char* key) {
    const std::vector<double> xy = object.numbers(key, 2, kCoordinateRange);
    return Vec2(xy[0], xy[1]) * 1e-3;
  }
  static Vec2 size(JsonObject& object, const char* key) {
    const std::vector<double> xy = object.numbers(key, 2, kSizeRange);
    return Vec2(xy[0], xy[1]) * 1e-3;
  }
  static Length width(JsonObject& object) { return in_mm(object.number("width", kSizeRange)); }

  std::vector<Vec2> points(JsonObject& object, const char* key, std::size_t least) {
    const json& list = object.list(key);
    std::vector<Vec2> out;
    if (!object.failed() && list.size() < least)
      object.fail(Phrase::worded(
          "%1 has %2 points; it needs at least %3.",
          {name_of(key), figures_of(static_cast<int>(list.size())), figures_of(static_cast<int>(least))}));
    if (count(object, list.size())) return out;
    for (std::size_t i = 0; i < list.size() && !object.failed(); ++i) {
      // One point is a list like [12, 30]; wrapped so that the shared number checks name it.
      const json wrapped{{"point", list[i]}};
      JsonObject item(wrapped, object.place(key) + " point " + std::to_string(i + 1));
      out.push_back(point(item, "point"));
      close(object, item);
    }
    return out;
  }
  std::vector<Vec2> path(JsonObject& object, const char* key) { return points(object, key, 2); }

  // True when the drawing now has too many points.
  bool count(JsonObject& object, std::size_t more) {
    points_ += more;
    if (points_ <= kMostLayoutPoints) return false;
    object.fail(Phrase::worded("the drawing has more than %1 points; simplify its curves.",
                               {figures_of(std::to_string(kMostLayoutPoints))}));
    return true;
  }

  Polygon shape(JsonObject& object) {
    const bool polygon = object.has("polygon"), rectangle = object.has("rectangle"),
               ellipse = object.has("ellipse");
    if (polygon + rectangle + ellipse != 1) {
      object.fail(Phrase::worded("give exactly one of polygon, rectangle and ellipse."));
      return {};
    }
    Polygon loop;
    if (polygon) loop = points(object, "polygon", 3);
    if (rectangle) loop = rectangle_shape(object);
    if (ellipse) {
      JsonObject inner(object.value("ellipse"), object.place("ellipse"));
      const Vec2 centre = point(inner, "centre"), radii = size(inner, "radii");
      if (radii.minCoeff() > 0.0) loop = flattened_ellipse(centre, radii, kFlattening);
      if (radii.minCoeff() <= 0.0) inner.fail(Phrase::worded("radii have to be above zero."));
      close(object, inner);
    }
    if (!polygon) count(object, loop.size());
    return counter_clockwise(loop);
  }

  static Polygon rectangle_shape(JsonObject& object) {
    JsonObject inner(object.value("rectangle"), object.place("rectangle"));
    const Vec2 low = Vec2(inner.number("x", kCoordinateRange), inner.number("y", kCoordinateRange)) * 1e-3;
    const Vec2 extent = Vec2(inner.number("width", kSizeRange), inner.number("height", kSizeRange)) * 1e-3;
    const double radius = inner.number_or("corner_radius", 0.0, kSizeRange) * 1e-3;
    if (extent.minCoeff() <= 0.0) inner.fail(Phrase::worded("width and height have to be above zero."));
    if (2.0 * radius > extent.minCoeff() + 1e-12)
      inner.fail(Phrase::worded(
          "corner_radius is %1 mm; it can be at most half the smaller side, %2 mm.",
          {figures_of(number_text(radius / 1e-3)), figures_of(number_text(0.5 * extent.minCoeff() / 1e-3))}));
    close(object, inner);
    return object.failed() ? Polygon{} : flattened_rectangle(low, extent, radius, kFlattening);
  }

  Chamber chamber(JsonObject& object) {
    Chamber out{object.text("name"), shape(object), {}, {}};
    each(object, "inset_spots", [&](JsonObject& item) {
      out.inset_spots.push_back({point(item, "centre"), in_mm(item.number("radius", kSizeRange))});
      count(item, 12);
    });
    each(object, "inset_lines", [&](JsonObject& item) {
      out.inset_lines.push_back({path(item, "path"), width(item)});
    });
    return out;
  }

  Strap strap(JsonObject& object) {
    return {object.text("name"), shape(object), object.number("stiffness", kStiffnessRange) * N_per_mm,
            in_mm(object.number("thickness", kThicknessRange))};
  }

  std::size_t points_ = 0;
};

json pair(const Vec2& p) {
  return json::array({rounded_mm(p.x()), rounded_mm(p.y())});
}
json pairs(const std::vector<Vec2>& points) {
  json list = json::array();
  for (const Vec2& p : points) list.push_back(pair(p));
  return list;
}
json chamber_json(const Chamber& chamber) {
  json out{{"name", chamber.name}, {"polygon", pairs(chamber.boundary_m)}};
  for (const InsetSpot& spot : chamber.inset_spots)
    out["inset_spots"].push_back({{"centre", pair(spot.centre_m)}, {"radius", rounded_mm(spot.radius.si())}});
  for (const InsetLine& line : chamber.inset_lines)
    out["inset_lines"].push_back({{"path", pairs(line.path_m)}, {"width", rounded_mm(line.width.si())}});
  return out;
}

}  // namespace

Result<Layout> layout_from_json(const json& value, std::string_view where) {
  return LayoutReader().read(value, std::string(where));
}

Result<Layout> layout_from_text(std::string_view text, const std::string& where) {
  const Result<json> parsed = parse_json(text, where);
  return parsed ? layout_from_json(*parsed, where) : Result<Layout>(parsed.problem());
}

Result<Layout> read_layout(const std::filesystem::path& file) {
  const Result<json> parsed = read_json(file);
  return parsed ? layout_from_json(*parsed, file.filename().string()) : Result<Layout>(parsed.problem());
}

json layout_to_json(const Layout& layout) {
  json out{{"wrapgauge-layout", 1},
           {"name", layout.name},
           {"outline", {{"polygon", pairs(layout.outline_m)}}},
           {"chambers", json::array()},
           {"channels", json::array()},
           {"inlets", json::array()},
           {"skin_sheet", sheet_json(layout.skin_sheet)},
           {"outer_sheet", sheet_json(layout.outer_sheet)},
           {"backing", backing_json(layout.backing)},
           {"straps", json::array()},
           {"rim_bonded", layout.rim_bonded}};
  for (const Chamber& chamber : layout.chambers) out["chambers"].push_back(chamber_json(chamber));
  for (const Channel& channel : layout.channels)
    out["channels"].push_back(
        {{"name", channel.name}, {"path", pairs(channel.path_m)}, {"width", rounded_mm(channel.width.si())}});
  for (const Inlet& inlet : layout.inlets)
    out["inlets"].push_back({{"name", inlet.name}, {"point", pair(inlet.point_m)}});
  for (const Strap& strap : layout.straps)
    out["straps"].push_back({{"name", strap.name},
                             {"polygon", pairs(strap.boundary_m)},
                             {"stiffness", strap.stiffness / N_per_mm},
                             {"thickness", rounded_mm(strap.thickness.si())}});
  if (layout.closure) out["closure"] = closure_json(*layout.closure);
  return out;
}

Result<std::monostate> write_layout(const Layout& layout, const std::filesystem::path& file) {
  // Names that are not valid UTF-8 are written with the replacement sign rather than refused.
  return write_file_atomically(
      file, layout_to_json(layout).dump(2, ' ', false, json::error_handler_t::replace) + "\n");
}

}  // namespace wrapgauge
