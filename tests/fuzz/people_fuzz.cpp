#include "app/job/people_list.hpp"
#include "tests/fuzz/file_harness.hpp"

namespace {

wrapgauge::Plan demo_plan() {
  auto plan = wrapgauge::read_plan(WRAPGAUGE_SOURCE_DIR "/resources/plans/forearm-cuff.json");
  return std::move(plan).value();
}

}  // namespace

// People for the demo's plan: each that is read has an id of its own and a body.
extern "C" int LLVMFuzzerTestOneInput(const unsigned char* data, std::size_t size) {
  using namespace wrapgauge;
  static const Plan plan = demo_plan();
  const auto people = people_of_list(plan, fuzz::as_file(data, size, "x.csv"));
  if (!people) {
    fuzz::require(!people.problem().message.empty());
    return 0;
  }
  for (const PersonTried& person : *people) fuzz::require(!person.id.empty());
  return 0;
}
