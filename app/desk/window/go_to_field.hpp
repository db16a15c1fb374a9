#pragma once
// Type a few letters of a field's name and be there, whatever step it stands in.

#include <QDialog>
#include <vector>

#include "app/desk/session/step_state.hpp"

class QLineEdit;
class QListWidget;

namespace wrapgauge {

class PlanColumn;

struct FieldPlace {
  PlanStep step = PlanStep::kBody;
  QString words;  // "Wear: Station"
  QWidget* field = nullptr;
};

// Whatever of the steps can be edited or pressed as the plan is now, in closed drawers too, in the order of
// work.
std::vector<FieldPlace> field_places(const PlanColumn& column);

// Those whose words hold every word that was typed, those that begin with it first.
std::vector<FieldPlace> matching(const std::vector<FieldPlace>& places, const QString& typed);

class GoToField : public QDialog {
  Q_OBJECT
 public:
  explicit GoToField(PlanColumn& column, QWidget* parent = nullptr);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void show_matching();
  void go();

  PlanColumn& column_;
  std::vector<FieldPlace> all_, shown_;
  QLineEdit* typed_;
  QListWidget* list_;
};

}  // namespace wrapgauge
