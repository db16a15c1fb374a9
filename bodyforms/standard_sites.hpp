#pragma once
#include <vector>

#include "model/body/standard_site.hpp"

namespace wrapgauge {

// The places of the form that shows the whole of the part; empty: there is no such form.
std::vector<StandardSite> standard_sites(BodyPart part);

}  // namespace wrapgauge
