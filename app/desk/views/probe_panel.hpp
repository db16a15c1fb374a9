#pragma once
#include <QWidget>

#include "app/desk/views/shown_plan.hpp"

class QLabel;

namespace wrapgauge {

// What is known of the picked place, in words and both units.
class ProbePanel : public QWidget {
  Q_OBJECT
 public:
  ProbePanel(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

  QString text() const;  // the rows as "name<tab>value" lines

 private:
  void refresh();

  const ShownPlan& shown_;
  Selection& selection_;
  QLabel* rows_;
};

}  // namespace wrapgauge
