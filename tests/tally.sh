#!/usr/bin/env bash
# usage: tally.sh FOLDER NAME...
# Counts the suites named from what they left in FOLDER: NAME.xml (the xunit report) and NAME.exit (the exit status).
# Prints a line a suite and one closing line; exits 1 unless every suite ran at least one test and none failed.
# A suite without a report, with an unreadable one, with no tests, or that ended badly after a clean report counts as one failure.
set -u
folder=$1
shift

# Sum of one attribute over all <assembly ...> elements of a report.
sum_of() {
  grep -o '<assembly [^>]*>' "$2" | grep -o " $1=\"[0-9]*\"" | tr -dc '0-9\n' | awk '{ n += $1 } END { print n + 0 }'
}

# Results one by one, so that a total that does not match its tests is noticed.
results_of() {
  grep -o "<test [^>]* result=\"$1\"" "$2" | wc -l
}

passed=0 failed=0 skipped=0
for name in "$@"; do
  report=$folder/$name.xml
  status=$(cat "$folder/$name.exit" 2>/dev/null || echo "none")
  note=""
  p=0 f=0 s=0
  if [ ! -s "$report" ]; then
    f=1 note="no report, exit status $status"
  elif ! grep -q '</assemblies>' "$report"; then
    f=1 note="the report is cut short, exit status $status"
  else
    p=$(results_of Pass "$report")
    f=$(results_of Fail "$report")
    s=$(results_of Skip "$report")
    errors=$(sum_of errors "$report")
    if [ "$errors" -gt 0 ]; then f=$((f + errors)) note="$errors error(s) outside the tests"; fi
    if [ $((p + f)) -eq 0 ]; then f=1 note="not one test ran"; fi
    if [ "$p" -ne "$(sum_of passed "$report")" ]; then f=$((f + 1)) note="the report's total disagrees with its tests"; fi
    if [ "$status" != 0 ] && [ "$f" -eq 0 ]; then f=1 note="ended with exit status $status"; fi
  fi
  passed=$((passed + p)) failed=$((failed + f)) skipped=$((skipped + s))
  line="$name: $p passed, $f failed"
  [ "$s" -eq 0 ] || line="$line, $s skipped"
  [ -z "$note" ] || line="$line ($note)"
  echo "$line"
done
[ $# -gt 0 ] || { failed=1; echo "no suite was named"; }

closing="$passed passed, $failed failed"
[ "$skipped" -eq 0 ] || closing="$closing, $skipped skipped"
echo "$closing"
[ "$failed" -eq 0 ]
