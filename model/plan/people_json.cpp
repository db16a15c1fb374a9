#include "model/plan/people_json.hpp"

namespace wrapgauge {

SitesConfirmed sites_confirmed_from_json(JsonObject& object) {
  return {object.said("who"), object.said("when"), object.said("why")};
}

Clearance clearance_from_json(JsonObject& object) {
  return {object.said("name"), object.said("role"), object.date("date")};
}

}  // namespace wrapgauge
