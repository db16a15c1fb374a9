#pragma once
// Rows of a form, each described once: what it is called, its range and unit, and where its value stands.
// What the row shows and what an edit of it changes both follow from that.

#include "app/desk/window/field_rows.hpp"

namespace wrapgauge {

// `Subject`: what the fields are about. An `at` takes it, as it is or to be changed, and gives a pointer to
// the value; null: there is none. A `get` gives an optional value likewise, and a `set` takes one.
template <class Subject>
class FieldForm : public FieldRows {
 public:
  using Edit = std::function<void(Subject&)>;
  // Takes an edit over, under `words`; those with the same `merge` in a row are one.
  using Take = std::function<void(const QString& words, const QString& merge, const Edit& edit)>;
  using Range = NumberField::Range;

  FieldForm(QWidget* owner, QFormLayout* form, Take take, bool hides = false)
      : FieldRows(owner, form, hides), take_(std::move(take)) {}

  template <class At, class One>
  NumberField* number(const FieldText& text, const FieldUnit<One>& unit, const Range& range, At at,
                      double otherwise = 0.0) {
    return number_by(
        text, unit.words, range, [at, unit](const Subject& from) { return unit.read(at(from)); },
        [at, unit](Subject& to, double value) { unit.write(at(to), value); }, otherwise);
  }
  template <class Get, class Set>
  NumberField* number_by(const FieldText& text, const QString& unit, const Range& range, Get get, Set set,
                         double otherwise = 0.0) {
    auto* field = new_number(text, unit, range, taker<double>(text, set, true));
    show_by(field, get,
            [field, otherwise](const auto& value) { field->show_value(value.value_or(otherwise)); });
    return field;
  }

  // A number that may be left out: `at` gives a pointer to an optional one.
  template <class At, class One>
  OptionalNumber optional(const FieldText& text, const FieldUnit<One>& unit, const Range& range, At at,
                          double otherwise) {
    const OptionalNumber row = optional_by(
        text, unit.words, range,
        [at, unit](const Subject& from) {
          const auto* value = at(from);
          return value && *value ? unit.read(&**value) : std::nullopt;
        },
        [at, unit](Subject& to, std::optional<double> value) {
          auto* there = at(to);
          if (!there) return;
          there->reset();
          if (value) unit.write(&there->emplace(), *value);
        },
        otherwise);
    also([rows = FieldRows(*this), row, at](const Subject& from) {
      rows.be_there(row.box, at(from));
      row.field->setEnabled(row.box->isChecked() && at(from));
    });
    return row;
  }
  template <class Get, class Set>
  OptionalNumber optional_by(const FieldText& text, const QString& unit, const Range& range, Get get, Set set,
                             double otherwise) {
    const OptionalNumber row = new_optional(text, unit, range, taker<std::optional<double>>(text, set, true));
    also([row, get, otherwise](const Subject& from) { row.show(get(from), otherwise); });
    return row;
  }

  // Of an enumeration; `get` and `set` of choice_by deal in what the entries hold, none being an invalid one.
  template <class At>
  Choice* choice(const FieldText& text, const std::vector<ChoiceEntry>& entries, At at) {
    return choice_by(
        text, entries,
        [at](const Subject& from) {
          const auto* value = at(from);
          return value ? QVariant(static_cast<int>(*value)) : QVariant();
        },
        [at](Subject& to, const QVariant& value) {
          if (auto* there = at(to)) *there = static_cast<std::decay_t<decltype(*there)>>(value.toInt());
        });
  }
  template <class Get, class Set>
  Choice* choice_by(const FieldText& text, const std::vector<ChoiceEntry>& entries, Get get, Set set) {
    auto* field = new_choice(text, entries, taker<QVariant>(text, set, false));
    also([rows = FieldRows(*this), field, get](const Subject& from) {
      const QVariant value = get(from);
      rows.be_there(field, value.isValid());
      field->show_value(value);
    });
    return field;
  }

  template <class At>
  QCheckBox* box(const FieldText& text, At at) {
    return box_by(
        text, [at](const Subject& from) { return at(from) ? std::optional(*at(from)) : std::nullopt; },
        [at](Subject& to, bool on) {
          if (bool* there = at(to)) *there = on;
        });
  }
  template <class Get, class Set>
  QCheckBox* box_by(const FieldText& text, Get get, Set set) {
    auto* field = new_box(text, taker<bool>(text, set, false));
    show_by(field, get,
            [field](const std::optional<bool>& value) { field->setChecked(value.value_or(false)); });
    return field;
  }

  template <class Get, class Set>
  LineField* line_by(const FieldText& text, Get get, Set set) {
    auto* field = new_line(text, taker<std::string>(text, set, false));
    show_by(field, get, [field](const std::optional<std::string>& value) {
      field->show_text(QString::fromStdString(value.value_or("")));
    });
    return field;
  }

  // Whatever else follows from the subject.
  void also(std::function<void(const Subject&)> show) { shows_.push_back(std::move(show)); }

  void show(const Subject& from) const {
    for (const auto& show : shows_) show(from);
  }

 private:
  template <class Value, class Set>
  std::function<void(const Value&)> taker(const FieldText& text, Set set, bool merges) const {
    const QString words = text.title.isEmpty() ? text.name() : text.title;
    return [take = take_, words, merge = merges ? text.name() : QString(), set](const Value& value) {
      take(words, merge, [&](Subject& to) { set(to, value); });
    };
  }
  template <class Get, class Show>
  void show_by(QWidget* field, Get get, Show show_value) {
    also([rows = FieldRows(*this), field, get, show_value](const Subject& from) {
      const auto value = get(from);
      rows.be_there(field, std::optional(value).has_value());
      show_value(value);
    });
  }

  Take take_;
  std::vector<std::function<void(const Subject&)>> shows_;
};

}  // namespace wrapgauge
