#!/bin/sh
# A study of many runs as a Slurm job array: every task solves one part of it. All tasks share the folder given
# with --out; whoever ends last finds every run there and writes the results.
#
#   sbatch --array=1-8 slurm-array.sh people cuff.json --list people.csv --out /shared/who
#
# A task that was stopped or lost is sent again with the same line: finished runs are not solved twice. Time and
# memory below are for a few hundred runs a task; WRAPGAUGE names the program where it is not on the path.
#SBATCH --job-name=wrapgauge
#SBATCH --cpus-per-task=2
#SBATCH --mem=1G
#SBATCH --time=04:00:00
set -u

"${WRAPGAUGE:-wrapgauge}" "$@" --part "$SLURM_ARRAY_TASK_ID/$SLURM_ARRAY_TASK_COUNT"
code=$?
# 4: every run is there, and something is above a limit. That is an answer and no failed task.
[ "$code" -eq 4 ] && code=0
exit "$code"
