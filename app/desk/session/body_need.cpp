#include "app/desk/session/body_need.hpp"

#include "app/job/job.hpp"
#include "model/body/mend.hpp"

namespace wrapgauge {
namespace {

bool can_be_read(const Plan& plan, const BodyFile& file) {
  Plan tried;
  tried.folder = plan.folder;
  tried.body = file;
  return read_body(tried).ok();
}

}  // namespace

// What is quick to try comes first.
BodyNeed body_need(const Plan& plan) {
  const auto* file = std::get_if<BodyFile>(&plan.body);
  if (!file) return BodyNeed::kOtherMeasures;
  BodyFile tried = *file;
  tried.unit.reset();
  if (file->unit && can_be_read(plan, tried)) return BodyNeed::kOtherUnit;
  tried = *file;
  const bool mended = !file->mend.empty();
  tried.mend = mended ? std::vector<MendStep>{} : usual_steps();
  if (can_be_read(plan, tried)) return mended ? BodyNeed::kOtherMending : BodyNeed::kMending;
  return BodyNeed::kOtherFile;
}

}  // namespace wrapgauge
