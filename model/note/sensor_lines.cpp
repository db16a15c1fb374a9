#include <algorithm>

#include "model/note/note_figures.hpp"
#include "model/note/note_sections.hpp"

namespace wrapgauge {
namespace {

// Of the pressure findings at a place the lowest limit; none: no finding says which row holds there.
std::optional<Pressure> limit_found(const Summary& summary, const std::string& where) {
  std::optional<Pressure> lowest;
  for (const Finding& finding : summary.findings) {
    if (!finding.measured || finding.measured->amount != Amount::kPressure || finding.where != where)
      continue;
    const Pressure limit(finding.measured->limit);
    if (!lowest || limit < *lowest) lowest = limit;
  }
  return lowest;
}

Pressure strictest_row(const Summary& summary) {
  Pressure lowest;
  for (const LimitRow& row : summary.rows_in_use)
    if (lowest == Pressure() || row.limit < lowest) lowest = row.limit;
  return lowest;
}

// Whether it is held against a row of the places that are pressed: the rules of a tourniquet or of rest are
// about the whole device, and no sensor lies under that.
bool is_of_a_row(const Summary& summary, const Finding& finding) {
  if (!finding.measured || finding.measured->amount != Amount::kPressure) return false;
  return std::any_of(summary.rows_in_use.begin(), summary.rows_in_use.end(), [&](const LimitRow& row) {
    return finding.source_key == std::string(site_name(row.site)) + ", " + std::string(use_name(row.use));
  });
}

SensorLine line_at(const std::string& place, Pressure predicted, Pressure limit) {
  return {place, predicted, limit, limit > Pressure() ? std::min(limit, predicted) : predicted};
}

}  // namespace

std::vector<SensorLine> sensor_lines(const Summary& summary) {
  std::vector<SensorLine> lines;
  const Pressure strictest = strictest_row(summary);
  for (const ChamberFigures& chamber : summary.figures.chambers)
    lines.push_back(
        line_at(chamber.chamber, chamber.peak, limit_found(summary, chamber.chamber).value_or(strictest)));
  for (const Finding& finding : summary.findings) {
    const bool of_chamber =
        std::any_of(summary.figures.chambers.begin(), summary.figures.chambers.end(),
                    [&](const ChamberFigures& chamber) { return chamber.chamber == finding.where; });
    if (of_chamber || !is_of_a_row(summary, finding)) continue;
    lines.push_back(line_at(place_text(finding), Pressure(finding.measured->predicted),
                            Pressure(finding.measured->limit)));
  }
  return lines;
}

}  // namespace wrapgauge
