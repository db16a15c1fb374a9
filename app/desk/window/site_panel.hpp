#pragma once
// Where the bones and nerves of a scan lie: a landmark or two clicked on the body, and each site that follows
// confirmed or dropped.

#include <QListWidget>
#include <array>

#include "app/desk/session/marked_sites.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class SitePanel : public StepForm {
  Q_OBJECT
 public:
  explicit SitePanel(PlanSession& session, QWidget* parent = nullptr);

  void take_click(const Vec3& point_m);  // of the landmark that was asked for
  void stop_asking();

 signals:
  void clickAsked(const QString& hint);  // on the body; empty: no more

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;
  void hideEvent(QHideEvent* event) override;

 private:
  struct Row {
    Choice* name;
    QPushButton* click;
    std::optional<Vec3> point_m;
  };
  Row new_row(const QString& spoken, const QString& button_spoken, std::size_t which);
  void ask(std::size_t which);
  void name_changed(std::size_t which);
  void mark();
  void confirm(QListWidgetItem* item);
  void show_row(QListWidgetItem* item);
  void drop();
  void forget_landmarks(std::shared_ptr<const ReadBody> body);
  void show_landmarks(const std::vector<StandardSite>& places, bool can_be_clicked);
  void show_list(const Plan& plan);
  QString status_words(const SessionState& now) const;

  QWidget* inside_;
  QLabel *status_, *refused_, *beyond_;
  std::array<Row, 2> rows_;
  QListWidget* list_;
  QPushButton* drop_;
  std::vector<std::size_t> listed_;  // in plan.bony_sites
  std::optional<std::size_t> asked_;
  std::optional<Vec3> marked_front_;
  std::shared_ptr<const ReadBody> body_;  // whose landmarks the rows hold
};

}  // namespace wrapgauge
