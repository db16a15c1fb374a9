#include "model/io/writers/csv_writer.hpp"

#include "model/core/csv_text.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

std::string line(const ChamberFigures& chamber) {
  std::string text = csv_field(chamber.chamber);
  const auto add = [&](double value, int decimals) {
    text += ',';
    text += fixed_text(value, decimals);
  };
  add(chamber.gauge / kPa, 3);
  add(chamber.gauge / mmHg, 1);
  add(chamber.volume / mL, 2);
  add(chamber.mean / kPa, 3);
  add(chamber.mean / mmHg, 1);
  add(chamber.peak / kPa, 3);
  add(chamber.peak / mmHg, 1);
  add(chamber.p95 / kPa, 3);
  add(chamber.p95 / mmHg, 1);
  add(chamber.drawn_area / cm2, 3);
  add(chamber.contact_area / cm2, 3);
  add(chamber.contact_fraction, 3);
  add(chamber.force / newton, 3);
  add(chamber.stretch_max, 4);
  add(chamber.share_of_break, 4);
  add(chamber.seam_tension / N_per_mm, 4);
  add(chamber.indentation_max / mm, 3);
  add(chamber.tissue_strain, 4);
  return text;
}

}  // namespace

std::string chambers_csv(const ContactFigures& figures, const std::vector<std::string>& not_the_programs) {
  std::string text =
      "chamber,gauge_kPa,gauge_mmHg,volume_mL,mean_kPa,mean_mmHg,peak_1cm2_kPa,peak_1cm2_mmHg,p95_kPa,p95_"
      "mmHg,"
      "drawn_area_cm2,contact_area_cm2,contact_fraction,force_N,stretch_max,share_of_elongation_at_break,"
      "seam_tension_N_per_mm,indentation_max_mm,tissue_strain";
  std::string words;
  for (const std::string& one : not_the_programs) words += (words.empty() ? "" : " ") + one;
  text += words.empty() ? "\n" : ",not_the_programs_own\n";
  for (const ChamberFigures& chamber : figures.chambers) {
    text += line(chamber);
    if (!words.empty()) (text += ',') += csv_field(words);
    text += '\n';
  }
  return text;
}

}  // namespace wrapgauge
