#pragma once
#include "app/picture/note_picture.hpp"
#include "model/bench/calibrate.hpp"

namespace wrapgauge {

// Fitted against read, on logarithmic axes in units of each kind's own middle, with the line of agreement and
// a band of twice the largest standard error; outliers named. And what is left, in standard errors, by kind.
// `place` and `pressure` of a note's pictures, in this order.
NotePictures bench_pictures(const BenchResult& result);

}  // namespace wrapgauge
