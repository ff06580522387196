#!/usr/bin/env bash
# Kills edits at random moments and looks at what stands afterwards.
#
#   src/test/scripts/edit-kills.sh [N]
#
# Copies the demo's sheet file and its exports to a temporary folder, then N times (default 100) starts an edit and kills its process
# at a random moment. After each kill the sheet file must be the old one or the new one, whole, and exports must be as they were;
# then the edit is made or undone as if nothing had happened. In the end all is undone and the first bytes must stand there.
#
#   ADUMBRATE   the launcher, if not that of the tree
set -euo pipefail

kills=${1:-100}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
adumbrate=${ADUMBRATE:-$root/adumbrate}
yard=$(mktemp -d)
trap 'rm -rf "$yard"' EXIT
find "$root/passes/kiln-yard" -maxdepth 1 -type f -exec cp -t "$yard" {} +
sheet=$yard/kiln-yard.sheet.yaml
first=$yard/first
cp "$sheet" "$first"
exports() { (cd "$yard" && find . -maxdepth 1 -type f ! -name '*.sheet.yaml' ! -name '.*.part' -print0 | sort -z | xargs -0 sha256sum); }
fail() {
  echo "after $done_kills kills: $*" >&2
  exit 1
}

done_kills=0
before=$(exports)
begin=$(date +%s%N)
"$adumbrate" edit "$sheet" passes.shadow.opacity 70 --quiet
last=$((($(date +%s%N) - begin) / 1000000))
cp "$sheet" "$yard/second"
"$adumbrate" edit "$sheet" --undo --quiet
cmp -s "$sheet" "$first" || fail "undoing does not give the first bytes"
before=$(exports)

early=0
landed=0
while [ "$done_kills" -lt "$kills" ]; do
  # The launcher becomes the Java machine, so that this is its process.
  "$adumbrate" edit "$sheet" passes.shadow.opacity 70 --quiet &
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
    *) fail "an edit ended with $code" ;;
  esac
  if cmp -s "$sheet" "$yard/second"; then
    landed=$((landed + 1))
    "$adumbrate" edit "$sheet" --undo --quiet || fail "what was written cannot be undone"
  fi
  cmp -s "$sheet" "$first" || fail "neither the old sheet file nor the new"
  [ "$(exports)" = "$before" ] || fail "an export was touched"
  [ $((done_kills % 20)) -ne 0 ] || echo "$done_kills kills" >&2
done

# Parts count as dead when nobody wrote to them for ten minutes.
find "$yard" -name '.*.part' -exec touch -d '1 hour ago' {} +
"$adumbrate" edit "$sheet" passes.shadow.opacity 70 --quiet
"$adumbrate" edit "$sheet" --undo --quiet
cmp -s "$sheet" "$first" || fail "undoing does not give the first bytes"
[ -z "$(find "$yard" -name '.*.part')" ] || fail "left behind: $(find "$yard" -name '.*.part')"
echo "$done_kills kills, $early of them before the edit was done, $landed with the new file in place: no half sheet file, no export" \
  "touched, everything undone"
