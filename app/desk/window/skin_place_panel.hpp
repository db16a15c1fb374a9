#pragma once
// Bony sites, landmarks, no-go zones and regions of other tissue: added, placed by a click, changed by
// number.

#include "app/desk/session/skin_place.hpp"
#include "app/desk/window/distance_table.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class SkinPlacePanel : public StepForm {
  Q_OBJECT
 public:
  explicit SkinPlacePanel(PlanSession& session, QWidget* parent = nullptr);

  void show_picked(const std::optional<Vec3>& point_m);  // where a new place goes
  void add_place(NewSkinPlace what);

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  QPushButton* add_button();
  void add_point();
  void add_site();
  void add_region();
  void add_near();
  void add_band();
  void add_tissue();
  std::optional<SkinPlace> chosen() const;
  Vec3 spot_m() const;
  void ask_for_place();
  void put_at_picked();
  void remove();
  void rename();
  // Changes what is chosen and settles the plan.
  void change_place(const QString& words, const QString& merge, const std::function<void(Plan&)>& edit);
  void take_near(Plan& plan, const std::string& name);
  void fill_near(const NearPoint& near);

  std::optional<Vec3> picked_m_;
  Choice* places_;
  QPushButton *remove_, *show_, *here_;
  FieldForm<Plan> rows_;  // those of what is chosen are seen
  LineField* name_;
  Choice* near_;
  DistanceTable* distances_;
};

}  // namespace wrapgauge
