#pragma once
#include "app/picture/note_picture.hpp"
#include "model/note/note.hpp"

namespace wrapgauge {

// The note as a PDF of as many A4 pages as it takes, the same words as its HTML in the same order, none
// smaller than 10 points; each page says which of how many it is. It names its title, its language and, where
// the note has one, its day of making; bookmarks lead to the sections. It has no tags: the library knows
// none. Same note, same bytes.
Result<std::string> note_pdf(const Note& note, const NotePictures& pictures);

}  // namespace wrapgauge
