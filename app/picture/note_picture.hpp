#pragma once
#include <QImage>
#include <QString>

#include "model/note/note.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The pictures of the study note. Their words are of 10 points where they are printed 18 cm wide.
struct NotePictures {
  QImage place;     // both sides of the limb with its sites, and the whole limb
  QImage pressure;  // laid flat, and the peak on the skin while the device fills, with the limit
};
NotePictures note_pictures(const Estimate& estimate);

// HTML of the note with its pictures `width` pixels wide and as high as they ask for: outside the window's
// thread a document keeps no proportions by itself.
QString with_picture_sizes(const std::string& html, const NotePictures& pictures,
                           int width = kNotePictureWidth);

}  // namespace wrapgauge
