#pragma once
// The fields of a form as widgets, each in its row, before it is known what they are about.

#include <QCheckBox>
#include <QFormLayout>
#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "app/desk/window/choice.hpp"
#include "app/desk/window/field_text.hpp"
#include "app/desk/window/line_field.hpp"
#include "app/desk/window/optional_number.hpp"

namespace wrapgauge {

class FieldRows {
 public:
  // `hides`: a field whose value is not there is not seen; otherwise it is seen and cannot be changed.
  FieldRows(QWidget* owner, QFormLayout* form, bool hides) : owner_(owner), form_(form), hides_(hides) {}

  QFormLayout& layout() const { return *form_; }
  QWidget* owner() const { return owner_; }

  // Whether there is a value for the field to show.
  void be_there(QWidget* field, bool is_there) const;

 protected:
  NumberField* new_number(const FieldText& text, const QString& unit, const NumberField::Range& range,
                          std::function<void(double)> edited) const;
  OptionalNumber new_optional(const FieldText& text, const QString& unit, const NumberField::Range& range,
                              std::function<void(std::optional<double>)> edited) const;
  Choice* new_choice(const FieldText& text, const std::vector<ChoiceEntry>& entries,
                     std::function<void(const QVariant&)> edited) const;
  QCheckBox* new_box(const FieldText& text, std::function<void(bool)> edited) const;
  // What was typed comes without blanks at its ends.
  LineField* new_line(const FieldText& text, std::function<void(const std::string&)> edited) const;

 private:
  void place(const FieldText& text, QWidget* field) const;

  QWidget* owner_;
  QFormLayout* form_;
  bool hides_;
};

}  // namespace wrapgauge
