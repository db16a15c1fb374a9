#include "app/desk/views/shown_plan.hpp"

#include <algorithm>
#include <utility>

namespace wrapgauge {

ShownPlan::ShownPlan(Selection& selection, QObject* parent) : QObject(parent), selection_(selection) {
  reader_.setMaxThreadCount(1);
}

ShownPlan::~ShownPlan() {
  if (wanted_) *wanted_ = false;
  reader_.waitForDone();
}

void ShownPlan::show_body(std::shared_ptr<const Body> body, std::vector<BonySite> sites,
                          std::vector<SkinRegion> regions, MadeOfBody made) {
  if (body != body_) {
    body_ = std::move(body);
    skin_ = body_ && !made.skin ? std::make_shared<const SkinSurface>(body_->surface) : std::move(made.skin);
    sections_ = body_ && !made.sections ? std::make_shared<const PlaneSections>(body_->surface)
                                        : std::move(made.sections);
    selection_.pick_place(std::nullopt);
  }
  sites_ = std::move(sites);
  regions_ = std::move(regions);
  emit bodyChanged();
}

void ShownPlan::say_no_body(const QString& words) {
  if (no_body_ == words) return;
  no_body_ = words;
  emit bodyChanged();
}

void ShownPlan::show_layout(std::shared_ptr<const Layout> layout) {
  layout_ = std::move(layout);
  const auto chamber = selection_.chamber();
  if (chamber && (!layout_ || index_of(*chamber) >= layout_->chambers.size()))
    selection_.select_chamber(std::nullopt);
  emit layoutChanged();
}

void ShownPlan::show_worn(std::shared_ptr<const Prepared> worn) {
  worn_ = std::move(worn);
  emit wornChanged();
}

void ShownPlan::show_rim(std::shared_ptr<const LaidRim> rim) {
  if (rim == rim_) return;
  rim_ = std::move(rim);
  emit rimChanged();
}

void ShownPlan::show_estimate(std::shared_ptr<const Estimate> estimate) {
  if (wanted_) *wanted_ = false;
  const int count_before = state_count();
  const bool was_last = count_before == 0 || selection_.state() == count_before - 1;
  estimate_ = std::move(estimate);
  contacts_.clear();
  stale_.clear();
  if (estimate_) {
    scale_ = map_scene(*estimate_);
    contacts_.resize(estimate_->path.states.size());
    const auto skin = skin_of(estimate_->body.surface);
    contacts_.back() =
        std::make_shared<const StateContact>(state_contact(*estimate_, *skin, state_count() - 1));
    read_other_states(skin);
    if (!body_) show_body({estimate_, &estimate_->body}, estimate_->limit_inputs.bony_sites);
    if (!layout_) show_layout({estimate_, &estimate_->setup.layout});
  }
  choose_state(was_last, count_before);
  emit estimateChanged();
  emit staleChanged();
}

void ShownPlan::choose_state(bool was_last, int count_before) {
  const int last = std::max(0, state_count() - 1);
  if (was_last || state_count() != count_before) selection_.show_state(last);
}

// Of the body that is shown, when it is that one: its search tree is there already.
std::shared_ptr<const SkinSurface> ShownPlan::skin_of(const TriangleMesh& surface) const {
  if (skin_ && skin_->mesh().faces == surface.faces && skin_->mesh().vertices_m == surface.vertices_m)
    return skin_;
  return std::make_shared<const SkinSurface>(surface);
}

void ShownPlan::read_other_states(std::shared_ptr<const SkinSurface> skin) {
  wanted_ = std::make_shared<std::atomic<bool>>(true);
  reader_.start([this, estimate = estimate_, wanted = wanted_, skin] {
    for (int state = static_cast<int>(estimate->path.states.size()) - 2; state >= 0 && *wanted; --state) {
      auto contact = std::make_shared<const StateContact>(state_contact(*estimate, *skin, state));
      QMetaObject::invokeMethod(this, [this, wanted, state, contact] {
        if (!*wanted) return;
        contacts_[static_cast<std::size_t>(state)] = contact;
        emit stateRead(state);
      });
    }
  });
}

void ShownPlan::show_stale(const QString& words) {
  if (words == stale_) return;
  stale_ = words;
  emit staleChanged();
}

void ShownPlan::say_would_be(const QString& words) {
  if (words == would_be_) return;
  would_be_ = words;
  emit wouldBeChanged();
}

void ShownPlan::mark(std::vector<ProblemPlace> places) {
  marks_ = std::move(places);
  emit marksChanged();
}

std::shared_ptr<const StateContact> ShownPlan::contact(int state) const {
  if (state < 0 || state >= state_count()) return nullptr;
  return contacts_[static_cast<std::size_t>(state)];
}

}  // namespace wrapgauge
