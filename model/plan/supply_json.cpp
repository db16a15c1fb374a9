#include "model/plan/supply_json.hpp"

#include "model/plan/plan_numbers.hpp"

namespace wrapgauge {
namespace {

using nlohmann::ordered_json;

constexpr NumberRange kBore{0.1, 100.0, "mm"};
constexpr NumberRange kPressure{0.1, 1000.0, "kPa"};

template <class Read>
void read_inner(JsonObject& parent, const char* key, const Read& read) {
  if (parent.failed() || !parent.has(key)) return;
  JsonObject object(parent.value(key), parent.place(key));
  read(object);
  if (auto problem = object.finish()) parent.fail(std::move(*problem));
}

std::string medium_name(Medium medium) {
  if (medium == Medium::kAir) return "air";
  return medium == Medium::kWater ? "water" : "gel";
}

}  // namespace

void read_supply(JsonObject& object, Supply& supply) {
  read_inner(object, "syringe", [&](JsonObject& syringe) {
    supply.syringe = Syringe{syringe.number("capacity_ml", {0.1, 5000.0, "mL"}) * mL,
                             syringe.number("bore_mm", kBore) * mm,
                             syringe.number_or("thumb_n", 50.0, {1.0, 1000.0, "N"}) * newton};
  });
  if (const auto stall = object.optional_number("pump_stall_kpa", kPressure))
    supply.pump_stall = *stall * kPa;
  read_inner(object, "tubing", [&](JsonObject& tubing) {
    supply.tubing =
        Tubing{tubing.number("length_mm", {1.0, 1e5, "mm"}) * mm, tubing.number("bore_mm", kBore) * mm};
  });
  if (const auto relief = object.optional_number("relief_kpa", kPressure)) supply.relief = *relief * kPa;
  read_inner(object, "inlet_relief_kpa", [&](JsonObject& inlets) {
    for (const auto& [inlet, opens] : object.value("inlet_relief_kpa").items())
      supply.inlet_relief[inlet] = inlets.number(inlet.c_str(), kPressure) * kPa;
  });
  supply.dead_volume = object.number_or("dead_volume_ml", 0.0, {0.0, 5000.0, "mL"}) * mL;
}

void read_filling(JsonObject& object, Filling& filling) {
  const std::string medium = object.choice("medium", {"air", "water", "gel"});
  for (const Medium known : {Medium::kAir, Medium::kWater, Medium::kGel})
    if (medium == medium_name(known)) filling.medium = known;
  filling.celsius = object.optional_number("celsius", {-30.0, 100.0, "C"});
  if (const auto minutes = object.optional_number("minutes", {0.1, 1440.0, "min"}))
    filling.contact = *minutes * minute;
}

ordered_json supply_to_json(const Supply& supply) {
  ordered_json out;
  if (supply.syringe)
    out["syringe"] = {{"capacity_ml", tidy(supply.syringe->capacity / mL)},
                      {"bore_mm", tidy(supply.syringe->bore / mm)},
                      {"thumb_n", tidy(supply.syringe->thumb / newton)}};
  if (supply.pump_stall) out["pump_stall_kpa"] = tidy(*supply.pump_stall / kPa);
  if (supply.tubing)
    out["tubing"] = {{"length_mm", tidy(supply.tubing->length / mm)},
                     {"bore_mm", tidy(supply.tubing->bore / mm)}};
  if (supply.relief) out["relief_kpa"] = tidy(*supply.relief / kPa);
  for (const auto& [inlet, opens] : supply.inlet_relief) out["inlet_relief_kpa"][inlet] = tidy(opens / kPa);
  if (supply.dead_volume > Volume()) out["dead_volume_ml"] = tidy(supply.dead_volume / mL);
  return out;
}

ordered_json filling_to_json(const Filling& filling) {
  if (filling.medium == Medium::kAir && !filling.celsius && !filling.contact) return nullptr;
  ordered_json out{{"medium", medium_name(filling.medium)}};
  if (filling.celsius) out["celsius"] = tidy(*filling.celsius);
  if (filling.contact) out["minutes"] = tidy(*filling.contact / minute);
  return out;
}

}  // namespace wrapgauge
