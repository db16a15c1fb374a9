#!/bin/sh
# A study in parts on the real programs that hand out work: Slurm on one node with a configuration of its own in
# a scratch folder, started and stopped here, and GNU parallel. The bytes are those of one run on this machine.
#
#   sh cluster_test.sh slurm|parallel PROGRAM SOURCE_FOLDER
set -u
kind=$1 program=$2 source=$3
plan=$source/resources/plans/forearm-cuff.json
study="spread $plan --edge-mm 20 --preview-mm 20 --runs 8"

skip() {
  echo "SKIPPED, NOT TRIED: $1 is not installed, so parts on $kind were not checked."
  exit 77
}
fail() {
  echo "FAILED: $1"
  exit 1
}
same_bytes() {
  for name in spread.json spread.md; do
    cmp "$scratch/alone/$name" "$1/$name" || fail "$name differs from that of one run"
  done
  [ "$(cat "$1"/runs/part-*-of-4.jsonl | wc -l)" -eq "$(cat "$scratch/alone/runs/part-1-of-1.jsonl" | wc -l)" ] ||
    fail "the parts did not keep each run once"
  [ "$(ls "$1"/runs | wc -l)" -eq 4 ] || fail "there are not four parts"
}

scratch=$(mktemp -d)
stop_all() {
  for daemon in slurmd slurmctld; do
    [ -s "$scratch/$daemon.pid" ] || continue
    pid=$(cat "$scratch/$daemon.pid")
    kill "$pid" 2>/dev/null
    while kill -0 "$pid" 2>/dev/null; do sleep 0.2; done
  done
  rm -rf "$scratch"
}
trap stop_all EXIT
trap 'exit 1' INT TERM

alone() {
  "$program" $study --out "$scratch/alone" >/dev/null
  code=$?
  [ "$code" -eq 0 ] || [ "$code" -eq 4 ] || fail "the study alone ended with $code"
}

on_parallel() {
  command -v parallel >/dev/null || skip "GNU parallel"
  alone
  parallel -j 2 --no-notice "$program" $study --out "$scratch/parts" --part {}/4 ::: 1 2 3 4 >/dev/null </dev/null
  same_bytes "$scratch/parts"
}

on_slurm() {
  for name in slurmctld slurmd sbatch; do
    command -v $name >/dev/null || skip "slurm-wlm"
  done
  [ "$(id -u)" -eq 0 ] || skip "slurm-wlm for a user who is not root"
  host=$(hostname -s) port=$((20000 + $$ % 20000))
  mkdir "$scratch/state" "$scratch/spool"
  cat >"$scratch/slurm.conf" <<CONF
ClusterName=scratch
SlurmctldHost=$host(127.0.0.1)
SlurmUser=root
SlurmdUser=root
AuthType=auth/none
CredType=cred/none
SlurmctldPort=$port
SlurmdPort=$((port + 1))
StateSaveLocation=$scratch/state
SlurmdSpoolDir=$scratch/spool
SlurmctldPidFile=$scratch/slurmctld.pid
SlurmdPidFile=$scratch/slurmd.pid
SlurmctldLogFile=$scratch/slurmctld.log
SlurmdLogFile=$scratch/slurmd.log
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
MpiDefault=none
NodeName=$host NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=scratch Nodes=ALL Default=YES MaxTime=INFINITE State=UP
CONF
  export SLURM_CONF="$scratch/slurm.conf" WRAPGAUGE="$program"
  slurmctld -c || fail "slurmctld did not start"
  slurmd -c || fail "slurmd did not start"
  tries=0
  until sinfo -h -o %t 2>/dev/null | grep -q idle; do
    tries=$((tries + 1))
    [ "$tries" -lt 120 ] || fail "the node did not come up: $(cat "$scratch/slurmd.log")"
    sleep 0.5
  done
  alone
  sbatch --wait --array=1-4 --mem=0 --output="$scratch/task-%a.txt" "$source/resources/cluster/slurm-array.sh" \
    $study --out "$scratch/parts" || fail "the job array failed: $(cat "$scratch"/task-*.txt)"
  same_bytes "$scratch/parts"
}

case $kind in
  slurm) on_slurm ;;
  parallel) on_parallel ;;
  *) fail "'$kind' is neither slurm nor parallel" ;;
esac
echo "Four parts on $kind gave the bytes of one run."
