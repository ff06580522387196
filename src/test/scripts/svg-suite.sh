#!/usr/bin/env bash
# Compares the strokes that are read of SVG files with what two other programs draw of them.
#
#   src/test/scripts/svg-suite.sh FOLDER [TARGET [plain|swapped]]
#
# FOLDER holds the files, at any depth: resvg's test suite (github.com/linebender/resvg, crates/resvg/tests/tests; structure,
# painting, shapes, masking) is what this was written for. Nothing of it is committed. Each file is drawn twice by rsvg-convert and
# by a headless Chromium, as it is and with every stroke switched off (an !important rule); where the two pictures differ, they
# show strokes. What the program reads is drawn over the second and compared with the first: so areas that are painted over
# strokes count as they should, and fills do not count at all. As most files of that suite fill and do not stroke, each is
# compared a second time with its fills made strokes and its strokes fills (swapped); one of the two alone if named.
#
# Prints how many files fall into each class, and writes TARGET/files.tsv (target/svg-suite if not said): variant, class, file,
# pixels missing and too many by Chromium and by librsvg, what is told. Pictures lie beside it and are kept for the next run.
#
# The classes must be compiled: mvn test-compile.
#
#   CLASSPATH   of libraries and compiled classes, if Maven is not to be asked
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
[ $# -gt 0 ] || { sed -n '2,/^set/{/^#/s/^# \{0,1\}//p}' "${BASH_SOURCE[0]}" >&2; exit 2; }
libraries=$root/target/suite-classpath.txt
mkdir -p "$root/target"
if [ -z "${CLASSPATH:-}" ]; then
  [ "$libraries" -nt "$root/pom.xml" ] ||
    mvn --offline --quiet --file "$root/pom.xml" dependency:build-classpath -Dmdep.outputFile="$libraries"
  CLASSPATH=$root/target/test-classes:$root/target/classes:$(cat "$libraries")
fi
export CLASSPATH
exec java -Xmx512m -Djava.awt.headless=true org.adumbrate.svgsuite.SuiteRun "$1" "${2:-$root/target/svg-suite}" ${3:+"$3"}
