#pragma once
#include <QImage>
#include <string>

#include "model/note/note.hpp"

namespace wrapgauge {

// The note as a PDF of two A4 pages, the same words as its HTML. Same note, same bytes: the date inside is
// fixed. Problem: more words than two pages hold at the smallest type that can be read.
Result<std::string> note_pdf(const Note& note, const QImage& picture);

}  // namespace wrapgauge
