#!/usr/bin/env bash
# Reads files that others made, and seeded changes of them, as the program does, and looks at how each reading ends.
#
#   src/test/scripts/foreign-files.sh FOLDER... [--mutations N] [--seed S]
#
# All PDF, SVG, YAML and raster files in the folders are read, at any depth, each as it is and N times changed (not at all if not
# said): cut short, bits flipped, bytes inserted, streams damaged. A worker process with a heap of 512 MB reads them; one that
# hangs or dies is replaced. A file must be read, or refused in one line, within 10 s of processor time. What each came to
# stands in target/foreign/*.tsv, beside the changed copies that ended badly. Ends with 1 if any did.
#
# The classes must be compiled: mvn test-compile.
#
#   CLASSPATH   of libraries and compiled classes, if Maven is not to be asked
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../../.." && pwd)
[ $# -gt 0 ] || { sed -n '2,/^set/{/^#/s/^# \{0,1\}//p}' "${BASH_SOURCE[0]}" >&2; exit 2; }
folder=target/foreign
libraries=$root/target/foreign-classpath.txt
mkdir -p "$root/$folder"
if [ -z "${CLASSPATH:-}" ]; then
  [ "$libraries" -nt "$root/pom.xml" ] ||
    mvn --offline --quiet --file "$root/pom.xml" dependency:build-classpath -Dmdep.outputFile="$libraries"
  CLASSPATH=$root/target/test-classes:$root/target/classes:$(cat "$libraries")
fi
export CLASSPATH

code=0
for class in ForeignFiles ForeignRasters; do
  name=org/adumbrate/hostile/$class.class
  [ -e "$root/target/test-classes/$name" ] || continue
  java -Xmx256m -Djava.awt.headless=true "org.adumbrate.hostile.$class" "$@" || code=1
done
exit $code
