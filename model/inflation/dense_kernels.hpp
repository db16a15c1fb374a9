#pragma once
// The few BLAS and LAPACK routines of a front, by one name in either precision. Column-major, lower
// triangles.

extern "C" {
#define WRAPGAUGE_DENSE_KERNELS(p, real)                                                                     \
  void p##potrf_(const char* triangle, const int* n, real* a, const int* lda, int* info);                    \
  void p##trsm_(const char* side, const char* triangle, const char* transposed, const char* diagonal,        \
                const int* m, const int* n, const real* alpha, const real* a, const int* lda, real* b,       \
                const int* ldb);                                                                             \
  void p##syrk_(const char* triangle, const char* transposed, const int* n, const int* k, const real* alpha, \
                const real* a, const int* lda, const real* beta, real* c, const int* ldc);                   \
  void p##gemm_(const char* transposed_a, const char* transposed_b, const int* m, const int* n,              \
                const int* k, const real* alpha, const real* a, const int* lda, const real* b,               \
                const int* ldb, const real* beta, real* c, const int* ldc);                                  \
  void p##gemv_(const char* transposed, const int* m, const int* n, const real* alpha, const real* a,        \
                const int* lda, const real* x, const int* step_x, const real* beta, real* y,                 \
                const int* step_y);                                                                          \
  void p##trsv_(const char* triangle, const char* transposed, const char* diagonal, const int* n,            \
                const real* a, const int* lda, real* x, const int* step);
WRAPGAUGE_DENSE_KERNELS(s, float)
WRAPGAUGE_DENSE_KERNELS(d, double)
#undef WRAPGAUGE_DENSE_KERNELS
}

namespace wrapgauge::dense {

template <class Real>
struct Routines;
#define WRAPGAUGE_ROUTINES(p, real)          \
  template <>                                \
  struct Routines<real> {                    \
    static constexpr auto potrf = p##potrf_; \
    static constexpr auto trsm = p##trsm_;   \
    static constexpr auto syrk = p##syrk_;   \
    static constexpr auto gemm = p##gemm_;   \
    static constexpr auto gemv = p##gemv_;   \
    static constexpr auto trsv = p##trsv_;   \
  };
WRAPGAUGE_ROUTINES(s, float)
WRAPGAUGE_ROUTINES(d, double)
#undef WRAPGAUGE_ROUTINES

// A := L of A = L L^T, n x n; false when A is not positive definite.
template <class Real>
bool factor_square(int n, Real* a, int lda) {
  int info = 0;
  Routines<Real>::potrf("L", &n, a, &lda, &info);
  return info == 0;
}

// B := B L^-T, B m x n.
template <class Real>
void divide_by_transposed(int m, int n, const Real* l, int ldl, Real* b, int ldb) {
  const Real one = 1;
  Routines<Real>::trsm("R", "L", "T", "N", &m, &n, &one, l, &ldl, b, &ldb);
}

// C := -A A^T, A n x k.
template <class Real>
void set_to_minus_square(int n, int k, const Real* a, int lda, Real* c) {
  const Real minus_one = -1, zero = 0;
  Routines<Real>::syrk("L", "N", &n, &k, &minus_one, a, &lda, &zero, c, &n);
}

// x := L^-1 x ("N") or L^-T x ("T"), L the lower triangle of the n x n square at `l`; x with `ldx` between
// its columns.
template <class Real>
void solve_triangle(const char* transposed, int n, const Real* l, int ldl, Real* x, int ldx, int count) {
  const int unit_step = 1;
  const Real one = 1;
  if (count == 1)
    Routines<Real>::trsv("L", transposed, "N", &n, l, &ldl, x, &unit_step);
  else
    Routines<Real>::trsm("L", "L", transposed, "N", &n, &count, &one, l, &ldl, x, &ldx);
}

// y := y - M x ("N") or y - M^T x ("T"), M rows x columns.
template <class Real>
void subtract_product(const char* transposed, int rows, int columns, const Real* m, int ldm, const Real* x,
                      int ldx, Real* y, int ldy, int count) {
  const int unit_step = 1;
  const Real one = 1, minus_one = -1;
  if (count == 1) {
    Routines<Real>::gemv(transposed, &rows, &columns, &minus_one, m, &ldm, x, &unit_step, &one, y,
                         &unit_step);
    return;
  }
  const bool plain = *transposed == 'N';
  const int tall = plain ? rows : columns, inner = plain ? columns : rows;
  Routines<Real>::gemm(transposed, "N", &tall, &count, &inner, &minus_one, m, &ldm, x, &ldx, &one, y, &ldy);
}

}  // namespace wrapgauge::dense
