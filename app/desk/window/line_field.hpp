#pragma once
#include <QLineEdit>

namespace wrapgauge {

// A line of text of the plan. What is being typed stays while other things change.
class LineField : public QLineEdit {
  Q_OBJECT
 public:
  explicit LineField(const QString& name, QWidget* parent = nullptr) : QLineEdit(parent) {
    setAccessibleName(name);
  }

  void show_text(const QString& text) {
    if (text == shown_ && isModified() && hasFocus()) return;
    shown_ = text;
    if (text != QLineEdit::text()) setText(text);
  }

 private:
  QString shown_;
};

}  // namespace wrapgauge
