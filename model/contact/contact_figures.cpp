#include <Eigen/Geometry>
#include <algorithm>
#include <array>

#include "model/contact/area_average.hpp"
#include "model/contact/cavity_volume.hpp"
#include "model/contact/contact_map.hpp"
#include "model/contact/girth_share.hpp"
#include "model/contact/skin_side.hpp"

namespace wrapgauge {
namespace {

// Everything the figures of one state are worked out from.
struct Pressed {
  const InflationSetup& setup;
  const FigureInputs& inputs;
  const SheetMesh& sheet;
  const EquilibriumState& state;
  const ContactMap& map;
  TriangleMesh side;
  Eigen::VectorXd areas_m2;
  std::vector<std::optional<ChamberId>> chamber;  // a flat triangle each
  std::vector<PressureSample> samples;
  SheetStress stress;
};

bool is_part_of(const Pressed& pressed, int triangle, ChamberId chamber) {
  return pressed.chamber[static_cast<std::size_t>(triangle)] == chamber;
}

void add_force_and_areas(const Pressed& pressed, ChamberId chamber, ChamberFigures& figures) {
  double force = 0.0, touching = 0.0, whole = 0.0;
  for (int t = 0; t < pressed.side.faces.rows(); ++t) {
    if (!is_part_of(pressed, t, chamber)) continue;
    whole += pressed.areas_m2[t];
    for (int corner = 0; corner < 3; ++corner) {
      const double pressure = pressed.map.on_layout_pa[pressed.side.faces(t, corner)];
      force += pressure * pressed.areas_m2[t] / 3.0;
      if (pressure > 0.0) touching += pressed.areas_m2[t] / 3.0;
    }
  }
  figures.force = Force(force);
  figures.contact_area = Area(touching);
  figures.contact_fraction = whole > 0.0 ? touching / whole : 0.0;
  if (figures.drawn_area.si() > 0.0) figures.mean = figures.force / figures.drawn_area;
}

void add_peak(const Pressed& pressed, ChamberId chamber, ChamberFigures& figures) {
  int at = -1;
  for (int t = 0; t < pressed.side.faces.rows(); ++t) {
    if (!is_part_of(pressed, t, chamber)) continue;
    for (int corner = 0; corner < 3; ++corner) {
      const int v = pressed.side.faces(t, corner);
      if (at < 0 || pressed.map.mean_1cm2_pa[v] > pressed.map.mean_1cm2_pa[at]) at = v;
    }
  }
  if (at < 0) return;
  figures.peak = Pressure(pressed.map.mean_1cm2_pa[at]);
  figures.peak_at_m = pressed.side.vertices_m.row(at);
  figures.peak_at_flat_m = pressed.setup.flat.vertices_m.row(at);
}

Pressure percentile95(const Pressed& pressed, ChamberId chamber) {
  std::vector<std::pair<double, double>> touching;  // pressure, area
  double area = 0.0;
  for (const PressureSample& sample : pressed.samples)
    if (sample.pressure_pa > 0.0 && is_part_of(pressed, sample.triangle, chamber)) {
      touching.emplace_back(sample.pressure_pa, sample.area_m2);
      area += sample.area_m2;
    }
  std::sort(touching.begin(), touching.end());
  double below = 0.0;
  for (const auto& [pressure, share] : touching) {
    below += share;
    if (below >= 0.95 * area) return Pressure(pressure);
  }
  return Pressure(0.0);
}

double elongation_at_break(const FigureInputs& inputs, SheetLayer layer) {
  if (layer == SheetLayer::kSkin) return inputs.skin_elongation_at_break;
  if (layer == SheetLayer::kOuter) return inputs.outer_elongation_at_break;
  return std::min(inputs.skin_elongation_at_break, inputs.outer_elongation_at_break);
}

// A triangle of an open region that has a fused corner lies along a seam or inset seam.
bool touches_seam(const Pressed& pressed, int sheet_triangle) {
  for (int corner = 0; corner < 3; ++corner) {
    const int v = pressed.sheet.flat_vertex[pressed.sheet.triangles(sheet_triangle, corner)];
    if (pressed.sheet.skin_node[v] == pressed.sheet.outer_node[v]) return true;
  }
  return false;
}

void add_stretch(const Pressed& pressed, ChamberId chamber, ChamberFigures& figures) {
  for (int t = 0; t < pressed.sheet.triangles.rows(); ++t) {
    const SheetLayer layer = pressed.sheet.layer[t];
    if (layer == SheetLayer::kStrap || !is_part_of(pressed, pressed.sheet.flat_triangle[t], chamber))
      continue;
    const double stretch = pressed.stress.stretch_max[t];
    const double at_break = elongation_at_break(pressed.inputs, layer);
    figures.stretch_max = std::max(figures.stretch_max, stretch);
    if (at_break > 0.0) figures.share_of_break = std::max(figures.share_of_break, (stretch - 1.0) / at_break);
    if (layer != SheetLayer::kFused && touches_seam(pressed, t))
      figures.seam_tension =
          std::max(figures.seam_tension, LineTension(pressed.stress.tension_max_n_per_m[t]));
  }
}

void add_indentation(const Pressed& pressed, ChamberId chamber, ChamberFigures& figures) {
  for (int t = 0; t < pressed.side.faces.rows(); ++t) {
    if (!is_part_of(pressed, t, chamber)) continue;
    for (int corner = 0; corner < 3; ++corner) {
      const int v = pressed.side.faces(t, corner);
      const double indentation = pressed.state.indentation_m[v];
      figures.indentation_max = std::max(figures.indentation_max, Length(indentation));
      if (v < pressed.inputs.tissue_depth_m.size() && pressed.inputs.tissue_depth_m[v] > 0.0)
        figures.tissue_strain =
            std::max(figures.tissue_strain, indentation / pressed.inputs.tissue_depth_m[v]);
    }
  }
}

ChamberFigures brief_figures(const Pressed& pressed, ChamberId chamber) {
  const Chamber& drawn = pressed.setup.layout.chambers[index_of(chamber)];
  const auto group = static_cast<Eigen::Index>(index_of(pressed.setup.flat.chamber_group[index_of(chamber)]));
  ChamberFigures figures;
  figures.chamber = drawn.name;
  figures.gauge = Pressure(pressed.state.group_pressure_pa[group]);
  figures.drawn_area = Area(std::abs(signed_area_m2(drawn.boundary_m)));
  add_force_and_areas(pressed, chamber, figures);
  add_peak(pressed, chamber, figures);
  add_stretch(pressed, chamber, figures);
  return figures;
}

std::vector<ChamberFigures> brief_figures(const Pressed& pressed, const LoadPath& path) {
  const std::vector<Volume> volumes = chamber_volumes(pressed.setup, path.sheet, pressed.state);
  std::vector<ChamberFigures> all;
  for (std::size_t c = 0; c < volumes.size(); ++c) {
    all.push_back(brief_figures(pressed, ChamberId(static_cast<int>(c))));
    all.back().volume = volumes[c];
  }
  return all;
}

Pressed pressed_of(const InflationSetup& setup, const FigureInputs& inputs, const LoadPath& path,
                   const EquilibriumState& state, const ContactMap& map) {
  Pressed pressed{setup, inputs, path.sheet, state, map, skin_side(setup, path.sheet, state.positions_m),
                  {},    {},     {},         {}};
  pressed.areas_m2 = triangle_areas_m2(pressed.side);
  pressed.chamber = chamber_of_triangles(setup.layout, setup.flat);
  pressed.stress = sheet_stress(setup, path.sheet, state.positions_m);
  return pressed;
}

// The part a flat vertex lies in; where several parts meet, a chamber comes before a strap before a seam.
// A chamber before a strap, a strap before a channel.
Phrase part_at(const Pressed& pressed, int vertex) {
  std::optional<std::string> strap, channel;
  for (int t = 0; t < pressed.side.faces.rows(); ++t) {
    if ((pressed.side.faces.row(t).array() != vertex).all()) continue;
    if (const auto chamber = pressed.chamber[static_cast<std::size_t>(t)])
      return name_of(pressed.setup.layout.chambers[index_of(*chamber)].name);
    const FlatRegion& region = pressed.setup.flat.regions[static_cast<std::size_t>(t)];
    if (region.kind == RegionKind::kStrap) strap = pressed.setup.layout.straps[region.part].name;
    if (region.kind == RegionKind::kChannel && !channel)
      channel = pressed.setup.layout.channels[region.part].name;
  }
  if (strap) return name_of(*strap);
  return channel ? name_of(*channel) : Phrase::worded("seam");
}

void add_peak_anywhere(const Pressed& pressed, ContactFigures& figures) {
  Eigen::Index at = 0;
  if (pressed.map.mean_1cm2_pa.size() == 0) return;
  figures.peak_anywhere = Pressure(pressed.map.mean_1cm2_pa.maxCoeff(&at));
  figures.peak_at_m = pressed.side.vertices_m.row(at);
  figures.peak_part = part_at(pressed, static_cast<int>(at));
}

}  // namespace

std::vector<ChamberFigures> brief_chamber_figures(const InflationSetup& setup, const FigureInputs& inputs,
                                                  const LoadPath& path, const EquilibriumState& state,
                                                  const ContactMap& map) {
  return brief_figures(pressed_of(setup, inputs, path, state, map), path);
}

ContactFigures contact_figures(const Body& body, const InflationSetup& setup, const FigureInputs& inputs,
                               const LoadPath& path, const EquilibriumState& state, const ContactMap& map) {
  Pressed pressed = pressed_of(setup, inputs, path, state, map);
  pressed.samples = pressure_samples(pressed.side, map.on_layout_pa);

  ContactFigures figures;
  figures.chambers = brief_figures(pressed, path);
  for (std::size_t c = 0; c < figures.chambers.size(); ++c) {
    const auto chamber = ChamberId(static_cast<int>(c));
    figures.chambers[c].p95 = percentile95(pressed, chamber);
    add_indentation(pressed, chamber, figures.chambers[c]);
  }
  add_peak_anywhere(pressed, figures);
  figures.share_of_girth = pressed_share_of_girth(body, pressed.samples);
  figures.total_force = Force(map.on_layout_pa.dot(vertex_areas_m2(pressed.side)));
  figures.seams = seam_figures(setup, path.sheet, pressed.stress);
  return figures;
}

}  // namespace wrapgauge
