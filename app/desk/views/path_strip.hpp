#pragma once
// The inflation strip: a slider over the recorded states and the curve of the peak contact pressure over
// them, with the limit and the highest pressure the layout can hold.

#include <QElapsedTimer>
#include <QTimer>
#include <QWidget>

#include "app/desk/views/shown_plan.hpp"

class QChart;
class QChartView;
class QGraphicsSimpleTextItem;
class QLabel;
class QLineSeries;
class QScatterSeries;
class QSlider;
class QToolButton;
class QValueAxis;

namespace wrapgauge {

class PathStrip : public QWidget {
  Q_OBJECT
 public:
  PathStrip(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

  // In steps of which several lie between two recorded states; let go, it comes to rest at one of those.
  QSlider* slider() { return slider_; }
  void play(bool on);
  bool plays() const { return player_.isActive(); }
  QImage picture();

 protected:
  void changeEvent(QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void make_chart();
  void estimate_changed();
  void draw_curve();
  void show_state();
  void show_filling();
  void play_on();
  void come_to_rest();
  QPointF on_curve(double filling) const;
  void fit_words();
  void take_colours();
  void fit_axes();
  void draw_lines();
  void name_lines();
  double in_unit(Pressure pressure) const;

  const ShownPlan& shown_;
  Selection& selection_;
  QSlider* slider_;
  QToolButton* play_;
  QTimer player_;
  QElapsedTimer since_;
  double played_from_ = 0.0;
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
