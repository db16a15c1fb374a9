#!/usr/bin/env bash
# Builds the Debian packages, has lintian read them, and tries them on a bare Debian 12 that is made for it in a temporary
# folder: installed with apt they run a demo plan and open the window, purged they leave nothing behind. By hand, as
# root: it takes some minutes and a mirror of Debian. What cannot be tried here is said, with exit code 77.
#
#   bash tests/package/run.sh [FOLDER]     the packages of that folder instead of newly built ones
#   MIRROR=URL  a mirror of Debian; the first of this machine's apt if not given
#   ROOT=DIR    a bare Debian 12 that is there already; it is copied
set -euo pipefail
root=$(cd "$(dirname "$0")/../.." && pwd)
build=$root/build/package
packages=${1:-$build}

skip() { echo "SKIPPED, NOT TRIED: $*"; exit 77; }
fail() { echo "FAILED: $*"; exit 1; }
step() { printf '\n== %s (%ss)\n' "$*" "$SECONDS"; }

[ "$(id -u)" -eq 0 ] || skip "a bare Debian can only be made by root"
for tool in lintian debootstrap chroot; do command -v $tool >/dev/null || skip "$tool is missing: apt-get install lintian debootstrap"; done

if [ $# -eq 0 ]; then
  step "packages"
  cmake --preset package >/dev/null
  cmake --build "$build" --target package_files
  (cd "$build" && rm -f ./*.deb && cpack -B "$build" >/dev/null)
fi
cli=$(ls "$packages"/wrapgauge_*.deb) desk=$(ls "$packages"/wrapgauge-desk_*.deb)
for package in "$cli" "$desk"; do
  dpkg-deb --info "$package" | sed -n '/ Package:/,$p'
  dpkg-deb --contents "$package" | awk '{print $1, $3, $6}'
done

step "lintian"
lintian --allow-root --fail-on error "$cli" "$desk"

place=$(mktemp -d)
bare=$place/root
mounted=
clean_up() {
  [ -z "$mounted" ] || umount "$bare/proc"
  rm -rf --one-file-system "$place"
}
trap clean_up EXIT
trap 'exit 1' INT TERM

step "bare Debian 12"
if [ -n "${ROOT:-}" ]; then
  cp -a "$ROOT" "$bare"
else
  mirror=${MIRROR:-$(apt-get indextargets --format '$(SITE)' 2>/dev/null | head -1)}
  [ -n "$mirror" ] || skip "no mirror of Debian is known: give MIRROR"
  debootstrap --variant=minbase bookworm "$bare" "$mirror" >"$place/debootstrap.txt" 2>&1 ||
    { tail -3 "$place/debootstrap.txt"; skip "no bare Debian could be made from $mirror"; }
fi
cp /etc/resolv.conf "$bare/etc/resolv.conf"
for file in /etc/apt/apt.conf.d/*; do grep -qi 'acquire' "$file" && cp "$file" "$bare/etc/apt/apt.conf.d/"; done
# The same mirrors as here, with the security updates.
if [ -f /etc/apt/sources.list.d/debian.sources ]; then
  cp /etc/apt/sources.list.d/debian.sources "$bare/etc/apt/sources.list.d/"
  : >"$bare/etc/apt/sources.list"
fi
mount -t proc proc "$bare/proc" && mounted=yes
inside() { chroot "$bare" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"; }
inside apt-get update -qq
# A screen that is not there, and what looks at it, are no part of the packages.
inside apt-get install -y -qq --no-install-recommends xvfb xauth x11-utils shared-mime-info >/dev/null 2>&1 || fail "Xvfb does not install"
files() { (cd "$bare" && find . -xdev \( -path ./proc -o -path ./tmp -o -path ./var/cache -o -path ./var/log -o -path ./var/lib/apt -o -path ./var/lib/dpkg \) -prune -o -print | sort); }
files >"$place/before"

step "apt install"
cp "$cli" "$bare/tmp/"
inside sh -c 'cd /tmp && apt-get install -y -qq --no-install-recommends ./wrapgauge_*.deb' >"$place/install.txt" 2>&1 || { tail -5 "$place/install.txt"; fail "wrapgauge does not install"; }
inside wrapgauge --version
inside wrapgauge demo /tmp/demo
code=0
inside wrapgauge estimate /tmp/demo/plans/forearm-cuff.json --out /tmp/cuff --note || code=$?
case $code in 0 | 4 | 5) ;; *) fail "the demo plan ended with $code" ;; esac
for file in manifest.json summary.json summary.md chambers.csv body.vtp layout.vtp body.png layout.png note.pdf note.html note.md; do
  [ -s "$bare/tmp/cuff/$file" ] || fail "$file was not written"
done
[ -s "$bare/usr/share/man/man1/wrapgauge.1.gz" ] || fail "the page of the manual is missing"

step "the window under Xvfb"
cp "$desk" "$bare/tmp/"
inside sh -c 'cd /tmp && apt-get install -y -qq --no-install-recommends ./wrapgauge-desk_*.deb libgl1-mesa-dri' >"$place/install.txt" 2>&1 || { tail -5 "$place/install.txt"; fail "wrapgauge-desk does not install"; }
inside xvfb-run -a -s "-screen 0 1400x900x24" sh -c '
  wrapgauge-desk /tmp/demo/plans/forearm-cuff.json >/tmp/window.txt 2>&1 & window=$!
  for try in $(seq 240); do
    if xwininfo -root -tree 2>/dev/null | grep -i "forearm-cuff" >/tmp/seen.txt; then break; fi
    kill -0 $window 2>/dev/null || break
    sleep 0.5
  done
  cat /tmp/seen.txt; kill $window; wait $window 2>/dev/null
  [ -s /tmp/seen.txt ]' || { cat "$bare/tmp/window.txt"; fail "the window did not open with the plan"; }
inside sh -c 'grep -q x-wrapgauge-plan /usr/share/mime/types' || fail "the type of plans is not known to the desktop"

step "purge"
inside apt-get purge -y -qq wrapgauge wrapgauge-desk >/dev/null 2>&1
inside apt-get autoremove --purge -y -qq >/dev/null 2>&1
left=$(find "$bare" -xdev -path "$bare/tmp" -prune -o -path "$bare/proc" -prune -o -path "$bare/root" -prune -o -iname '*wrapgauge*' -print)
[ -z "$left" ] || fail "purged, and still there: $left"
files >"$place/after"
new=$(comm -13 "$place/before" "$place/after" | grep -v -e '^./root' || true)
[ -z "$new" ] || printf 'left by packages it depends on:\n%s\n' "$new"
echo "The packages install, run the demo plan, open the window and go without a trace."
