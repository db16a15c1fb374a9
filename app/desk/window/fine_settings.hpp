#pragma once
// A drawer, closed at first: what most plans leave as it is, or the whole of what is said in brief above it.

#include <QToolButton>
#include <QWidget>

namespace wrapgauge {

class FineSettings : public QWidget {
  Q_OBJECT
 public:
  // Takes `inside`. `of_what`: said to a screen reader, "mesh and solving".
  // `title`: instead of "Fine settings".
  FineSettings(QWidget* inside, const QString& of_what, QWidget* parent = nullptr, const QString& title = {});

  void say_title(const QString& title);
  bool is_open() const { return handle_->isChecked(); }
  void open() { handle_->setChecked(true); }

 private:
  QToolButton* handle_;
};

}  // namespace wrapgauge
