// Of the views: the plan as it would be with a change that is pointed at, calculated as a preview and shown
// without being made.

#include "app/desk/window/view_area.hpp"

namespace wrapgauge {

void ViewArea::look_at(std::shared_ptr<const Plan> would_be, const QString& words) {
  if (!would_be) return end_look();
  would_be_ = std::move(would_be);
  would_be_words_ = words;
  look_timer_.start();
}

void ViewArea::begin_look() {
  if (!would_be_) return;
  if (!looker_) {
    looker_ = std::make_unique<EstimateRunner>();
    connect(looker_.get(), &EstimateRunner::found, this, &ViewArea::take_look);
  }
  looker_->check_and_preview(would_be_);
}

void ViewArea::take_look(const RunResult& result) {
  const auto* solved = std::get_if<std::shared_ptr<const SolvedPlan>>(&result);
  if (!would_be_ || !solved || (*solved)->plan != would_be_) return;
  shown_.show_layout(std::make_shared<const Layout>(would_be_->layout));
  shown_.show_worn(nullptr);
  shown_.show_rim(nullptr);
  shown_.show_estimate((*solved)->estimate);
  shown_.show_stale({});
  shown_.say_would_be(
      tr("As it would be, on a preview's mesh: %1. The plan is not changed.").arg(would_be_words_));
}

void ViewArea::end_look() {
  look_timer_.stop();
  if (!std::exchange(would_be_, nullptr)) return;
  if (looker_) looker_->cancel();
  if (shown_.would_be().isEmpty()) return;  // it was not to be seen yet
  const SessionState& now = session_.now();
  shown_.say_would_be({});
  show_plan(*now.plan);
  if (now.check) show_checked(*now.check);
  shown_.show_estimate(now.solved ? now.solved->estimate : nullptr);
  show_result(now, now);
}

}  // namespace wrapgauge
