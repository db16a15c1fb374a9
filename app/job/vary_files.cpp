#include "app/job/vary_files.hpp"

#include <algorithm>

#include "app/picture/picture_program.hpp"
#include "app/picture/variant_pictures.hpp"
#include "model/core/pressure_text.hpp"
#include "model/study/ceiling_report.hpp"

namespace wrapgauge {
namespace {

constexpr const char* kNotADevice =
    "Predicted by an uncalibrated model, on a preview mesh where it says so. Not a medical device.";

QString qt(const std::string& words) {
  return QString::fromStdString(words);
}

// The mesh that the answer was solved on, made anew. Problems: those of laying it out, which were met before.
Result<FlatMesh> mesh_of_variant(const VaryJob& job, std::size_t variant) {
  const auto plan = job.variants.plan(variant);
  if (!plan) return plan.problem();
  const auto inputs = job.inputs(*plan);
  if (!inputs) return inputs.problem();
  const Plan on_mesh = meshed(*plan, job.mesh);
  const auto body = take_body(on_mesh, *inputs->body, *inputs->resources);
  if (!body) return body.problem();
  auto laid_out = lay_out(on_mesh, *body, *inputs->resources, mesh_of_plan(on_mesh));
  if (!laid_out) return laid_out.problem();
  return std::move(laid_out).value().flat;
}

std::string verdict_line(const VariantAnswer& answer) {
  if (answer.failed) return verdict_words(answer);
  std::string words = answer.exit_code == 0   ? "Within the limits as predicted; nearest: "
                      : answer.exit_code == 5 ? "Not to be worn: "
                                              : "Above a limit: ";
  if (!answer.valve.empty()) words.append(answer.valve).append("; nearest place: ");
  words += answer.where;
  if (answer.share > 0.0) words += ", " + percent_text(answer.share);
  return words + "; peak " + pressure_text(answer.figures.whole[0] * kPa);
}

Result<VariantTile> tile_of(const VaryJob& job, const VaryResult& result, std::size_t variant) {
  const VariantAnswer& answer = result.answers[variant];
  VariantTile tile;
  tile.name = qt(result.variants.name(variant));
  tile.verdict = qt(verdict_line(answer));
  tile.reason = qt(answer.failed.value_or(""));
  if (answer.failed) return tile;
  auto flat = mesh_of_variant(job, variant);
  if (!flat) return flat.problem();
  const VariantMap& map = answer.map;
  if (flat->vertices_m.rows() != static_cast<Eigen::Index>(map.contact_pa.size()))
    return bad_input("The runs that are kept are not of this mesh: delete the folder runs and solve again.");
  tile.flat = std::move(flat).value();
  const auto as_vector = [](const std::vector<int>& whole, double unit) {
    return Eigen::VectorXd(
        unit * Eigen::Map<const Eigen::VectorXi>(whole.data(), static_cast<Eigen::Index>(whole.size()))
                   .cast<double>());
  };
  tile.pressure_pa = as_vector(map.contact_pa, 1.0);
  tile.share_of_limit = as_vector(map.share_permille, 1e-3);
  tile.limits_pa = map.limits_pa;
  return tile;
}

// The values of the last change side by side, where they fit.
int columns_of(const Variants& variants) {
  constexpr std::size_t kMost = 4;
  const std::size_t last = variants.changes().back().values.size();
  if (variants.count() <= 2) return static_cast<int>(variants.count());
  if (variants.changes().size() > 1 && last >= 2 && last <= kMost) return static_cast<int>(last);
  return variants.count() <= 6 ? 2 : variants.count() <= 12 ? 3 : static_cast<int>(kMost);
}

QStringList caption_of(const VaryResult& result, const std::string& what, std::size_t shown) {
  QStringList lines{qt(what)};
  if (shown < result.answers.size())
    lines[0] += qt(" Only the first " + std::to_string(shown) + " of " +
                   std::to_string(result.answers.size()) + " variants are drawn.");
  lines[0] += QString(" ") + kNotADevice;
  for (const std::string& words : limits_words(result)) lines << qt(words.substr(0, 200));
  return lines;
}

QString mesh_line(const VaryResult& result) {
  return qt("; " + result.mesh);
}

Result<VariantsPage> variants_page(const VaryJob& job, const VaryResult& result) {
  VariantsPage page;
  page.title = qt(result.plan + ": variants");
  page.subtitle = "Predicted contact pressure on the flat layout, all at one scale, outer sheet towards you" +
                  mesh_line(result);
  page.columns = columns_of(result.variants);
  const std::size_t shown = std::min(kMostTiles, result.answers.size());
  for (std::size_t v = 0; v < shown; ++v) {
    auto tile = tile_of(job, result, v);
    if (!tile) return tile.problem();
    page.tiles.push_back(std::move(tile).value());
    if (!result.answers[v].failed) page.model_factor = result.answers[v].model_factor;
  }
  page.caption =
      caption_of(result,
                 "Line: the mean over 1 cm² × model factor meets the limit of that place; hatched: "
                 "above it. Peak: highest average over 1 cm².",
                 shown);
  return page;
}

CurvesPage curves_page(const VaryResult& result) {
  CurvesPage page;
  page.title = qt(result.plan + ": curves of the chambers");
  page.subtitle = "Every recorded state from closed to what is asked for" + mesh_line(result);
  const std::size_t shown = std::min(kMostCurves, result.answers.size());
  for (std::size_t v = 0; v < shown; ++v)
    page.variants.push_back({qt(result.variants.name(v) + (result.answers[v].failed ? " (no figures)" : "")),
                             result.answers[v].curves});
  page.caption = caption_of(
      result,
      "Mean: contact force over the chamber as drawn. Bulge: greatest distance between the two sheets.",
      shown);
  return page;
}

}  // namespace

Result<ResultPart> make_variant_files(const VaryJob& job, const VaryResult& result) {
  if (auto started = start_picture_program(); !started) return started.problem();
  const auto page = variants_page(job, result);
  if (!page) return page.problem();
  const CurvesPage curves = curves_page(result);
  const auto draw_maps = [&](QPainter& painter) { draw_variants(*page, painter); };
  const auto draw_lines = [&](QPainter& painter) { draw_curves(curves, painter); };
  return part_of("vary", {{"variants.csv", variants_csv(result)},
                          {"variants.json", variants_json(result)},
                          {"variants.md", variants_markdown(result)},
                          {"curves.csv", curves_csv(result)},
                          {"curves.svg", page_svg(size_of(curves), draw_lines)},
                          {"curves.png", page_png(size_of(curves), draw_lines)},
                          {"variants.svg", page_svg(size_of(*page), draw_maps)},
                          {"variants.png", page_png(size_of(*page), draw_maps)}});
}

}  // namespace wrapgauge
