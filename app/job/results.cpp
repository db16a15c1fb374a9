#include "app/job/results.hpp"

#include <string_view>

#include "app/picture/body_picture.hpp"
#include "app/picture/flat_picture.hpp"
#include "app/picture/png.hpp"
#include "model/contact/skin_side.hpp"
#include "model/core/clean_text.hpp"
#include "model/io/writers/csv_writer.hpp"
#include "model/io/writers/summary_json.hpp"
#include "model/io/writers/vtp_writer.hpp"
#include "model/note/verdict.hpp"

namespace wrapgauge {
namespace {

// A comment after the first line of the file, where no dash may follow a dash.
Result<std::string> with_differences(const Summary& summary, Result<std::string> file) {
  std::string words;
  for (const std::string& one : not_the_programs_own(summary)) words += (words.empty() ? "" : " ") + one;
  if (!file || words.empty()) return file;
  std::string bytes = std::move(file).value();
  words = clean_text(words);
  for (std::size_t at = 0; (at = words.find("--", at)) != std::string::npos;) words.replace(at, 2, "- -");
  return bytes.insert(bytes.find('\n') + 1, "<!-- " + words + " -->\n");
}

Result<std::string> body_surface(const Estimate& estimate) {
  const SkinMap map = skin_map(estimate.body, estimate.setup, estimate.path, estimate.path.states.back());
  return vtp_bytes(map.skin, {{"contact_kPa", map.pressure_pa / 1e3}});
}

// Zeros when the plan gives no session.
Eigen::VectorXd exposure_kpa_min(const Estimate& estimate) {
  if (estimate.exposure) return estimate.exposure->product_pa_s / kPa_min.si();
  return Eigen::VectorXd::Zero(estimate.setup.flat.vertices_m.rows());
}

Result<std::string> layout_surface(const Estimate& estimate) {
  const FlatMesh& flat = estimate.setup.flat;
  const EquilibriumState& last = estimate.path.states.back();
  TriangleMesh drawn{Points3::Zero(flat.vertices_m.rows(), 3), flat.triangles};
  drawn.vertices_m.leftCols<2>() = flat.vertices_m;
  const Eigen::VectorXd limit_pa = limit_on_layout_pa(estimate.limits, estimate.limit_inputs, estimate.setup,
                                                      last, estimate.path.sheet, estimate.figures);
  Points3 outer(flat.vertices_m.rows(), 3);
  for (Eigen::Index v = 0; v < outer.rows(); ++v)
    outer.row(v) = 1e3 * last.positions_m.row(estimate.path.sheet.outer_node[v]);
  Eigen::VectorXi chamber(flat.triangles.rows());
  const auto chambers = chamber_of_triangles(estimate.setup.layout, flat);
  for (Eigen::Index t = 0; t < chamber.size(); ++t)
    chamber[t] = chambers[t] ? static_cast<int>(index_of(*chambers[t])) + 1 : 0;
  const Points3 skin = 1e3 * skin_side(estimate.setup, estimate.path.sheet, last.positions_m).vertices_m;
  return vtp_bytes(drawn,
                   {{"contact_kPa", estimate.map.on_layout_pa / 1e3},
                    {"mean_1cm2_kPa", estimate.map.mean_1cm2_pa / 1e3},
                    {"limit_kPa", limit_pa / 1e3},
                    {"exposure_kPa_min", exposure_kpa_min(estimate)},
                    {"indentation_mm", last.indentation_m * 1e3},
                    {"worn_skin_side_mm", skin},
                    {"worn_outer_side_mm", outer}},
                   {{"chamber", chamber}});
}

}  // namespace

Result<ResultPart> make_results(const Estimate& estimate, const Summary& summary) {
  const QString title = QString::fromStdString(summary.plan);
  return part_of("estimate", {{"summary.json", summary_json(summary)},
                              {"summary.md", summary_markdown(summary)},
                              {"chambers.csv", chambers_csv(summary.figures, not_the_programs_own(summary))},
                              {"body.vtp", with_differences(summary, body_surface(estimate))},
                              {"layout.vtp", with_differences(summary, layout_surface(estimate))},
                              {"body.png", png_bytes(body_picture(estimate, title))},
                              {"layout.png", png_bytes(flat_picture(estimate, title))}});
}

Result<std::vector<Phrase>> write_results(const Estimate& estimate, const Summary& summary,
                                          const std::filesystem::path& folder) {
  const auto results = make_results(estimate, summary);
  if (!results) return results.problem();
  ResultOrigin origin{summary.plan, summary.inputs, std::nullopt};
  if (!summary.date.empty()) origin.date = summary.date;
  auto place = ResultFolder::open(folder, std::move(origin));
  if (!place) return place.problem();
  ResultFolder opened = std::move(place).value();
  if (auto written = opened.write({*results}); !written) return written.problem();
  return opened.said();
}

}  // namespace wrapgauge
