#pragma once
#include <QImage>
#include <string>
#include <vector>

#include "model/body/girth.hpp"

namespace wrapgauge {

// A girth to draw: where, how long, and what it is called ("wrist"; empty: only its station is said).
struct GirthMark {
  std::string name;
  Girth girth;
};

// A body from two sides, 90 degrees apart, proximal up, with a line round it at each girth and its length
// beside; bony sites are marked where they can be seen, the others named below. `subtitle` says what the body
// is or where it comes from.
QImage girth_picture(const Body& body, const std::vector<GirthMark>& girths, const QString& title,
                     const QString& subtitle);

}  // namespace wrapgauge
