#!/usr/bin/env bash
# Kills builds at random moments and looks at what stands afterwards.
#
#   src/test/scripts/kills.sh [N]
#
# Copies the demo to a temporary folder, builds once, then N times (default 200) starts a build and kills its process at a
# random moment. After each kill every output must be the old one or the new one, whole, inputs must be as they were, and
# the build that follows must succeed. In the end nothing that the killed ones left may remain.
#
#   ADUMBRATE   the launcher, if not that of the tree
set -euo pipefail

kills=${1:-200}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
adumbrate=${ADUMBRATE:-$root/adumbrate}
yard=$(mktemp -d)
trap 'rm -rf "$yard"' EXIT
find "$root/passes/kiln-yard" -maxdepth 1 -type f -exec cp -t "$yard" {} +
sheet=$yard/kiln-yard.sheet.yaml

# The resolutions differ from run to run, so that a new output is not the old one.
low=60
high=72
build() { "$adumbrate" build "$sheet" --only preview,underlay,drawing --quiet --dpi "$1"; }
sums() { (cd "$yard" && sha256sum -- "$@"); }
inputs() { (cd "$yard" && find . -maxdepth 1 -type f -print0 | sort -z | xargs -0 sha256sum); }
parts() { find "$yard" -name '.*.part'; }
fail() {
  echo "after $done_kills kills: $*" >&2
  exit 1
}

done_kills=0
declare -A whole
outputs=(out/underlay.tif out/kiln-yard.pdf out/preview.png)
for dpi in "$high" "$low"; do
  begin=$(date +%s%N)
  build "$dpi"
  last=$((($(date +%s%N) - begin) / 1000000))
  while read -r line; do whole[$line]=yes; done < <(sums "${outputs[@]}")
done
before=$(inputs)

early=0
left=0
while [ "$done_kills" -lt "$kills" ]; do
  # The launcher becomes the Java machine, so that this is its process.
  "$adumbrate" build "$sheet" --only preview,underlay,drawing --quiet --dpi "$high" &
  run=$!
  wait_ms=$(((RANDOM * 32768 + RANDOM) % (last * 11 / 10)))
  sleep "$((wait_ms / 1000)).$(printf %03d $((wait_ms % 1000)))"
  kill -KILL "$run" 2>/dev/null || true
  code=0
  wait "$run" 2>/dev/null || code=$?
  done_kills=$((done_kills + 1))
  case $code in
    0) ;;
    137) early=$((early + 1)) ;;
    *) fail "a build ended with $code" ;;
  esac
  while read -r line; do
    [ -n "${whole[$line]:-}" ] || fail "neither the old output nor the new: $line"
  done < <(sums "${outputs[@]}")
  [ "$(inputs)" = "$before" ] || fail "an input was touched"
  now=$(parts | wc -l)
  [ $((now - left)) -le 3 ] || fail "one run left $((now - left)) unfinished files"
  left=$now
  [ $((done_kills % 20)) -ne 0 ] || echo "$done_kills kills" >&2
  build "$low" || fail "the build that follows does not succeed"
done

# Parts count as dead when nobody wrote to them for ten minutes.
parts | while read -r part; do touch -d '1 hour ago' "$part"; done
build "$low"
[ -z "$(parts)" ] || fail "left behind: $(parts)"
echo "$done_kills kills, $early of them before the build was done, $left unfinished files left by them and cleared away:" \
  "no half output, no input touched, every build that followed succeeded"
