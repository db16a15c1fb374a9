#pragma once
// Which front of a multifrontal factorisation takes over from which, where every entry goes, and which two
// halves of the tree are worked on at once: made once for a pattern, after a symbolic analysis elsewhere.
//
// Duff & Reid 1983, "The multifrontal solution of indefinite sparse symmetric linear equations"; the layout
// of supernodes is that of CHOLMOD (Chen, Davis, Hager & Rajamanickam 2008).

#include <cstddef>
#include <vector>

#include "model/inflation/solver_settings.hpp"

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

class FrontTree {
 public:
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
    std::size_t left_over = 0;  // where what is left over lies in its part's arena
  };
  // A part of the tree in its own order, and the room for what its supernodes leave to their parents.
  struct Part {
    std::vector<int> order;  // children before parents
    std::size_t arena_size = 0;
  };
  static constexpr int kTop = 2;  // index of the part that waits for the two others

  FrontTree(const LowerColumns& pattern, SupernodeLayout layout, const FactorSettings& settings = {});

  const SupernodeLayout& layout() const { return layout_; }
  const Front& front(int s) const { return fronts_[s]; }
  const std::vector<Entry>& entries() const { return entries_; }  // by supernode
  const std::vector<Part>& parts() const { return parts_; }       // two that are independent, then the top
  int part_of(int s) const { return part_of_[s]; }
  int columns(int s) const { return layout_.first_column[s + 1] - layout_.first_column[s]; }
  int height(int s) const { return layout_.row_start[s + 1] - layout_.row_start[s]; }
  int rest(int s) const { return height(s) - columns(s); }
  int most_rest() const { return most_rest_; }  // of all fronts

 private:
  void link_tree();
  void map_entries(const LowerColumns& pattern);
  void split_tree(const FactorSettings& settings);
  void place(Part& part);

  SupernodeLayout layout_;
  std::vector<Front> fronts_;
  std::vector<Entry> entries_;
  std::vector<Part> parts_;
  std::vector<int> part_of_;
  int most_rest_ = 0;
};

}  // namespace wrapgauge
