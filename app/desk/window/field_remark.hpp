#pragma once
// A sentence beside a field, over what stands there, so that nothing moves: why what was typed is not taken.

#include <QLabel>

namespace wrapgauge {

class FieldRemark : public QLabel {
  Q_OBJECT
 public:
  // Below the field, above it where there is no room; until something is typed there, the field is left or
  // some seconds have passed.
  static void say(QWidget& field, const QString& words);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  explicit FieldRemark(QWidget& field);
  void stand_beside(const QWidget& field);
};

}  // namespace wrapgauge
