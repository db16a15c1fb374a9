#pragma once
// Which inputs matter to a result, from the runs of a sample. Ranks stand for values, so any rising or
// falling relation counts as a straight one: Iman & Conover 1979, Technometrics 21:499.

#include <Eigen/Core>
#include <vector>

namespace wrapgauge {

struct Influence {
  int input = 0;             // column of the sample
  double correlation = 0.0;  // of ranks (Spearman), -1..1
  double regression = 0.0;   // standardised coefficient of the regression of ranks on all inputs together
};

struct InfluenceRanking {
  std::vector<Influence> inputs;  // by the size of `regression`, largest first; ties by column
  double explained = 0.0;         // share of the ranks' variance that the regression explains, 0..1
};

// `sample`: a row a run, a column an input. More runs than inputs + 1; else the regression has no answer and
// the correlation stands in its place. A result that never changes has no influences: all zero.
InfluenceRanking rank_influence(const Eigen::MatrixXd& sample, const Eigen::VectorXd& result);

// A rank correlation smaller than this may be chance, 19 times in 20: 1.96 / sqrt(runs - 1), the normal
// approximation for unrelated ranks (Kendall & Gibbons 1990, from memory).
double chance_correlation(int runs);

// 1-based ranks; equal values share their mean rank.
Eigen::VectorXd ranks(const Eigen::VectorXd& values);

}  // namespace wrapgauge
