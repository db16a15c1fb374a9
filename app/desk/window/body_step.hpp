#pragma once
// Step Body: a mesh file, mended, or a form made from measures; its girths; the tissue under the skin.

#include "app/desk/window/measures_panel.hpp"
#include "app/desk/window/site_panel.hpp"
#include "app/desk/window/skin_place_panel.hpp"

namespace wrapgauge {

class BodyStep : public StepForm {
  Q_OBJECT
 public:
  explicit BodyStep(PlanSession& session, QWidget* parent = nullptr);

  void open_mesh(const std::filesystem::path& file);
  void ask_for_mesh();
  void make_from_measures();
  SkinPlacePanel& places() { return *places_; }
  SitePanel& sites() { return *sites_; }

 protected:
  void show_state(const SessionState& now, const SessionState& before) override;

 private:
  void fill_file_page();
  void change_file(const QString& words, const QString& merge, const std::function<void(BodyFile&)>& edit);
  void take_origin(const QVariant& origin);
  void show_checked(const CheckedPlan* checked);

  Choice* origin_;
  QWidget* file_page_;
  QLabel* file_;
  QWidget* mend_box_;
  QLabel* said_;
  FieldForm<BodyFile> of_file_;
  FieldForm<std::vector<MendStep>> mending_;
  MeasuresPanel* measures_;
  QTableWidget* girths_;
  SitePanel* sites_;
  SkinPlacePanel* places_;
};

}  // namespace wrapgauge
