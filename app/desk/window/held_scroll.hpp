#pragma once
// A column of fields that scrolls, in which the field under the hand stays where it is: what grows or shrinks
// above it while something is typed moves everything else.

#include <QPointer>
#include <QScrollArea>

namespace wrapgauge {

class HeldScroll : public QScrollArea {
  Q_OBJECT
 public:
  explicit HeldScroll(QWidget* parent = nullptr);

  void let_go();  // what is shown from now on is another form: it begins at its top

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;

 private:
  void take_focus(QWidget* field);
  void watch(bool on);
  void remember();
  void hold();
  void add_above(int pixels);

  QPointer<QWidget> field_;  // that has the keyboard, in this column; null: none
  int top_ = 0;              // of it in the viewport
  int added_ = 0;            // pixels above the form, where it has become too short to scroll
  bool asked_ = false;       // to hold, at the next turn of the event loop
};

}  // namespace wrapgauge
