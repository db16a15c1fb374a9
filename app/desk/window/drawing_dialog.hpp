#pragma once
// Which shape of a drawing becomes which part, tried out before anything is taken over.

#include <QDialog>
#include <filesystem>

#include "app/desk/window/step_form.hpp"
#include "model/layout/drawing.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/drawing_parts.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

class DrawingDialog : public QDialog {
  Q_OBJECT
 public:
  // Sheets, backing and closure start as the plan has them.
  DrawingDialog(std::filesystem::path file, const Plan& plan, QWidget* parent = nullptr);

  std::optional<Problem> problem() const { return problem_; }  // set: the file cannot be read
  Layout drawn_layout() const { return layout_; }
  const DrawingMap& map() const { return map_; }

 private:
  void arrange();
  void add_fields();
  void read_again();
  void take_carried();
  void fill_table();
  void take_part(int row, DrawnPart part);
  void take_sheets();
  void settle();
  void try_out();

  std::filesystem::path file_;
  std::optional<Problem> problem_;
  Drawing drawing_;
  bool carried_taken_ = false;  // the fields start with what the drawing says of itself
  DrawingMap map_;
  Layout layout_, sheets_of_;  // as drawn; the fields' own sheets
  QWidget* field_box_;
  FieldForm<DrawingMap> fields_;
  FieldForm<Layout> sheets_;
  QTableWidget* shapes_;
  QLabel* outcome_;
  QPushButton* take_;
};

}  // namespace wrapgauge
