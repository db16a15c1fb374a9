#include "model/study/run_figures.hpp"

namespace wrapgauge {

const std::vector<FigureName>& chamber_figure_names() {
  static const std::vector<FigureName> names = {
      {"gauge_kPa", "pressure inside", "kPa", 1},
      {"volume_mL", "volume", "mL", 1},
      {"mean_kPa", "mean contact pressure", "kPa", 1},
      {"peak_1cm2_kPa", "peak over 1 cm2", "kPa", 1},
      {"p95_kPa", "95th percentile of touching skin", "kPa", 1},
      {"contact_area_cm2", "contact area", "cm2", 1},
      {"contact_fraction", "share that touches", "", 2},
      {"force_N", "force", "N", 1},
      {"stretch_max", "largest stretch", "", 2},
      {"share_of_elongation_at_break", "share of elongation at break", "", 3},
      {"seam_tension_N_per_mm", "seam tension", "N/mm", 3},
      {"indentation_max_mm", "largest indentation", "mm", 1},
      {"tissue_strain", "tissue strain", "", 3},
  };
  return names;
}

const std::vector<FigureName>& whole_figure_names() {
  static const std::vector<FigureName> names = {
      {"peak_1cm2_kPa", "peak over 1 cm2 anywhere", "kPa", 1},
      {"share_of_girth", "share of a girth pressed", "", 2},
      {"total_force_N", "total force", "N", 0},
      {"share_of_limit", "highest share of a limit, after the model factor", "", 2},
  };
  return names;
}

RunFigures run_figures(const StateReading& reading) {
  RunFigures out;
  for (const ChamberFigures& c : reading.figures.chambers)
    out.chambers.push_back({c.gauge / kPa, c.volume / mL, c.mean / kPa, c.peak / kPa, c.p95 / kPa,
                            c.contact_area / cm2, c.contact_fraction, c.force / newton, c.stretch_max,
                            c.share_of_break, c.seam_tension / N_per_mm, c.indentation_max / mm,
                            c.tissue_strain});
  out.whole = {reading.figures.peak_anywhere / kPa, reading.figures.share_of_girth,
               reading.figures.total_force / newton, reading.nearest.share};
  return out;
}

}  // namespace wrapgauge
