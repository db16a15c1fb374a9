#pragma once
// Read against predicted, on logarithmic axes in units of each kind's own middle: on the line, they agree.

#include <QWidget>
#include <vector>

namespace wrapgauge {

// One reading: both values in the same unit. `group`: kinds are told apart by shape.
struct AgreementMark {
  QString name;
  int group = 0;
  double read = 0.0, predicted = 0.0, error = 0.0;
  bool outlier = false;
};

class AgreementView : public QWidget {
  Q_OBJECT
 public:
  explicit AgreementView(QWidget* parent = nullptr);

  // `words`: what they are predicted by, for the axis.
  void show_marks(std::vector<AgreementMark> marks, const QString& words);
  QSize sizeHint() const override { return {300, 250}; }
  bool hasHeightForWidth() const override { return true; }
  int heightForWidth(int width) const override { return std::min(width, 300); }

 protected:
  void paintEvent(QPaintEvent* event) override;
  bool event(QEvent* event) override;  // the name of the reading that is pointed at

 private:
  QRectF plot() const;
  QPointF place(const AgreementMark& mark) const;
  void draw_ground(QPainter& painter) const;
  void say_in_words();

  std::vector<AgreementMark> marks_;
  std::vector<double> middle_;  // ln, of each group
  double reach_ = 0.7;          // ln, both ways
  QString words_;
};

}  // namespace wrapgauge
