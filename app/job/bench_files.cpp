#include "app/job/bench_files.hpp"

#include <algorithm>
#include <system_error>

#include "app/picture/bench_picture.hpp"
#include "app/picture/map_comparison_picture.hpp"
#include "app/picture/note_pdf.hpp"
#include "app/picture/png.hpp"
#include "model/bench/calibration_file.hpp"
#include "model/bench/fit_report.hpp"
#include "model/core/csv_text.hpp"
#include "model/core/file.hpp"
#include "model/core/number_text.hpp"

namespace wrapgauge {
namespace {

std::string chambers_text(const MapComparison& comparison) {
  std::string text = "chamber,cells,read_kpa,read_mmhg,predicted_kpa,predicted_mmhg\n";
  for (const MapChamber& one : comparison.chambers)
    text += csv_field(one.chamber) + "," + std::to_string(one.cells) + "," + fixed_text(one.read / kPa, 3) +
            "," + fixed_text(one.read / mmHg, 2) + "," + fixed_text(one.predicted / kPa, 3) + "," +
            fixed_text(one.predicted / mmHg, 2) + "\n";
  return text;
}

// As the folder's manifest has it.
bool is_as_written(const std::filesystem::path& folder, const std::string& name, const std::string& bytes) {
  const auto manifest = read_manifest(folder);
  if (!manifest) return false;
  for (const ResultSet& set : manifest->sets)
    for (const ManifestFile& file : set.files)
      if (file.name == name && file.sha256 == sha256_of(bytes)) return true;
  return false;
}

}  // namespace

Result<ResultPart> make_sheet_files(const BenchSheet& sheet, const Plan& plan, const Body& body) {
  return part_of("bench sheet", {{"sheet.pdf", note_pdf(sheet_note(sheet, plan), {})},
                                 {kReadingsName, readings_template(sheet, plan, body)}});
}

Result<ResultPart> make_fit_files(const BenchResult& result, const std::string& plan) {
  const NotePictures pictures = bench_pictures(result);
  return part_of("bench fit", {{kCalibrationName, calibration_json(result)},
                               {"fit.pdf", note_pdf(fit_note(result, plan), pictures)},
                               {"agreement.png", png_bytes(pictures.place)},
                               {"residuals.png", png_bytes(pictures.pressure)},
                               {"fitted.csv", fitted_readings_csv(result)}});
}

Result<ResultPart> make_comparison_files(const Layout& layout, const SensorMap& map,
                                         const MapComparison& comparison) {
  return part_of("bench compare",
                 {{"comparison.png", png_bytes(map_comparison_picture(layout, map, comparison))},
                  {"comparison.csv", chambers_text(comparison)}});
}

Result<std::monostate> leave_readings(const std::filesystem::path& folder) {
  const std::filesystem::path file = folder / kReadingsName;
  std::error_code error;
  if (!std::filesystem::exists(file, error)) return std::monostate{};
  if (const auto bytes = read_file(file); bytes && is_as_written(folder, kReadingsName, *bytes))
    return std::monostate{};
  return bad_input(
      Phrase::worded("'%1' is there already and may hold readings: name another folder, or move it.",
                     {name_of(file.string())}));
}

std::string readings_beside(const std::filesystem::path& folder, const std::filesystem::path& readings) {
  std::error_code error;
  const std::filesystem::path way = std::filesystem::relative(
      std::filesystem::absolute(readings, error), std::filesystem::absolute(folder, error), error);
  return way.empty() ? std::filesystem::absolute(readings, error).generic_string() : way.generic_string();
}

}  // namespace wrapgauge
