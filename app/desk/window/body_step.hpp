#pragma once
// Step Body: a mesh file, mended, or a form made from measures; its girths; the tissue under the skin.

#include <QCheckBox>
#include <QTableWidget>

#include "app/desk/window/measures_panel.hpp"
#include "app/desk/window/mend_panel.hpp"
#include "app/desk/window/skin_place_panel.hpp"
#include "app/desk/window/step_form.hpp"
#include "app/desk/window/tissue_panel.hpp"

namespace wrapgauge {

class BodyStep : public StepForm {
  Q_OBJECT
 public:
  explicit BodyStep(PlanSession& session, QWidget* parent = nullptr);

  void open_mesh(const std::filesystem::path& file);
  void ask_for_mesh();
  SkinPlacePanel& places() { return *places_; }

 protected:
  void show_plan() override;
  void show_checked() override;

 private:
  QWidget* make_file_page();
  void take_origin(const QVariant& origin);
  void show_file(const BodyFile& file);

  Choice *origin_, *unit_, *axis_;
  QWidget* file_page_;
  QLabel *file_, *said_;
  QCheckBox* raw_;
  MendPanel* mend_;
  MeasuresPanel* measures_;
  QTableWidget* girths_;
  TissuePanel* tissue_;
  SkinPlacePanel* places_;
};

}  // namespace wrapgauge
