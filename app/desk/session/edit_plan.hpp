#pragma once
#include <QUndoCommand>
#include <memory>

#include "app/desk/session/plan_session.hpp"

namespace wrapgauge {

// The plan before and after one edit.
class EditPlan : public QUndoCommand {
 public:
  EditPlan(PlanSession& session, const QString& words, Plan changed, QString merge)
      : QUndoCommand(words),
        session_(session),
        before_(session.plan_),
        after_(std::make_shared<const Plan>(std::move(changed))),
        merge_(std::move(merge)) {}

  void undo() override { session_.set_plan(before_); }
  void redo() override { session_.set_plan(after_); }
  int id() const override { return merge_.isEmpty() ? -1 : 1; }
  bool mergeWith(const QUndoCommand* next) override {
    const auto* edit = static_cast<const EditPlan*>(next);
    if (edit->merge_ != merge_) return false;
    after_ = edit->after_;
    return true;
  }

 private:
  PlanSession& session_;
  std::shared_ptr<const Plan> before_, after_;
  QString merge_;
};

}  // namespace wrapgauge
