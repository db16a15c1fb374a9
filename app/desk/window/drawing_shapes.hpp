#pragma once
// The shapes of a drawing as a list, and beside it what the chosen one is.

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <optional>

#include "app/desk/views/drawing_view.hpp"
#include "app/desk/window/choice.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

class DrawingShapes : public QWidget {
  Q_OBJECT
 public:
  explicit DrawingShapes(QWidget* parent = nullptr);

  // `added`: inlets that were placed by hand; they are listed after the shapes.
  void show_shapes(const Drawing& drawing, const DrawingMarks& marks, const std::vector<Inlet>& added);
  void show_placing(bool asked, const QString& said = {});

 signals:
  void shapeChosen(std::size_t shape);
  // Of the chosen shape, or of all that are like it.
  void partSaid(DrawnPart part, bool all_alike);
  void guessesConfirmed();
  void inletWanted(bool wanted);
  void inletTaken(std::size_t added);  // away again

 private:
  void arrange();
  void fill_list(const Drawing& drawing, const DrawingMarks& marks, const std::vector<Inlet>& added);
  void show_chosen(const Drawing& drawing, const DrawingMarks& marks, const std::vector<Inlet>& added);

  QLabel *chosen_words_, *remark_, *placing_words_;
  Choice* part_;
  QCheckBox* alike_;
  QPushButton *confirm_, *add_inlet_, *take_inlet_;
  QTableWidget* list_;
  std::optional<std::size_t> chosen_;
  std::size_t shape_count_ = 0;
  bool filling_ = false;
};

}  // namespace wrapgauge
