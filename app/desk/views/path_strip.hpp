#pragma once
// The inflation strip: a slider over the recorded states and the curve of the peak contact pressure over
// them, with the limit and the highest pressure the layout can hold.

#include <QWidget>

#include "app/desk/views/shown_plan.hpp"

class QChart;
class QChartView;
class QGraphicsSimpleTextItem;
class QLabel;
class QLineSeries;
class QScatterSeries;
class QSlider;
class QValueAxis;

namespace wrapgauge {

class PathStrip : public QWidget {
  Q_OBJECT
 public:
  PathStrip(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

  QSlider* slider() { return slider_; }
  QImage picture();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void make_chart();
  void estimate_changed();
  void draw_curve();
  void show_state();
  void fit_words();
  void take_colours();
  void fit_axes();
  void draw_lines();
  void name_lines();
  double in_unit(Pressure pressure) const;

  const ShownPlan& shown_;
  Selection& selection_;
  QSlider* slider_;
  QLabel* words_;
  QString all_words_, brief_words_;
  QChartView* view_;
  QLineSeries *curve_, *limit_, *holds_;
  QScatterSeries *states_, *now_;
  QValueAxis *inside_, *peak_;
  QGraphicsSimpleTextItem *limit_words_ = nullptr, *holds_words_ = nullptr;
  double limit_at_ = 0.0, holds_at_ = 0.0;  // in the shown unit; 0: none
  bool fitting_ = false;
};

}  // namespace wrapgauge
