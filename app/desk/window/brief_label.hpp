#pragma once
// Words that keep their room: so many lines, always; what does not fit ends in an ellipsis and stands whole
// in the hint.

#include <QLabel>

namespace wrapgauge {

class BriefLabel : public QLabel {
  Q_OBJECT
 public:
  BriefLabel(int lines, QWidget* parent = nullptr);

  bool shows_all() const;  // at its size now
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;
  bool hasHeightForWidth() const override { return false; }

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;

 private:
  QStringList broken() const;  // into at most `lines_` lines
  int lines_;
};

}  // namespace wrapgauge
