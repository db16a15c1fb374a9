#include "model/wrap/wrap.hpp"

#include <Eigen/Geometry>

#include "model/core/number_text.hpp"
#include "model/layout/closing_lines.hpp"
#include "model/layout/layout_shapes.hpp"
#include "model/layout/part_words.hpp"
#include "model/wrap/closure_report.hpp"
#include "model/wrap/fit_of.hpp"
#include "model/wrap/worn_map.hpp"
#include "model/wrap/wrap_quality.hpp"

namespace wrapgauge {
namespace {

Phrase mm_figure(double metres) {
  return figures_of(fixed_text(metres / mm.si(), 1));
}

// Laying carries lengths from the anchor on: from a point that lies beyond the sheet it would carry them over
// skin that the device does not touch. The middle of a ring or horseshoe is within it.
std::optional<Problem> off_the_layout(const Layout& layout, const Vec2& point_m) {
  Eigen::AlignedBox2d box;
  for (const Vec2& p : layout.outline_m) box.extend(p);
  for (const Strap& strap : layout.straps)
    for (const Vec2& p : strap.boundary_m) box.extend(p);
  const double off_m = box.isEmpty() ? 0.0 : box.exteriorDistance(point_m);
  if (off_m <= kDrawingTolerance) return std::nullopt;
  return bad_input(
      Phrase::worded("The flat point that lies on the anchor, %1, lies %2 mm off the layout, which reaches "
                     "from x = %3 to %4 "
                     "mm and from y = %5 to %6 mm; give a point of the layout (wear, layout_point_mm).",
                     {at_mm(point_m), mm_figure(off_m), mm_figure(box.min().x()), mm_figure(box.max().x()),
                      mm_figure(box.min().y()), mm_figure(box.max().y())}));
}

Result<Vec2> layout_point(const Layout& layout, const Placement& placement) {
  if (placement.layout_point_m) {
    if (!placement.layout_point_m->allFinite())
      return bad_input(Phrase::worded(
          "The flat point that lies on the anchor has a coordinate that is not a finite number."));
    if (auto problem = off_the_layout(layout, *placement.layout_point_m)) return *problem;
    return *placement.layout_point_m;
  }
  if (layout.outline_m.empty()) return bad_input(Phrase::worded("The layout has no outline."));
  Eigen::AlignedBox2d bounds;
  for (const Vec2& point_m : layout.outline_m) bounds.extend(point_m);
  return Vec2(bounds.center());
}

Result<Wrap> close_round(const BodySurface& body, const AnchorFrame& anchor, const Layout& layout,
                         const FlatMesh& mesh, const Vec2& layout_point_m, Wrap wrap) {
  const ClosingLines lines = closing_lines(mesh);
  for (const int vertex : mesh.closing_from)
    if (const Length length = lines.length_at(mesh.vertices_m(vertex, 1)); !(length.si() > 0.0))
      return bad_input(
          Phrase::worded("The layout's closing length is %1; it must be above 0.", {millimetres_of(length)}));
  const auto section = closed_section(body, anchor.place.point_m, anchor.section_normal);
  if (!section) return section.problem();
  auto put = put_on(body, anchor, mesh, layout_point_m, lines);
  if (!put) return put.problem();
  WornMap worn = std::move(put).value();
  wrap.worn_m = std::move(worn.worn_m);
  const auto report = closure_report(body, anchor, *section, mesh, wrap.laid_m, layout_point_m);
  if (!report) return report.problem();
  wrap.closure = *report;
  const GirthSection at_anchor{Length(body.station_m(anchor.place.point_m)), section->girth(),
                               report->closing_length_used};
  wrap.fit = closing_fit(layout, mesh, lines, std::move(worn.sections), at_anchor,
                         anchor.across_is_proximal(body.axis().direction));
  return wrap;
}

void add_normals(const BodySurface& body, Wrap& wrap) {
  wrap.outward_at_worn.resize(wrap.worn_m.rows(), 3);
  for (int vertex = 0; vertex < wrap.worn_m.rows(); ++vertex)
    wrap.outward_at_worn.row(vertex) = body.outward(body.nearest().at(wrap.worn_m.row(vertex)));
}

bool closes_by_girth(const Layout& layout) {
  return layout.closure && !layout.closure->closing_length;
}

std::optional<Length> given_length(const Layout& layout) {
  return layout.closure ? layout.closure->closing_length : std::nullopt;
}

}  // namespace

Result<std::optional<Length>> resolve_closing_length(const Body& body, const Layout& layout,
                                                     const Placement& placement) {
  if (!closes_by_girth(layout)) return given_length(layout);
  if (body.surface.faces.rows() == 0) return bad_input(Phrase::worded("The body has no faces."));
  return resolve_closing_length(BodySurface(body), layout, placement);
}

Result<std::optional<Length>> resolve_closing_length(const BodySurface& surface, const Layout& layout,
                                                     const Placement& placement) {
  if (!closes_by_girth(layout)) return given_length(layout);
  if (!layout.closure->stretch)
    return bad_input(Phrase::worded("The closure gives neither a closing length nor a stretch."));
  const double stretch = *layout.closure->stretch;
  if (!(stretch > -1.0) || !std::isfinite(stretch))
    return bad_input(Phrase::worded("The closure's stretch is %1; it must be above -1.",
                                    {figures_of(number_text(stretch))}));
  const auto anchor = find_anchor(surface, placement);
  if (!anchor) return anchor.problem();
  const auto section = closed_section(surface, anchor->place.point_m, anchor->section_normal);
  if (!section) return section.problem();
  return std::optional<Length>(section->girth() / (1.0 + stretch));
}

Result<Wrap> wrap_layout(const Body& body, const Layout& layout, const FlatMesh& mesh,
                         const Placement& placement) {
  if (body.surface.faces.rows() == 0) return bad_input(Phrase::worded("The body has no faces."));
  return wrap_layout(BodySurface(body), layout, mesh, placement);
}

Result<Wrap> wrap_layout(const BodySurface& surface, const Layout& layout, const FlatMesh& mesh,
                         const Placement& placement) {
  if (mesh.triangles.rows() == 0) return bad_input(Phrase::worded("The layout has no triangles."));
  const auto flat_point_m = layout_point(layout, placement);
  if (!flat_point_m) return flat_point_m.problem();
  const auto anchor = find_anchor(surface, placement);
  if (!anchor) return anchor.problem();
  auto laid = lay_out(surface, *anchor, mesh.vertices_m, *flat_point_m);
  if (!laid) return laid.problem();
  Wrap wrap;
  wrap.anchor_m = anchor->place.point_m;
  wrap.wrap_direction = anchor->wrap;
  wrap.across_direction = anchor->across;
  wrap.outward = anchor->outward;
  wrap.quality = wrap_quality(layout, mesh, *laid);
  wrap.laid_m = *std::move(laid);
  wrap.worn_m = wrap.laid_m;
  if (!mesh.closing_from.empty() && !mesh.closing_to.empty()) {
    auto closed = close_round(surface, *anchor, layout, mesh, *flat_point_m, std::move(wrap));
    if (!closed) return closed.problem();
    wrap = *std::move(closed);
  } else {
    wrap.fit = open_fit(surface, *anchor, mesh, wrap.laid_m, *flat_point_m);
  }
  add_normals(surface, wrap);
  return wrap;
}

}  // namespace wrapgauge
