#pragma once
// Lit while a file is held over the window: what may be let go here.

#include <QLabel>

namespace wrapgauge {

class DropFrame : public QLabel {
  Q_OBJECT
 public:
  explicit DropFrame(QWidget* over);
  void light(bool on);

 protected:
  void paintEvent(QPaintEvent* event) override;
};

}  // namespace wrapgauge
