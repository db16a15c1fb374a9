#pragma once
#include <QImage>
#include <QString>

#include "model/note/note.hpp"
#include "model/pipeline/pipeline.hpp"

namespace wrapgauge {

// The picture of the study note: worn, flat, and the peak on the skin while the device fills, with the limit.
// Its words can be read when it is printed 18 cm wide.
QImage note_picture(const Estimate& estimate);

// HTML of the note's pages with the picture `width` pixels wide and as high as `picture` asks for: outside
// the window's thread a document keeps no proportions by itself.
QString with_picture_size(const std::string& pages, const QImage& picture, int width = kNotePictureWidth);

}  // namespace wrapgauge
