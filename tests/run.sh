#!/usr/bin/env bash
# usage: bash tests/run.sh [SUITE...]     (a suite is a folder name such as GigRig.Domain.Tests; none = all)
# Installs what the tests need, builds, runs every suite, and ends with one line: N passed, N failed.
set -u
cd "$(dirname "$0")/.." || exit 1
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 TESTINGPLATFORM_TELEMETRY_OPTOUT=1

stop() { # what went wrong, before any suite could be counted
  echo "$1" >&2
  echo "0 passed, 1 failed"
  exit 1
}

find_chromium() {
  for name in "${GIGRIG_CHROMIUM:-}" chromium chromium-browser google-chrome; do
    [ -n "$name" ] && command -v "$name" && return
  done
  return 1
}

install_chromium() {
  local sudo=""
  command -v apt-get >/dev/null || return 1
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null && sudo -n true 2>/dev/null || return 1
    sudo="sudo -n"
  fi
  echo "Installing chromium for the browser tests..."
  export DEBIAN_FRONTEND=noninteractive
  $sudo apt-get update -qq >/dev/null && $sudo apt-get install -y -qq --no-install-recommends chromium >/dev/null
}

command -v dotnet >/dev/null || stop "The .NET 10 SDK is missing: install it so that 'dotnet --version' answers 10.0.100 or newer."
dotnet --version >/dev/null || stop "No .NET SDK that fits global.json: install the .NET 10 SDK."

suites=("$@")
if [ ${#suites[@]} -eq 0 ]; then
  for folder in tests/GigRig.*.Tests; do suites+=("$(basename "$folder")"); done
fi

case " ${suites[*]} " in
  *" GigRig.Browser.Tests "*)
    find_chromium >/dev/null || install_chromium || true
    GIGRIG_CHROMIUM=$(find_chromium) || stop "The browser tests need chromium, and it could not be installed here. Run 'sudo apt-get install chromium', or name one in GIGRIG_CHROMIUM."
    export GIGRIG_CHROMIUM
    ;;
esac

results=$PWD/TestResults
rm -rf "$results"
mkdir -p "$results"

# Into a file, and without nodes that stay behind: either would keep a caller's pipe open.
echo "Building..."
if ! dotnet build GigRig.sln -c Release -v quiet -nodeReuse:false >"$results/build.log" 2>&1; then
  grep -E "error" "$results/build.log" | sort -u | head -40 >&2
  stop "The build failed; all of it is in TestResults/build.log."
fi

for suite in "${suites[@]}"; do
  echo "Running $suite..."
  executable=tests/$suite/bin/Release/net10.0/$suite
  # Each suite is given far more than it needs; a hang must not become a hang of the whole run.
  timeout --kill-after=10 1200 "$executable" -noLogo -noColor -noAutoReporters -result-xml "$results/$suite.xml" >"$results/$suite.log" 2>&1
  status=$?
  echo $status >"$results/$suite.exit"
  [ $status -eq 0 ] || grep -v -E "^\s*$" "$results/$suite.log" | tail -n 60
done

exec bash tests/tally.sh "$results" "${suites[@]}"
