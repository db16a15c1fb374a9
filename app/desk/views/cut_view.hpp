#pragma once
// The cut: a ring slides along the limb, and the section there is drawn with the device on it. While it is
// seen the ring is drawn on the body too.

#include <QWidget>

#include "app/desk/views/cut_drawing.hpp"
#include "app/desk/views/shown_plan.hpp"

class QLabel;
class QSlider;

namespace wrapgauge {

class CutView : public QWidget {
  Q_OBJECT
 public:
  CutView(const ShownPlan& shown, Selection& selection, QWidget* parent = nullptr);

  QSlider* slider() { return slider_; }
  void cut_at(double station_m);  // as near as the device goes
  // None: no estimate, or its contact is still being read.
  const std::optional<CutSection>& section() const { return section_; }
  QImage picture() const;

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  class Paper;
  void estimate_changed();
  void read();
  void go_to(const Vec3& place_m);
  double station_m() const;
  QString words() const;
  CutStyle style() const;
  void draw(QPainter& painter, const QRectF& room) const;

  const ShownPlan& shown_;
  Selection& selection_;
  QLabel* words_;
  QSlider* slider_;
  Paper* paper_;
  std::shared_ptr<const PlaneSections> sections_;  // of the estimate's body
  std::shared_ptr<const Estimate> of_;             // that they are of
  std::optional<CutSection> section_;
};

}  // namespace wrapgauge
