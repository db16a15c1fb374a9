#pragma once
// Bony sites, landmarks, no-go zones and regions of other tissue: added, placed by a click, changed by
// number.

#include <QFormLayout>
#include <QLineEdit>
#include <QPushButton>

#include "app/desk/session/skin_place.hpp"
#include "app/desk/window/choice.hpp"
#include "app/desk/window/distance_table.hpp"
#include "app/desk/window/optional_number.hpp"
#include "app/desk/window/step_form.hpp"

namespace wrapgauge {

class SkinPlacePanel : public StepForm {
  Q_OBJECT
 public:
  explicit SkinPlacePanel(PlanSession& session, QWidget* parent = nullptr);

  void show_picked(const std::optional<Vec3>& point_m);  // where a new place goes
  void add_place(NewSkinPlace what);

 protected:
  void show_plan() override;

 private:
  void make_buttons(QLayout& column);
  void make_point();
  void make_site();
  void make_region();
  void make_tissue();
  std::optional<SkinPlace> chosen() const;
  Vec3 spot_m() const;
  void remove();
  void rename();
  // Changes what is chosen and settles the plan.
  void change_place(const QString& merge, const std::function<void(Plan&, std::size_t)>& edit);
  void take_point();
  void take_near(const QString& name);
  void take_band();
  void take_distances();
  void show_fields();
  void show_site(const BonySite& site);
  void show_region(const SkinRegion& region);
  void fill_near(const SkinRegion& region);

  std::optional<Vec3> picked_m_;
  Choice* places_;
  QLineEdit* name_;
  QPushButton *add_, *remove_, *here_, *show_;
  QFormLayout* form_;
  NumberField *x_, *y_, *z_, *radius_, *site_depth_, *from_, *to_, *from_angle_, *to_angle_, *fade_;
  Choice *kind_, *status_, *near_;
  QLineEdit* words_;
  QCheckBox* no_go_;
  OptionalNumber depth_, factor_;
  DistanceTable* distances_;
};

}  // namespace wrapgauge
