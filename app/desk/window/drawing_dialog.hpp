#pragma once
// Which shape of a drawing becomes which part: seen and said on the drawing itself before anything is taken
// over.

#include <QDialog>
#include <QTabWidget>
#include <filesystem>
#include <memory>

#include "app/desk/window/drawing_outcome.hpp"
#include "app/desk/window/drawing_shapes.hpp"
#include "app/desk/window/step_form.hpp"
#include "model/layout/drawing_map.hpp"
#include "model/layout/drawn_layout.hpp"
#include "model/plan/plan.hpp"

namespace wrapgauge {

class DrawingDialog : public QDialog {
  Q_OBJECT
 public:
  // Sheets, backing and closure start as the plan has them. `remembered`: what was said of this file before.
  DrawingDialog(std::filesystem::path file, const Plan& plan,
                const std::optional<DrawingMap>& remembered = {}, QWidget* parent = nullptr);

  // Set: the file cannot be read, whatever unit it is in.
  std::optional<Problem> problem() const { return needs_unit_ ? std::nullopt : problem_; }
  Layout drawn_layout() const { return layout_; }
  const DrawingMap& map() const { return map_; }
  DrawingView& view() { return *view_; }

 private:
  void arrange();
  void connect_parts();
  QWidget* measures_page();
  QWidget* sheets_page();
  void add_measures();
  void add_closing();
  void read_again();
  void say_unreadable(const Problem& problem);
  void take_carried();
  void take_sheets();
  void settle();
  void try_out();
  void show_layout();
  void choose(std::size_t shape);
  void say(DrawnPart part, bool all_alike);
  void confirm_guesses();
  void ask_for_inlet(bool wanted);
  void add_inlet(const Vec2& drawn_m);
  bool lies_in_open_part(const Vec2& drawn_m) const;
  std::vector<std::size_t> chamber_shapes() const;  // the shape of each chamber of the layout

  std::filesystem::path file_;
  std::optional<Problem> problem_;
  std::shared_ptr<const Drawing> drawing_;
  bool needs_unit_ = false;     // the file can be read once its unit is said
  bool carried_taken_ = false;  // the fields start with what the drawing says of itself
  DrawingMap map_;
  DrawingMarks marks_;
  Layout layout_, sheets_of_;  // as drawn; the fields' own sheets
  QTabWidget* tabs_;
  DrawingView* view_;
  DrawingShapes* shapes_;
  QWidget *measure_box_, *sheet_box_;
  FieldForm<DrawingMap> measures_, closing_;
  FieldForm<Layout> sheets_;
  QLabel* notes_;
  DrawingOutcome* outcome_;
  QPushButton* take_;
};

}  // namespace wrapgauge
