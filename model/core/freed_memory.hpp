#pragma once

namespace wrapgauge {

// For the start of a program: what one solve frees is kept for the next one. Handed back to the system in
// between, every page of it would have to be cleared and mapped anew, which can take as long as a small
// solve.
void keep_freed_memory();

}  // namespace wrapgauge
