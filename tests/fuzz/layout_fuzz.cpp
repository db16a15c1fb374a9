#include <cstdlib>
#include <nlohmann/json.hpp>

#include "model/core/json_object.hpp"
#include "model/layout/layout_check.hpp"
#include "model/layout/layout_json.hpp"

// What is read is checked, written and read again.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wrapgauge;
  const auto json = parse_json({reinterpret_cast<const char*>(data), size}, "x.json");
  if (!json) return 0;
  const auto layout = layout_from_json(*json, "x.json");
  if (!layout && layout.problem().message.empty()) std::abort();
  if (!layout) return 0;
  check_layout(*layout);
  if (!layout_from_json(nlohmann::json::parse(layout_to_json(*layout).dump()), "x.json")) std::abort();
  return 0;
}
