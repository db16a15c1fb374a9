#include "model/layout/layout_fields.hpp"

#include <cmath>

namespace wrapgauge {
namespace {

using nlohmann::json;

void close(JsonObject& outer, JsonObject& inner) {
  if (auto problem = inner.finish()) outer.fail(*problem);
}

}  // namespace

Sheet sheet_from(JsonObject& object, const char* key) {
  JsonObject inner(object.value(key), object.place(key));
  if (object.failed()) return {};
  Sheet out{inner.text("material"), inner.number("thickness", kThicknessRange) * mm,
            inner.number_or("prestretch", 1.0, kPrestretchRange)};
  close(object, inner);
  return out;
}

Backing backing_from(JsonObject& object) {
  JsonObject inner(object.value("backing"), object.place("backing"));
  const Backing out{inner.number_or("along", 0.0, kStiffnessRange) * N_per_mm,
                    inner.number_or("across", 0.0, kStiffnessRange) * N_per_mm};
  close(object, inner);
  return out;
}

Closure closure_from(JsonObject& object) {
  JsonObject inner(object.value("closure"), object.place("closure"));
  Closure out;
  out.from_x_m = inner.number_or("from_x", 0.0, kCoordinateRange) * 1e-3;
  if (const auto length = inner.optional_number("closing_length", kSizeRange))
    out.closing_length = *length * mm;
  out.stretch = inner.optional_number("stretch", {-0.5, 2.0, ""});
  out.taper = inner.number_or("taper", 0.0, {-kSteepestTaper, kSteepestTaper, "mm/mm"});
  out.bend = inner.number_or("bend", 0.0, {-kSteepestTaper, kSteepestTaper, "mm/mm"});
  if (out.closing_length.has_value() == out.stretch.has_value())
    inner.fail(Phrase::worded("give exactly one of closing_length and stretch."));
  close(object, inner);
  return out;
}

double rounded_mm(double length_m) {
  return std::round(length_m * 1e9) / 1e6 + 0.0;  // none is -0
}

json sheet_json(const Sheet& sheet) {
  json out{{"material", sheet.material}, {"thickness", rounded_mm(sheet.thickness.si())}};
  if (sheet.prestretch != 1.0) out["prestretch"] = sheet.prestretch;
  return out;
}

json backing_json(const Backing& backing) {
  return {{"along", backing.along / N_per_mm}, {"across", backing.across / N_per_mm}};
}

json closure_json(const Closure& closure) {
  json out{{"from_x", rounded_mm(closure.from_x_m)}};
  if (closure.closing_length) out["closing_length"] = rounded_mm(closure.closing_length->si());
  if (closure.stretch) out["stretch"] = *closure.stretch;
  if (closure.taper != 0.0) out["taper"] = closure.taper;
  if (closure.bend != 0.0) out["bend"] = closure.bend;
  return out;
}

}  // namespace wrapgauge
