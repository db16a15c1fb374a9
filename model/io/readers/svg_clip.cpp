#include "model/io/readers/svg_clip.hpp"

#include <algorithm>

#include "model/geometry/polygon_checks.hpp"

namespace wrapgauge {
namespace {

// "c1" of "url(#c1)"; none for anything else.
std::optional<std::string> link_of(std::string_view text) {
  if (!text.starts_with("url(") || text.find(')') == text.npos) return std::nullopt;
  std::string link = svg_trimmed(text.substr(4, text.find(')') - 4));
  std::erase_if(link, [](char c) { return c == '"' || c == '\''; });
  return link.starts_with("#") ? std::optional(link.substr(1)) : std::nullopt;
}

bool names_nothing(const std::string& text) {
  return text.empty() || text == "none" || text == "inherit" || text == "initial" || text == "unset";
}

// Adds one shape of a clip path; false: it cannot be said what it lets through.
bool add_loops(pugi::xml_node child, const SvgStyleSheet& sheet, const Geom::Affine& to_m,
               const SvgViewport& viewport, SvgClip& clip) {
  const SvgStyle style = svg_style_of(child, sheet, {});
  if (!style.display || !style.visible) return true;
  std::string why;
  const auto transform = svg_own_transform(child, style, why);
  if (!transform || !is_svg_shape(svg_local_name(child.name()))) return false;
  if (!names_nothing(svg_own(child, style, "clip-path"))) return false;
  DrawnShape shape;
  shape.kind = svg_local_name(child.name());
  trace_svg_shape(child, style, *transform * to_m, viewport, shape);
  if (!shape.fault.empty() || shape.paths.size() != 1 || shape.paths[0].points_m.size() < 3) return false;
  clip.loops_m.push_back(std::move(shape.paths[0].points_m));
  return true;
}

SvgClip read_clip(pugi::xml_node target, const std::string& name, const SvgStyleSheet& sheet,
                  const Geom::Affine& to_m, const SvgViewport& viewport) {
  SvgClip clip{"the clip path '" + name + "'", {}, false};
  const SvgStyle style = svg_style_of(target, sheet, {});
  std::string why;
  const auto transform = svg_own_transform(target, style, why);
  clip.whole = transform && svg_local_name(target.name()) == "clipPath" &&
               std::string_view(target.attribute("clipPathUnits").value()) != "objectBoundingBox" &&
               names_nothing(svg_own(target, style, "clip-path"));
  for (const pugi::xml_node child : target.children())
    if (clip.whole && child.type() == pugi::node_element && is_svg_name(child.name()))
      clip.whole = add_loops(child, sheet, *transform * to_m, viewport, clip);
  return clip;
}

bool lies_in(const Polyline& path, const Polygon& loop) {
  return std::all_of(path.begin(), path.end(), [&](const Vec2& p) {
    return contains(loop, p) || distance_to_loop_m(loop, p) < 1e-7;  // on its line: nothing is cut
  });
}

// A path whose points all lie in a loop may still leave it between two of them, where the loop is hollow.
bool leaves(const Polyline& path, const Polygon& loop) {
  return std::any_of(loop.begin(), loop.end(), [&](const Vec2& corner) {
    return path.size() > 2 && contains(path, corner) && distance_to_loop_m(path, corner) > 1e-7;
  });
}

}  // namespace

std::size_t SvgClip::points() const {
  std::size_t sum = 0;
  for (const Polygon& loop : loops_m) sum += loop.size();
  return sum;
}

SvgClips svg_clips_of(pugi::xml_node node, const SvgStyle& style, const SvgDocument& document,
                      const SvgStyleSheet& sheet, const Geom::Affine& to_m, const SvgViewport& viewport) {
  SvgClips clips;
  const std::string clip = svg_own(node, style, "clip-path"), mask = svg_own(node, style, "mask");
  if (const auto link = link_of(clip)) {
    if (const pugi::xml_node target = document.find(*link))
      clips.push_back(std::make_shared<SvgClip>(read_clip(target, *link, sheet, to_m, viewport)));
  } else if (!names_nothing(clip)) {
    clips.push_back(std::make_shared<SvgClip>(SvgClip{"clip-path '" + clip + "'", {}, false}));
  }
  if (const auto link = link_of(mask); link && document.find(*link))
    clips.push_back(std::make_shared<SvgClip>(SvgClip{"the mask '" + *link + "'", {}, false}));
  return clips;
}

std::shared_ptr<const SvgClip> svg_page_clip(pugi::xml_node node, const SvgStyle& style,
                                             const Geom::Rect& frame, const Geom::Affine& to_m) {
  const std::string overflow = svg_own(node, style, "overflow");
  if (overflow == "visible" || overflow == "auto") return nullptr;
  Polygon corners;
  for (unsigned k = 0; k < 4; ++k) {
    const Geom::Point corner = frame.corner(k) * to_m;
    corners.emplace_back(corner.x(), corner.y());
  }
  const std::string id = svg_trimmed(node.attribute("id").value());
  return std::make_shared<SvgClip>(
      SvgClip{"the frame of the inner page" + (id.empty() ? "" : " '" + id + "'"), {corners}, true});
}

SvgSeen seen_through(const SvgClip& clip, const DrawnShape& shape) {
  if (!clip.whole || shape.paths.empty()) return SvgSeen::kInPart;
  bool nothing = true, all = true;
  for (const DrawnPath& path : shape.paths) {
    all = all && std::any_of(clip.loops_m.begin(), clip.loops_m.end(), [&](const Polygon& loop) {
            return lies_in(path.points_m, loop) && !leaves(path.points_m, loop);
          });
    const Bounds2 box = bounds(path.points_m);
    for (const Polygon& loop : clip.loops_m) {
      const Bounds2 window = bounds(loop);
      nothing = nothing && ((box.low.array() > window.high.array()).any() ||
                            (box.high.array() < window.low.array()).any());
    }
  }
  return all ? SvgSeen::kWhole : nothing ? SvgSeen::kNothing : SvgSeen::kInPart;
}

}  // namespace wrapgauge
