#include <cstdlib>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

// What is read is written and read again. Files that a plan names lie beside the demo's plans.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wrapgauge;
  const std::filesystem::path folder = WRAPGAUGE_SOURCE_DIR "/resources/plans";
  const auto json = parse_json({reinterpret_cast<const char*>(data), size}, "x.json");
  if (!json) return 0;
  const auto plan = plan_from_json(*json, folder, "x.json");
  if (!plan && plan.problem().message.empty()) std::abort();
  if (!plan) return 0;
  const auto written = nlohmann::json::parse(plan_to_json(*plan).dump());
  if (!plan_from_json(written, folder, "x.json")) std::abort();
  return 0;
}
