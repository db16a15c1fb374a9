#include <algorithm>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/core/version.hpp"
#include "model/study/spread_report.hpp"

namespace wrapgauge {
namespace {

using Json = nlohmann::ordered_json;

Json band_json(const FigureBand& band) {
  return {{"nominal", band.nominal}, {"p5", band.low}, {"median", band.median}, {"p95", band.high}};
}

Json bands_json(const std::vector<FigureBand>& bands, const std::vector<FigureName>& names) {
  Json json = Json::object();
  for (std::size_t f = 0; f < bands.size(); ++f) json[names[f].key] = band_json(bands[f]);
  return json;
}

Json inputs_json(const Spread& spread) {
  Json list = Json::array();
  for (const UncertainInput& input : spread.inputs)
    list.push_back({{"input", input.name},
                    {"unit", input.unit},
                    {"low", input.low},
                    {"high", input.high},
                    {"scale", input.logarithmic ? "log" : "even"},
                    {"source", input.source},
                    {"status", input.status},
                    {"remark", input.remark}});
  return list;
}

Json influence_json(const Spread& spread, const FigureInfluence& influence) {
  Json json{{"where", influence.where.empty() ? Json() : Json(influence.where)},
            {"figure", influence.figure},
            {"explained", influence.ranking.explained},
            {"inputs", Json::array()}};
  for (const Influence& input : influence.ranking.inputs)
    json["inputs"].push_back({{"input", spread.inputs[static_cast<std::size_t>(input.input)].name},
                              {"rank_regression", input.regression},
                              {"rank_correlation", input.correlation}});
  return json;
}

std::vector<FigureBand> bands_from(JsonObject& parent, const char* key,
                                   const std::vector<FigureName>& names) {
  std::vector<FigureBand> bands;
  const nlohmann::json& value = parent.value(key);
  if (parent.failed()) return bands;
  JsonObject object(value, parent.place(key));
  for (const FigureName& name : names) {
    const nlohmann::json& figure = object.value(name.key);
    if (object.failed()) break;
    JsonObject band(figure, object.place(name.key));
    const NumberRange any{-1e12, 1e12, ""};
    bands.push_back({band.number("p5", any), band.number("median", any), band.number("p95", any),
                     band.number("nominal", any)});
    if (auto problem = band.finish()) object.fail(std::move(*problem));
  }
  if (auto problem = object.finish()) parent.fail(std::move(*problem));
  return bands;
}

void read_chambers(JsonObject& object, Spread& spread) {
  for (const nlohmann::json& value : object.list("chambers")) {
    JsonObject item(value, object.place("chambers"));
    ChamberBands bands{item.text("chamber"), bands_from(item, "figures", chamber_figure_names())};
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
    spread.chambers.push_back(std::move(bands));
  }
}

void read_failed(JsonObject& object, Spread& spread) {
  for (const nlohmann::json& value : object.list("failed")) {
    JsonObject item(value, object.place("failed"));
    spread.failed.push_back({item.text("run"), item.text("sentence")});
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
  }
}

void read_inputs(JsonObject& object, Spread& spread) {
  for (const nlohmann::json& value : object.list("inputs")) {
    UncertainInput input;
    if (value.is_object() && value.contains("input") && value["input"].is_string())
      input.name = value["input"].get<std::string>();
    else
      return object.fail(Phrase::worded("inputs: each needs the name of its input."));
    spread.inputs.push_back(std::move(input));
  }
}

void read_influences(JsonObject& object, Spread& spread) {
  const auto column = [&](const std::string& name) {
    const auto at = std::find_if(spread.inputs.begin(), spread.inputs.end(),
                                 [&](const UncertainInput& input) { return input.name == name; });
    return at == spread.inputs.end() ? -1 : static_cast<int>(at - spread.inputs.begin());
  };
  for (const nlohmann::json& value : object.list("influences")) {
    JsonObject item(value, object.place("influences"));
    const nlohmann::json& where = item.value("where");
    FigureInfluence influence{where.is_string() ? where.get<std::string>() : "", item.text("figure"), {}};
    influence.ranking.explained = item.number("explained", {-1e-6, 1.0 + 1e-6, ""});
    for (const nlohmann::json& entry : item.list("inputs")) {
      JsonObject one(entry, item.place("inputs"));
      influence.ranking.inputs.push_back({column(one.text("input")),
                                          one.number("rank_correlation", {-1.001, 1.001, ""}),
                                          one.number("rank_regression", {-1e3, 1e3, ""})});
      if (influence.ranking.inputs.back().input < 0)
        one.fail(Phrase::worded("input is none of the list of inputs."));
      if (auto problem = one.finish()) item.fail(std::move(*problem));
    }
    if (auto problem = item.finish()) return object.fail(std::move(*problem));
    spread.influences.push_back(std::move(influence));
  }
}

}  // namespace

std::string spread_json(const Spread& spread) {
  Json json;
  json["wrapgauge-spread-result"] = 1;
  json["program"] = std::string(program_version());
  json["plan"] = spread.plan;
  json["inputs_hash"] = spread.inputs_hash;
  json["limits_override"] = spread.limits_override ? Json(*spread.limits_override) : Json();
  json["seed"] = spread.seed;
  json["runs"] = spread.runs;
  json["failed"] = Json::array();
  for (const FailedRun& run : spread.failed)
    json["failed"].push_back({{"run", run.run}, {"sentence", run.sentence}});
  json["preview_edge_mm"] = spread.preview_edge / mm;
  json["fine_edge_mm"] = spread.fine_edge / mm;
  json["limit_factor"] = spread.limit_factor;
  json["whole"] = bands_json(spread.whole, whole_figure_names());
  json["chambers"] = Json::array();
  for (const ChamberBands& chamber : spread.chambers)
    json["chambers"].push_back(
        {{"chamber", chamber.chamber}, {"figures", bands_json(chamber.figures, chamber_figure_names())}});
  json["inputs"] = inputs_json(spread);
  json["influences"] = Json::array();
  for (const FigureInfluence& influence : spread.influences)
    json["influences"].push_back(influence_json(spread, influence));
  return json.dump(1, ' ', false, Json::error_handler_t::replace) + "\n";
}

Result<Spread> read_spread(const std::filesystem::path& file, const std::string& inputs_hash) {
  const auto parsed = read_json(file);
  if (!parsed) return parsed.problem();
  JsonObject object(*parsed, file.filename().string());
  object.format_one("wrapgauge-spread-result");
  Spread spread;
  const std::string program = object.text("program");
  spread.plan = object.text("plan");
  spread.inputs_hash = object.text("inputs_hash");
  if (!object.failed() && (program != program_version() || spread.inputs_hash != inputs_hash))
    object.fail(
        Phrase::worded("was made from other inputs or by another version of the program, so it is stale; run "
                       "wrapgauge spread again."));
  const nlohmann::json& reason = object.value("limits_override");
  if (reason.is_string()) spread.limits_override = reason.get<std::string>();
  spread.seed = static_cast<std::uint64_t>(object.number("seed", {0.0, 1e9, ""}));
  spread.runs = object.whole_number_or("runs", 0, 1, 100000);
  read_failed(object, spread);
  spread.preview_edge = object.number("preview_edge_mm", {0.1, 100.0, "mm"}) * mm;
  spread.fine_edge = object.number("fine_edge_mm", {0.1, 100.0, "mm"}) * mm;
  spread.limit_factor = object.number("limit_factor", {1.0, 1e6, ""});
  spread.whole = bands_from(object, "whole", whole_figure_names());
  read_chambers(object, spread);
  read_inputs(object, spread);
  read_influences(object, spread);
  if (auto problem = object.finish()) return *problem;
  return spread;
}

}  // namespace wrapgauge
