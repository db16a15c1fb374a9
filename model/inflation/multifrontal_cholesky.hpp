#pragma once
// The numeric half of a sparse Cholesky factorisation A = L L^T, multifrontal on supernodes, after a symbolic
// analysis made elsewhere. Each supernode's front takes over what its children left to it, factors its own
// columns densely (BLAS) and leaves the rest to its parent. Two halves of the tree are worked on at once;
// every front adds its children up in one order, so the result does not depend on how many threads there are.
//
// Duff & Reid 1983, "The multifrontal solution of indefinite sparse symmetric linear equations"; the layout
// of supernodes is that of CHOLMOD (Chen, Davis, Hager & Rajamanickam 2008).

#include <Eigen/Core>
#include <atomic>
#include <vector>

namespace wrapgauge {

// Lower triangle of A in compressed columns, original order.
struct LowerColumns {
  const std::vector<int>& starts;
  const std::vector<int>& rows;
};

// Supernode s has columns first_column[s] .. first_column[s+1] of L and the rows
// rows[row_start[s] .. row_start[s+1]], its own columns first; its values are a dense block (rows x columns,
// by columns) from value_start[s].
struct SupernodeLayout {
  std::vector<int> first_column, row_start, rows, value_start;
  std::vector<int> permutation;  // column k of L is column permutation[k] of A
  int count() const { return static_cast<int>(first_column.size()) - 1; }
};

class MultifrontalCholesky {
 public:
  MultifrontalCholesky(const LowerColumns& pattern, SupernodeLayout layout);

  // `values`: of A, in the order of the pattern; `factor`: of L, in the layout. False when A is not positive
  // definite; `factor` is then of no use.
  bool factor(const std::vector<double>& values, double* factor);

  // A^-1 times each column of `sides`, by what factor() has filled in.
  Eigen::MatrixXd solve(const double* factor, const Eigen::MatrixXd& sides) const;

 private:
  struct Entry {
    int source, target;  // index into the values of A, of L
  };
  struct Run {
    int from, to, length;  // rows `from`.. of what is left are rows `to`.. of the parent's front
  };
  struct Front {
    int parent = -1;
    std::vector<int> children;
    std::vector<int> in_parent;  // a row left over each: which row of the parent's front
    std::vector<Run> runs;
    int first_entry = 0, last_entry = 0;
    double work = 0.0;          // multiplications, of the whole subtree
    std::size_t left_over = 0;  // where what is left over lies in its arena
  };
  // What supernodes leave to their parents, between the two: a part of the tree in its own order.
  struct Part {
    std::vector<int> order;  // children before parents
    std::vector<double> arena;
  };

  int columns(int s) const { return layout_.first_column[s + 1] - layout_.first_column[s]; }
  int height(int s) const { return layout_.row_start[s + 1] - layout_.row_start[s]; }
  int rest(int s) const { return height(s) - columns(s); }

  void link_tree();
  void map_entries(const LowerColumns& pattern);
  void split_tree();
  void place(Part& part);
  // Stops where `definite` is found false, here or by the other thread.
  void factor_part(const Part& part, const std::vector<double>& values, double* factor,
                   std::atomic<bool>& definite);
  bool factor_front(int s, const std::vector<double>& values, double* factor);
  // L x = x and L^T x = x on the columns of a part, in the order of the factor.
  void forward(const Part& part, const double* factor, Eigen::MatrixXd& x) const;
  void backward(const Part& part, const double* factor, Eigen::MatrixXd& x) const;
  void take_over(int child, double* block, double* rest_of_parent, bool into_columns) const;
  double* left_over(int s) { return parts_[part_of_[s]].arena.data() + fronts_[s].left_over; }
  const double* left_over(int s) const { return parts_[part_of_[s]].arena.data() + fronts_[s].left_over; }

  SupernodeLayout layout_;
  std::vector<Front> fronts_;
  std::vector<Entry> entries_;  // by supernode
  std::vector<Part> parts_;     // two that are independent, then the top of the tree
  std::vector<int> part_of_;    // a supernode each
};

}  // namespace wrapgauge
