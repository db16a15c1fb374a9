#pragma once
// The tray: variants of the plan that are kept, each with its picture and three figures. One is taken up
// again; of two it is said what differs.

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <functional>

#include "app/desk/session/plan_session.hpp"
#include "app/job/kept_plans.hpp"

namespace wrapgauge {

class KeptPanel : public QWidget {
  Q_OBJECT
 public:
  // `picture`: of the body as it is shown.
  KeptPanel(PlanSession& session, std::function<QImage()> picture, QWidget* parent = nullptr);

 signals:
  void problemMet(const Problem& problem);

 protected:
  void showEvent(QShowEvent* event) override;

 private:
  void read();
  void show_buttons();
  void keep();
  void take_up();
  void drop();
  std::vector<const KeptPlan*> chosen() const;
  QString compared() const;

  PlanSession& session_;
  std::function<QImage()> picture_;
  std::vector<KeptPlan> kept_;
  QListWidget* list_;
  QLabel* words_;
  QPushButton *keep_, *take_up_, *drop_;
};

// "112 % of the limit, peak 2.2 kPa, inside 4.0 kPa"
QString figures_words(const KeptFigures& figures);
// What changes from one to the other: inputs, then figures.
QString difference_words(const KeptPlan& from, const KeptPlan& to);

}  // namespace wrapgauge
