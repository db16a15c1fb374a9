#pragma once
// What the drawing becomes as it is said, and what keeps it from becoming a layout; choosing one of these
// goes to its shape.

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <optional>

#include "app/desk/views/drawing_view.hpp"
#include "model/core/result.hpp"
#include "model/layout/drawn_fault.hpp"
#include "model/layout/layout.hpp"

namespace wrapgauge {

class DrawingOutcome : public QWidget {
  Q_OBJECT
 public:
  explicit DrawingOutcome(QWidget* parent = nullptr);

  void say_unreadable(const Problem& problem);
  void show_faults(const Drawing& drawing, const std::vector<DrawnFault>& faults);
  // `chamber_shapes`: the shape of each chamber. `problems`: of the layout that it becomes.
  void show_layout(const Drawing& drawing, const DrawingMarks& marks, const Layout& layout,
                   const std::vector<Problem>& problems, const std::vector<std::size_t>& chamber_shapes);

 signals:
  void shapeAsked(std::size_t shape);
  void joinAsked(Length join);

 private:
  void add(const QString& words, std::optional<std::size_t> shape);
  void fit();

  QLabel* verdict_;
  QListWidget* problems_;
  QPushButton* join_;
  std::optional<Length> join_to_;
};

}  // namespace wrapgauge
