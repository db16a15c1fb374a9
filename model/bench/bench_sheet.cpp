#include "model/bench/bench_sheet.hpp"

#include <algorithm>
#include <cmath>

#include "model/bench/calibrate.hpp"
#include "model/core/number_text.hpp"
#include "model/geometry/polygon.hpp"
#include "model/pipeline/prepare.hpp"

namespace wrapgauge {
namespace {

using F = ReadingField;

// Two digits are enough to set a gauge or a syringe to.
double two_digits(double value) {
  if (!(value > 0.0)) return value;
  const double size = std::pow(10.0, std::floor(std::log10(value)) - 1.0);
  return std::round(value / size) * size;
}

class RowMaker {
 public:
  Reading& add(ReadingKind kind, const std::string& where,
               const std::vector<std::pair<ReadingField, double>>& values) {
    Reading row;
    row.kind = kind;
    row.where = where;
    row.id = std::string(kind_name(kind)) + " " + std::to_string(++numbers_[static_cast<std::size_t>(kind)]);
    for (const auto& [field, si] : values) row.si[static_cast<std::size_t>(field)] = si;
    rows_.push_back(std::move(row));
    return rows_.back();
  }
  std::vector<Reading>& rows() { return rows_; }

 private:
  std::vector<Reading> rows_;
  std::array<int, kReadingKinds> numbers_{};
};

void add_strips(const Layout& layout, RowMaker& rows) {
  for (const SheetSide side : {SheetSide::kSkin, SheetSide::kOuter})
    for (const double stretch : {1.2, 1.5, 2.0}) {
      const Sheet& sheet = side == SheetSide::kSkin ? layout.skin_sheet : layout.outer_sheet;
      rows.add(ReadingKind::kStrip, "",
               {{F::kWidth, 0.010},
                {F::kThickness, sheet.thickness.si()},
                {F::kLength, 0.050},
                {F::kStretched, 0.050 * stretch}})
          .sheet = side;
    }
}

// Shares of the drawn size, area^1.5, at which chambers are filled well enough for a gauge to tell, and far
// from their limit point.
constexpr std::array kFillShares = {0.10, 0.16, 0.22, 0.28};

void add_fills(const Layout& layout, const FlatMesh& flat, RowMaker& rows) {
  for (std::size_t g = 0; g < flat.group_inlet.size(); ++g) {
    double size_m3 = 0.0;
    for (std::size_t c = 0; c < layout.chambers.size(); ++c)
      if (index_of(flat.chamber_group[c]) == g)
        size_m3 += std::pow(std::abs(signed_area_m2(layout.chambers[c].boundary_m)), 1.5);
    for (const double share : kFillShares)
      rows.add(ReadingKind::kFill, layout.inlets[index_of(flat.group_inlet[g])].name,
               {{F::kFilled, two_digits(share * size_m3 * 1e6) * 1e-6}});
  }
}

// The plan's highest pressure at an inlet; 2 kPa where it fills by volume.
double plan_gauge_pa(const Plan& plan) {
  double highest = 0.0;
  for (const InletProgram& program : plan.inflation)
    if (const auto* pressure = std::get_if<Pressure>(&program.target))
      highest = std::max(highest, pressure->si());
  return highest > 0.0 ? highest : 2000.0;
}

void add_plates(const Plan& plan, RowMaker& rows) {
  const Layout& layout = plan.layout;
  const double empty_mm = (layout.skin_sheet.thickness + layout.outer_sheet.thickness) / mm;
  const double gap_m = 1e-3 * std::round(empty_mm + 8.0);
  for (const Chamber& chamber : layout.chambers)
    for (const double share : {0.5, 1.0})
      rows.add(ReadingKind::kPlate, chamber.name,
               {{F::kGauge, two_digits(share * plan_gauge_pa(plan))}, {F::kGap, gap_m}});
}

void add_contact(const Plan& plan, RowMaker& rows) {
  for (const Chamber& chamber : plan.layout.chambers)
    for (const double share : {0.35, 0.7, 1.0})
      rows.add(ReadingKind::kContact, chamber.name,
               {{F::kGauge, two_digits(share * plan_gauge_pa(plan))},
                {F::kSensorArea, 1e-4},
                {F::kSensorThickness, 2e-4}})
          .all_inlets = true;
}

void add_closure(std::optional<Length> closing, RowMaker& rows) {
  if (!closing) return;
  for (const double share : {0.99, 0.97, 0.95})
    rows.add(ReadingKind::kClosure, "", {{F::kFastened, 1e-3 * std::round(share * (*closing / mm))}});
}

// Bulges at gauges that the fills say are reached.
void add_bulges(const Layout& layout, const FlatMesh& flat, const std::vector<Reading>& fills,
                const std::vector<std::optional<double>>& gauges, RowMaker& rows) {
  for (std::size_t c = 0; c < layout.chambers.size(); ++c) {
    const std::string& inlet =
        layout.inlets[index_of(flat.group_inlet[index_of(flat.chamber_group[c])])].name;
    std::vector<double> reached;
    for (std::size_t k = 0; k < fills.size(); ++k)
      if (fills[k].where == inlet && gauges[k]) reached.push_back(*gauges[k]);
    if (reached.size() < 3) continue;
    for (const std::size_t k : {std::size_t{0}, reached.size() - 2})
      rows.add(ReadingKind::kBulge, layout.chambers[c].name, {{F::kGauge, two_digits(reached[k])}});
  }
}

// Predictions of the rows of one kind; what stands in the way otherwise.
std::optional<Problem> predict_kind(const BenchJob& job, ReadingKind kind, BenchSheet& sheet,
                                    Progress& progress) {
  std::vector<Reading> of_kind;
  std::vector<std::size_t> at;
  for (std::size_t k = 0; k < sheet.rows.size(); ++k)
    if (sheet.rows[k].kind == kind) of_kind.push_back(sheet.rows[k]), at.push_back(k);
  if (of_kind.empty()) return std::nullopt;
  const auto model = BenchModel::make(job, of_kind, progress);
  if (!model && is_no_answer(model.problem().kind)) return model.problem();
  if (!model) {
    sheet.left_out.push_back("Readings of kind " + std::string(kind_name(kind)) +
                             " are left out: " + model.problem().message);
    std::erase_if(sheet.rows, [&](const Reading& row) { return row.kind == kind; });
    sheet.predicted.resize(sheet.rows.size());
    return std::nullopt;
  }
  for (std::size_t k = 0; k < at.size(); ++k) sheet.predicted[at[k]] = model->nominal()[k];
  return std::nullopt;
}

std::optional<Problem> add_and_predict_bulges(const BenchJob& job, const FlatMesh& flat, RowMaker& rows,
                                              BenchSheet& sheet, Progress& progress) {
  std::vector<Reading> fills;
  std::vector<std::optional<double>> gauges;
  for (std::size_t k = 0; k < sheet.rows.size(); ++k)
    if (sheet.rows[k].kind == ReadingKind::kFill)
      fills.push_back(sheet.rows[k]), gauges.push_back(sheet.predicted[k]);
  const std::size_t before = rows.rows().size();
  add_bulges(job.plan.layout, flat, fills, gauges, rows);
  sheet.rows.insert(sheet.rows.end(), rows.rows().begin() + static_cast<std::ptrdiff_t>(before),
                    rows.rows().end());
  sheet.predicted.resize(sheet.rows.size());
  return predict_kind(job, ReadingKind::kBulge, sheet, progress);
}

}  // namespace

Result<BenchSheet> bench_sheet(const BenchJob& asked, Progress& progress) {
  Resources bare = asked.resources;
  bare.limits.calibration.reset();
  const BenchJob job{asked.plan, asked.body, bare, asked.preview_edge, asked.finest_edge};
  const auto prepared = prepare(job.plan, job.body, job.resources, mesh_of_plan(job.plan));
  if (!prepared) return prepared.problem();
  const FlatMesh& flat = prepared->setup.flat;
  RowMaker rows;
  add_strips(job.plan.layout, rows);
  add_fills(job.plan.layout, flat, rows);
  add_plates(job.plan, rows);
  add_closure(prepared->closing_length, rows);
  for (int repeat = 0; repeat < 3; ++repeat) rows.add(ReadingKind::kPeel, "", {{F::kWidth, 0.010}});
  add_contact(job.plan, rows);
  auto materials = materials_hash(job.plan, job.body, job.resources);
  if (!materials) return materials.problem();
  BenchSheet sheet{rows.rows(), {}, {}, std::move(materials).value()};
  sheet.predicted.resize(sheet.rows.size());
  for (const ReadingKind kind : {ReadingKind::kStrip, ReadingKind::kFill, ReadingKind::kPlate,
                                 ReadingKind::kClosure, ReadingKind::kContact})
    if (auto problem = predict_kind(job, kind, sheet, progress)) return *problem;
  if (auto problem = add_and_predict_bulges(job, flat, rows, sheet, progress)) return *problem;
  return sheet;
}

}  // namespace wrapgauge
