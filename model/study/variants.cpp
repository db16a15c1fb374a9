#include "model/study/variants.hpp"

#include <nlohmann/json.hpp>

#include "model/core/in_parallel.hpp"
#include "model/plan/plan_from_json.hpp"
#include "model/plan/plan_to_json.hpp"

namespace wrapgauge {

struct Variants::BasePlan {
  nlohmann::json json;
  std::filesystem::path folder;
};

namespace {

nlohmann::json written_out(Plan plan) {
  plan.layout_file.reset();
  plan.layout_drawing.reset();
  return nlohmann::json(plan_to_json(plan));
}

Result<std::size_t> count_of(const std::vector<PathChange>& changes, VariantOrder order) {
  if (changes.empty())
    return bad_input("nothing is varied: say what with --set, e.g. --set friction=0.3,0.5.");
  std::size_t count = order == VariantOrder::kGrid ? 1 : changes.front().values.size();
  for (const PathChange& change : changes) {
    const std::size_t values = change.values.size();
    if (order == VariantOrder::kAlong && values != count)
      return bad_input("--along needs lists of one length: " + changes.front().path + " has " +
                       std::to_string(count) + " values and " + change.path + " has " +
                       std::to_string(values) + ".");
    // Divided, so that a product beyond any number is seen too.
    if (order == VariantOrder::kGrid && count > std::size_t{1} << 40)
      return bad_input("the grid has more than " + std::to_string(count) + " variants; at most " +
                       std::to_string(kMostVariants) + " are solved: give fewer values.");
    if (order == VariantOrder::kGrid) count *= values;
  }
  if (count > kMostVariants)
    return bad_input("there are " + std::to_string(count) + " variants; at most " +
                     std::to_string(kMostVariants) + " are solved: give fewer values, or --along.");
  return count;
}

std::optional<Problem> same_place_twice(nlohmann::json plan, const std::vector<PathChange>& changes) {
  std::vector<std::string> pointers;
  for (const PathChange& change : changes) {
    const auto place = set_in_plan(plan, change.path, change.values.front());
    if (!place) return place.problem();
    for (std::size_t other = 0; other < pointers.size(); ++other)
      if (pointers[other] == place->pointer)
        return bad_input("--set names the same place twice, as " + changes[other].path + " and as " +
                         change.path + ": give all its values in one list.");
    pointers.push_back(place->pointer);
  }
  return std::nullopt;
}

}  // namespace

Result<Variants> Variants::make(const Plan& plan, std::vector<PathChange> changes, VariantOrder order) {
  const auto count = count_of(changes, order);
  if (!count) return count.problem();
  Variants made;
  made.base_ = std::make_shared<const BasePlan>(BasePlan{written_out(plan), plan.folder});
  made.changes_ = std::move(changes);
  made.order_ = order;
  made.count_ = *count;
  if (auto problem = same_place_twice(made.base_->json, made.changes_)) return *problem;
  std::vector<std::optional<Problem>> refused(made.count_);
  each_in_parallel(made.count_, [&](std::size_t v) {
    if (const auto read = made.plan(v); !read) refused[v] = read.problem();
  });
  for (const auto& problem : refused)
    if (problem) return *problem;
  return made;
}

std::vector<std::string> Variants::values(std::size_t variant) const {
  std::vector<std::string> out(changes_.size());
  std::size_t rest = variant;
  for (std::size_t c = changes_.size(); c-- > 0;) {
    const std::vector<std::string>& all = changes_[c].values;
    out[c] = all[order_ == VariantOrder::kAlong ? variant : rest % all.size()];
    rest /= all.size();
  }
  return out;
}

std::string Variants::name(std::size_t variant) const {
  const std::vector<std::string> of = values(variant);
  std::string words;
  for (std::size_t c = 0; c < changes_.size(); ++c)
    words += (c ? ", " : "") + short_path(changes_[c].path) + " " + value_words(of[c]);
  return words;
}

Result<Plan> Variants::plan(std::size_t variant) const {
  nlohmann::json json = base_->json;
  const std::vector<std::string> of = values(variant);
  const PathChange* added = nullptr;
  for (std::size_t c = 0; c < changes_.size(); ++c) {
    const auto place = set_in_plan(json, changes_[c].path, of[c]);
    if (!place) return place.problem();
    if (place->added && !added) added = &changes_[c];
  }
  auto read = plan_from_json(json, base_->folder, "variant " + number(variant));
  if (!read) {
    std::string message = read.problem().message;
    if (!added) return bad_input(std::move(message));
    if (message.ends_with('.')) message.pop_back();
    return bad_input(message + " (--set " + added->path +
                     " is not in the plan; the nearest that is there is " +
                     nearest_path(base_->json, added->path) + ").");
  }
  Plan plan = std::move(read).value();
  plan.layout_file.reset();
  plan.layout_drawing.reset();
  return plan;
}

}  // namespace wrapgauge
