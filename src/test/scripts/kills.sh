#!/usr/bin/env bash
# Kills builds at random moments and looks at what stands afterwards.
#
#   src/test/scripts/kills.sh [N]
#
# Copies the demo to a temporary folder, builds everything that a sheet can deliver, then N times (default 200) starts such a
# build and kills its process at a random moment. After each kill every output, the result as JSON among them, must be the
# old one or the new one, whole, inputs must be as they were, and the build that follows must succeed, give the bytes of a
# fresh one, whatever the killed one kept, and leave nothing unfinished.
#
#   ADUMBRATE   the launcher, if not that of the tree
#   RESOLUTION  of the builds that are killed, in pixels per inch (72 if not said)
#   MINUTES     to stop after, if N is not reached by then
set -euo pipefail

kills=${1:-200}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
adumbrate=${ADUMBRATE:-$root/adumbrate}
yard=$(mktemp -d)
trap 'rm -rf "$yard"' EXIT
find "$root/passes/kiln-yard" -maxdepth 1 -type f -exec cp -t "$yard" {} +
sheet=$yard/kiln-yard.sheet.yaml
sed -i '/^deliver:/,$d' "$sheet"
cat >>"$sheet" <<END
deliver:
  underlay: out/underlay.tif
  figure-shadow: out/figure-shadow.png
  drawing: out/drawing.pdf
  svg: out/drawing.svg
  flat: out/flat.png
  preview: { file: out/preview.png, width: 800 px }
  report: out/report.html
END
outputs=(out/underlay.tif out/figure-shadow.png out/drawing.pdf out/drawing.svg out/drawing-underlay.png out/flat.png
  out/preview.png out/report.html)

# The resolutions differ from run to run, so that a new output is not the old one.
high=${RESOLUTION:-72}
low=$((high * 5 / 6))
build() { "$adumbrate" build "$sheet" --quiet --json "$yard/out/result.json" --dpi "$@"; }
sums() { (cd "$yard" && sha256sum -- "${outputs[@]}"); }
inputs() { (cd "$yard" && find . -maxdepth 1 -type f -print0 | sort -z | xargs -0 sha256sum); }
parts() { find "$yard" -name '.*.part'; }
fail() {
  echo "after $done_kills kills: $*" >&2
  exit 1
}
# a result tells seconds and so is never the same; a whole one is one line that ends as it must
is_whole() { [ "$(wc -l <"$1")" = 1 ] && [[ $(head -c 1 "$1")$(tail -c 2 "$1") == '{}' ]]; }

done_kills=0
declare -A whole fresh
for dpi in "$high" "$low"; do
  begin=$(date +%s%N)
  build "$dpi" --anew
  last=$((($(date +%s%N) - begin) / 1000000))
  fresh[$dpi]=$(sums)
  while read -r line; do whole[$line]=yes; done <<<"${fresh[$dpi]}"
done
before=$(inputs)

early=0
left=0
until_s=$((SECONDS + ${MINUTES:-100000} * 60))
while [ "$done_kills" -lt "$kills" ] && [ "$SECONDS" -lt "$until_s" ]; do
  # Every third has what earlier ones kept, every third some of it, every third nothing.
  case $((done_kills % 3)) in
    1) find "$yard/out/.adumbrate-kept" -name '*[02468ace].kept' -delete 2>/dev/null || true ;;
    2) rm -rf "$yard/out/.adumbrate-kept" ;;
  esac
  # The launcher becomes the Java machine, so that this is its process.
  "$adumbrate" build "$sheet" --quiet --json "$yard/out/result.json" --dpi "$high" &
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
  done < <(sums)
  is_whole "$yard/out/result.json" || fail "half a result as JSON"
  [ "$(inputs)" = "$before" ] || fail "an input was touched"
  left=$((left + $(parts | wc -l)))
  begin=$(date +%s%N)
  build "$low" || fail "the build that follows does not succeed"
  [ $((done_kills % 3)) -ne 0 ] || last=$(((2 * last + ($(date +%s%N) - begin) / 1000000) / 3))
  [ "$(sums)" = "${fresh[$low]}" ] || fail "the build that follows differs from a fresh one"
  [ -z "$(parts)" ] || fail "left behind: $(parts)"
  [ $((done_kills % 20)) -ne 0 ] || echo "$done_kills kills, $early before the build was done" >&2
done
echo "$done_kills kills, $early of them before the build was done, $left unfinished files left by them and cleared away by the" \
  "next build: no half output, no input touched, every build that followed gave the bytes of a fresh one"
