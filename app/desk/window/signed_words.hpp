#pragma once
// Words that someone answers for, taken whole or not at all: a box that opens their fields, what follows from
// them, and a button. What is refused stays as it was typed, with the reason below.

#include <QCheckBox>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <vector>

#include "app/desk/window/line_field.hpp"

namespace wrapgauge {

class SignedWords : public QWidget {
  Q_OBJECT
 public:
  struct Field {
    QString title, spoken, placeholder;
    const char* object = "";
  };
  // `what`: beside the box. `follows`: what it means to say so.
  SignedWords(const QString& what, const QString& follows, const std::vector<Field>& fields,
              QWidget* parent = nullptr);

  // What the plan says, a text for each field; none: nothing.
  void show_said(const std::optional<QStringList>& said);
  void show_refused(const QString& reason);

 signals:
  void given(const QStringList& words);
  void takenBack();

 private:
  void toggle(bool on);
  void fit();
  QStringList typed() const;

  QCheckBox* box_;
  QWidget* inside_;
  QLabel* refused_;
  QPushButton* confirm_;
  std::vector<LineField*> fields_;
  std::optional<QStringList> said_;
};

// Why something was not taken, below its field; hidden until there is a reason.
QLabel* refused_label(QWidget* parent);

}  // namespace wrapgauge
