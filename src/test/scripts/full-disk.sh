#!/usr/bin/env bash
# Builds onto full disks and into folders that cannot be written, and looks at what is told and what stands afterwards.
#
#   src/test/scripts/full-disk.sh
#
# A disk is a file system in memory of one megabyte, for which mounting must be allowed; where it is not, that part is
# skipped with a message. Each attempt must end with exit code 3 and one line that names the file, the old output must be
# as it was, and nothing unfinished may be left.
#
#   ADUMBRATE   the launcher, if not that of the tree
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
adumbrate=${ADUMBRATE:-$root/adumbrate}
yard=$(mktemp -d)
small=$yard/small
mounted=
attempts=0
clean_up() {
  [ -z "$mounted" ] || umount "$small"
  rm -rf "$yard"
}
trap clean_up EXIT
mkdir "$small"
find "$root/passes/kiln-yard" -maxdepth 1 -type f -exec cp -t "$yard" {} +
sed -i '/^deliver:/,$d' "$yard/kiln-yard.sheet.yaml"

# sheet FOLDER: a sheet file that delivers one of everything there
sheet() {
  cp "$yard/kiln-yard.sheet.yaml" "$yard/all.sheet.yaml"
  cat >>"$yard/all.sheet.yaml" <<END
deliver:
  underlay: $1/underlay.tif
  figure-shadow: $1/figure-shadow.png
  drawing: $1/drawing.pdf
  svg: $1/drawing.svg
  flat: $1/flat.png
  preview: $1/preview.png
  report: $1/report.html
END
}
fail() {
  echo "$*" >&2
  cat "$yard/told" >&2
  exit 1
}
# told NAME COMMAND...: the command must fail as told above, and name NAME
told() {
  local name=$1 code=0
  shift
  "$@" >"$yard/out-of-it" 2>"$yard/told" || code=$?
  attempts=$((attempts + 1))
  [ "$code" = 3 ] || fail "$name: ended with $code"
  [ "$(wc -l <"$yard/told")" = 1 ] || fail "$name: not told in one line"
  # by its stem, as an SVG has its underlay in a file of its own
  grep -qF "${name%.*}" "$yard/told" || fail "$name: is not named"
  [ -z "$(find "$yard" -name '*.part' -o -name 'adumbrate-*' | head -1)" ] || fail "$name: left something unfinished"
}
# keeps FILE COMMAND...: as told, and an old FILE stays as it was
keeps() {
  local file=$1
  shift
  echo old >"$file"
  told "$(basename "$file")" "$@"
  [ "$(cat "$file")" = old ] || fail "$file: the old file was touched"
}
declare -A items=([underlay.tif]=underlay [figure-shadow.png]=figure-shadow [drawing.pdf]=drawing [drawing.svg]=svg
  [flat.png]=flat [preview.png]=preview [report.html]=report)

# A file in the way of a folder, which stops an administrator too.
echo "in the way" >"$yard/way"
sheet way
for file in "${!items[@]}"; do
  told "$file" "$adumbrate" build "$yard/all.sheet.yaml" --quiet --dpi 50 --only "${items[$file]}"
done
told result.json "$adumbrate" lines "$yard/lines.pdf" --json "$yard/way/result.json"
told first.sheet.yaml "$adumbrate" start "$yard" --output "$yard/way/first.sheet.yaml"

# A folder without the right to write, for people who are no administrators.
if [ "$(id -u)" != 0 ]; then
  mkdir "$yard/locked"
  sheet locked
  for file in "${!items[@]}"; do
    echo old >"$yard/locked/$file"
  done
  chmod a-w "$yard/locked"
  for file in "${!items[@]}"; do
    told "$file" "$adumbrate" build "$yard/all.sheet.yaml" --quiet --dpi 50 --only "${items[$file]}"
    [ "$(cat "$yard/locked/$file")" = old ] || fail "$file: the old file was touched"
  done
  chmod u+w "$yard/locked"
fi

if ! mount -t tmpfs -o size=1m none "$small" 2>/dev/null; then
  echo "$attempts attempts told in one line each; full disks skipped, as nothing may be mounted here"
  exit 0
fi
mounted=yes
fill() { dd if=/dev/zero of="$small/rest" bs=4k 2>/dev/null || true; }

# 16 kB are left to begin with, so that the disk is full in the midst of it.
sheet small
for file in "${!items[@]}"; do
  rm -f "$small"/*
  echo old >"$small/$file"
  dd if=/dev/zero of="$small/kept" bs=4k count=4 2>/dev/null
  fill
  rm "$small/kept"
  keeps "$small/$file" "$adumbrate" build "$yard/all.sheet.yaml" --quiet --dpi 150 --only "${items[$file]}"
done

# Not a byte is left.
rm -f "$small"/*
echo old >"$small/result.json"
fill
old=$(sha256sum "$small/result.json")
told result.json "$adumbrate" lines "$yard/lines.pdf" --quiet --json "$small/result.json"
[ "$(sha256sum "$small/result.json")" = "$old" ] || fail "result.json: the old file was touched"
told first.sheet.yaml "$adumbrate" start "$yard" --quiet --output "$small/first.sheet.yaml"
told "standard output" bash -c "'$adumbrate' schema >'$small/rest2'"

# The temporary folder is full: a pass that is turned, as its Exif says, is needed whole, and is larger than the heap allows.
{
  printf '\xff\xd8\xff\xe1\x00\x22Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x03\0\0\0\0\0\0'
  tail -c +3 "$yard/shadow.jpg"
} >"$yard/turned.jpg"
export ADUMBRATE_JAVA_OPTS="-Djava.io.tmpdir=$small -Xmx60m"
merge() {
  "$adumbrate" merge --quiet --size 17x11in --dpi 100 --shadow "$yard/turned.jpg" --occlusion "$yard/turned.jpg" \
    --output "$yard/underlay.tif"
}
echo old >"$yard/underlay.tif"
told "temporary folder" merge
[ "$(cat "$yard/underlay.tif")" = old ] || fail "underlay.tif: the old file was touched"
rm -f "$small"/*
umount "$small"
mount -t tmpfs -o size=64m none "$small"
merge || fail "merging fails where the temporary folder has room"
[ -z "$(find "$small" -mindepth 1)" ] || fail "the temporary folder is not empty afterwards"
echo "$attempts attempts, each told in one line: old outputs intact, nothing unfinished left"
