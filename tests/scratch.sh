# Shared by tests that kill a program: a folder that goes at the end, with what still runs in it. Sourced, not run.
fail() {
  echo "FAILED: $1"
  exit 1
}
scratch=$(mktemp -d)
pid=
trap '[ -z "$pid" ] || kill -9 "$pid" 2>/dev/null; rm -rf "$scratch"' EXIT
trap 'exit 1' INT TERM
