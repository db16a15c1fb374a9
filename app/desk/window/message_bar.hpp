#pragma once
// One message inside the window, in the same words as the terminal; it stays until it is closed or solved.

#include <QFrame>
#include <QLabel>

namespace wrapgauge {

class MessageBar : public QFrame {
  Q_OBJECT
 public:
  explicit MessageBar(QWidget* parent = nullptr);

  void say_problem(const QString& words);
  void say_news(const QString& words);
  void take_back_problem();  // what it was about has changed; news stay
  QString words() const { return isVisible() ? words_->text() : QString(); }

 private:
  void say(const QString& title, const QString& words);
  QLabel *title_, *words_;
  bool problem_ = false;
};

}  // namespace wrapgauge
