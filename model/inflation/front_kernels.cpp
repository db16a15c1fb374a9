#include "model/inflation/front_kernels.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstring>

#define WRAPGAUGE_INLINE __attribute__((always_inline)) inline

namespace wrapgauge {
namespace {

// As many rows at a time as a vector of so many bytes holds.
template <int Bytes, class Real>
struct Lanes {
  typedef Real type __attribute__((vector_size(Bytes)));
  static constexpr int kCount = Bytes / sizeof(Real);
};

template <class Real, class Vector>
WRAPGAUGE_INLINE void load(const Real* from, Vector& lanes) {
  std::memcpy(&lanes, from, sizeof lanes);
}

// `Tiles` vectors of rows from `row` on, of `Columns` columns of C := C - A B^T, or of -A B^T where `Fresh`;
// only the last `kept` rows are written.
template <int Bytes, class Real, int Tiles, int Columns, bool Fresh>
WRAPGAUGE_INLINE void subtract_tile(int row, int kept, int k, const Real* a, int lda, const Real* b, int ldb,
                                    Real* c, int ldc) {
  using Vector = typename Lanes<Bytes, Real>::type;
  constexpr int kLanes = Lanes<Bytes, Real>::kCount;
  Vector sum[Columns][Tiles];
  for (int j = 0; j < Columns; ++j)
    for (int t = 0; t < Tiles; ++t)
      if constexpr (Fresh)
        sum[j][t] = Vector{};
      else
        load(c + static_cast<std::ptrdiff_t>(j) * ldc + row + t * kLanes, sum[j][t]);
  for (int p = 0; p < k; ++p) {
    const Real* rows = a + static_cast<std::ptrdiff_t>(p) * lda + row;
    Vector at[Tiles];
    for (int t = 0; t < Tiles; ++t) load(rows + t * kLanes, at[t]);
    const Real* factors = b + static_cast<std::ptrdiff_t>(p) * ldb;
    for (int j = 0; j < Columns; ++j) {
      const Real factor = factors[j];
      for (int t = 0; t < Tiles; ++t) sum[j][t] -= at[t] * factor;
    }
  }
  for (int j = 0; j < Columns; ++j) {
    Real* column = c + static_cast<std::ptrdiff_t>(j) * ldc + row;
    if (kept == Tiles * kLanes) {
      std::memcpy(column, sum[j], sizeof sum[j]);
    } else {
      Real rows[Tiles * kLanes];
      std::memcpy(rows, sum[j], sizeof rows);
      std::copy_n(rows + Tiles * kLanes - kept, kept, column + Tiles * kLanes - kept);
    }
  }
}

// C := C - A B^T, or -A B^T where `Fresh`: C rows x Columns, A rows x k, B Columns x k.
template <int Bytes, class Real, int Columns, bool Fresh>
WRAPGAUGE_INLINE void subtract_columns(int rows, int k, const Real* a, int lda, const Real* b, int ldb,
                                       Real* c, int ldc) {
  constexpr int kLanes = Lanes<Bytes, Real>::kCount, kTiles = 2;
  int row = 0;
  for (; row + kTiles * kLanes <= rows; row += kTiles * kLanes)
    subtract_tile<Bytes, Real, kTiles, Columns, Fresh>(row, kTiles * kLanes, k, a, lda, b, ldb, c, ldc);
  for (; row + kLanes <= rows; row += kLanes)
    subtract_tile<Bytes, Real, 1, Columns, Fresh>(row, kLanes, k, a, lda, b, ldb, c, ldc);
  if (row == rows) return;
  if (rows >= kLanes) {  // a last vector that overlaps the one before
    subtract_tile<Bytes, Real, 1, Columns, Fresh>(rows - kLanes, rows - row, k, a, lda, b, ldb, c, ldc);
    return;
  }
  for (int j = 0; j < Columns; ++j)
    for (int i = row; i < rows; ++i) {
      Real& entry = c[static_cast<std::ptrdiff_t>(j) * ldc + i];
      Real sum = Fresh ? Real(0) : entry;
      for (int p = 0; p < k; ++p)
        sum -= a[static_cast<std::ptrdiff_t>(p) * lda + i] * b[static_cast<std::ptrdiff_t>(p) * ldb + j];
      entry = sum;
    }
}

constexpr int kGroup = 6;  // columns

template <int Bytes, class Real, bool Fresh>
WRAPGAUGE_INLINE void subtract_group(int columns, int rows, int k, const Real* a, int lda, const Real* b,
                                     int ldb, Real* c, int ldc) {
  switch (columns) {
    case 1:
      return subtract_columns<Bytes, Real, 1, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
    case 2:
      return subtract_columns<Bytes, Real, 2, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
    case 3:
      return subtract_columns<Bytes, Real, 3, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
    case 4:
      return subtract_columns<Bytes, Real, 4, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
    case 5:
      return subtract_columns<Bytes, Real, 5, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
    default:
      return subtract_columns<Bytes, Real, kGroup, Fresh>(rows, k, a, lda, b, ldb, c, ldc);
  }
}

// A few columns that already have all from the columns before them.
template <class Real>
WRAPGAUGE_INLINE bool factor_group(int columns, int rows, Real* group, int lda) {
  for (int j = 0; j < columns; ++j) {
    Real* column = group + static_cast<std::ptrdiff_t>(j) * lda;
    for (int p = 0; p < j; ++p) {
      const Real* before = group + static_cast<std::ptrdiff_t>(p) * lda;
      const Real factor = before[j];
      for (int i = j; i < rows; ++i) column[i] -= factor * before[i];
    }
    if (!(column[j] > Real(0))) return false;
    const Real root = std::sqrt(column[j]), inverse = Real(1) / root;
    column[j] = root;
    for (int i = j + 1; i < rows; ++i) column[i] *= inverse;
  }
  return true;
}

template <int Bytes, class Real>
WRAPGAUGE_INLINE bool factor_columns_of(int wide, int tall, Real* block) {
  for (int first = 0; first < wide; first += kGroup) {
    const int columns = std::min(kGroup, wide - first);
    Real* group = block + static_cast<std::ptrdiff_t>(first) * tall + first;
    subtract_group<Bytes, Real, false>(columns, tall - first, first, block + first, tall, block + first, tall,
                                       group, tall);
    if (!factor_group(columns, tall - first, group, tall)) return false;
  }
  return true;
}

template <int Bytes, class Real>
WRAPGAUGE_INLINE void minus_square_of(int n, int k, const Real* a, int lda, Real* c) {
  for (int first = 0; first < n; first += kGroup)
    subtract_group<Bytes, Real, true>(std::min(kGroup, n - first), n - first, k, a + first, lda, a + first,
                                      lda, c + static_cast<std::ptrdiff_t>(first) * n + first, n);
}

template <class Real>
WRAPGAUGE_INLINE void forward_of(int wide, int tall, const Real* block, Real* own, Real* below) {
  for (int j = 0; j < wide; ++j) {
    const Real* column = block + static_cast<std::ptrdiff_t>(j) * tall;
    const Real x = own[j] /= column[j];
    for (int i = j + 1; i < wide; ++i) own[i] -= x * column[i];
  }
  constexpr int kAtOnce = 4;
  int j = 0;
  for (; j + kAtOnce <= wide; j += kAtOnce) {
    const Real* column = block + static_cast<std::ptrdiff_t>(j) * tall;
    for (int i = wide; i < tall; ++i)
      below[i - wide] -= own[j] * column[i] + own[j + 1] * column[tall + i] +
                         own[j + 2] * column[2 * tall + i] + own[j + 3] * column[3 * tall + i];
  }
  for (; j < wide; ++j) {
    const Real* column = block + static_cast<std::ptrdiff_t>(j) * tall;
    for (int i = wide; i < tall; ++i) below[i - wide] -= own[j] * column[i];
  }
}

// a . b, in as many sums as a vector has lanes.
template <int Bytes, class Real>
WRAPGAUGE_INLINE Real product(int count, const Real* a, const Real* b) {
  using Vector = typename Lanes<Bytes, Real>::type;
  constexpr int kLanes = Lanes<Bytes, Real>::kCount;
  Vector sums{}, left, right;
  int i = 0;
  for (; i + kLanes <= count; i += kLanes) {
    load(a + i, left);
    load(b + i, right);
    sums += left * right;
  }
  Real sum = 0;
  for (int lane = 0; lane < kLanes; ++lane) sum += sums[lane];
  for (; i < count; ++i) sum += a[i] * b[i];
  return sum;
}

template <int Bytes, class Real>
WRAPGAUGE_INLINE void backward_of(int wide, int tall, const Real* block, Real* own, const Real* below) {
  for (int j = wide - 1; j >= 0; --j) {
    const Real* column = block + static_cast<std::ptrdiff_t>(j) * tall;
    const Real rest = product<Bytes>(tall - wide, column + wide, below);
    own[j] = (own[j] - rest - product<Bytes>(wide - j - 1, column + j + 1, own + j + 1)) / column[j];
  }
}

// The entries for one kind of processor: `Attribute` lets the compiler use what it has.
#define WRAPGAUGE_KERNELS(Name, Bytes, Attribute)                                                         \
  template <class Real>                                                                                   \
  struct Name {                                                                                           \
    Attribute static bool factor_columns(int wide, int tall, Real* block) {                               \
      return factor_columns_of<Bytes>(wide, tall, block);                                                 \
    }                                                                                                     \
    Attribute static void set_to_minus_square(int n, int k, const Real* a, int lda, Real* c) {            \
      minus_square_of<Bytes>(n, k, a, lda, c);                                                            \
    }                                                                                                     \
    Attribute static void forward(int wide, int tall, const Real* block, Real* own, Real* below) {        \
      forward_of(wide, tall, block, own, below);                                                          \
    }                                                                                                     \
    Attribute static void backward(int wide, int tall, const Real* block, Real* own, const Real* below) { \
      backward_of<Bytes>(wide, tall, block, own, below);                                                  \
    }                                                                                                     \
    static FrontKernels<Real> all() {                                                                     \
      return {Bytes, factor_columns, set_to_minus_square, forward, backward};                             \
    }                                                                                                     \
  };

WRAPGAUGE_KERNELS(In16Bytes, 16, )
#if defined(__x86_64__)
WRAPGAUGE_KERNELS(In32Bytes, 32, __attribute__((target("avx2,fma"))))
WRAPGAUGE_KERNELS(In64Bytes, 64, __attribute__((target("avx512f,avx512vl,avx512dq,avx512bw,fma"))))
#endif
#undef WRAPGAUGE_KERNELS

template <class Real>
std::vector<FrontKernels<Real>> kernels_of_this_processor() {
  std::vector<FrontKernels<Real>> kernels = {In16Bytes<Real>::all()};
#if defined(__x86_64__)
  const auto has = [](auto... asked) { return (... && asked); };
  if (has(__builtin_cpu_supports("avx2"), __builtin_cpu_supports("fma")))
    kernels.push_back(In32Bytes<Real>::all());
  if (has(kernels.size() == 2, __builtin_cpu_supports("avx512f"), __builtin_cpu_supports("avx512vl"),
          __builtin_cpu_supports("avx512dq"), __builtin_cpu_supports("avx512bw")))
    kernels.push_back(In64Bytes<Real>::all());
#endif
  return kernels;
}

}  // namespace

template <class Real>
const std::vector<FrontKernels<Real>>& front_kernels() {
  static const std::vector<FrontKernels<Real>> kernels = kernels_of_this_processor<Real>();
  return kernels;
}

template const std::vector<FrontKernels<float>>& front_kernels();
template const std::vector<FrontKernels<double>>& front_kernels();

}  // namespace wrapgauge
