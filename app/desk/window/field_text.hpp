#pragma once
// What a field is called and the unit it is written in.

#include <QString>
#include <optional>

#include "model/core/quantity.hpp"

namespace wrapgauge {

struct FieldText {
  QString title;  // beside the field, and what undo calls an edit of it; empty: the caller places the field
  QString spoken = {};      // what a screen reader says; empty: the title
  QString source = {};      // on hover
  const char* object = "";  // by which tests find it

  const QString& name() const { return spoken.isEmpty() ? title : spoken; }
};

// A unit as it is written, and one of it. Numbers in it are read from a value and written into it; null:
// there is none.
template <class One>
struct FieldUnit {
  const char* words;
  One one;

  template <class Value>
  std::optional<double> read(const Value* value) const {
    return value ? std::optional<double>(*value / one) : std::nullopt;
  }
  template <class Value>
  void write(Value* value, double number) const {
    if (value) *value = static_cast<Value>(number * one);
  }
};
inline constexpr FieldUnit<Length> kInMm{"mm", mm};
inline constexpr FieldUnit<Volume> kInMl{"mL", mL};
inline constexpr FieldUnit<Pressure> kInKpa{"kPa", kPa};
inline constexpr FieldUnit<Time> kInSeconds{"s", second}, kInMinutes{"min", minute};
inline constexpr FieldUnit<Force> kInNewton{"N", newton};
inline constexpr FieldUnit<LineTension> kInNewtonPerMm{"N/mm", N_per_mm};
inline constexpr FieldUnit<double> kPlain{"", 1.0}, kInDegrees{"°", 1.0}, kInPercent{"%", 0.01},
    kTimes{"×", 1.0}, kInCelsius{"°C", 1.0}, kMetresInMm{"mm", 1e-3};

}  // namespace wrapgauge
