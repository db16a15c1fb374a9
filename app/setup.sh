# Shared by app/demo.sh and tests/run.sh: installs what is missing and builds. Sourced, not run.
# Needs: root=<folder of the checkout>.

say() { printf '%s\n' "$*" >&2; }

install_missing() {
  missing=""
  for package in $(grep -v '^#' "$root/resources/debian-packages.txt") "$@"; do
    dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing="$missing $package"
  done
  [ -z "$missing" ] && return 0
  as_root=""
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { say "These packages are missing and neither root nor sudo is at hand:$missing"; exit 2; }
    as_root=sudo
  fi
  say "Installing:$missing"
  $as_root apt-get update -qq
  # shellcheck disable=SC2086
  DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq --no-install-recommends $missing >&2
}

# build PRESET [TARGET...]: configures once, builds with all cores; seconds when nothing changed.
build() {
  preset=$1
  shift
  [ -f "$root/build/$preset/build.ninja" ] || (cd "$root" && cmake --preset "$preset" >&2)
  [ "$#" -gt 0 ] || set -- all
  cmake --build "$root/build/$preset" --target "$@" >&2
}
