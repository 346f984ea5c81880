#!/usr/bin/env bash
# Runs every test of every project and ends with one line: "N passed, N failed".
#
#   bash tests/run.sh          everything but the slow tier
#   bash tests/run.sh --long   the slow tier too (tests with the trait Tier=Long)
#
# Needs the .NET SDK, and root or sudo the first time, for the Debian packages the tests use. Counts are read from the
# result files the test runner writes, so a test host that dies, a project that does not build and a project in which
# no test ran are all failed runs.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.." || exit 1

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_GENERATE_ASPNET_CERTIFICATE=false
# No build process may outlive the run and hold its output open.
export MSBUILDDISABLENODEREUSE=1 DOTNET_CLI_USE_MSBUILD_SERVER=0

passed=0
failed=0

finish() {
  printf '%d passed, %d failed\n' "$passed" "$failed"
  [ "$failed" -eq 0 ]
  exit
}

give_up() {
  printf '\nNo tests were run: %s\n' "$1"
  failed=1
  finish
}

filter=(--filter 'Tier!=Long')
case "${1:-}" in
  '') ;;
  --long) filter=() ;;
  *) give_up "the only option is --long." ;;
esac

install_packages() {
  local missing=() root=()
  command -v chromium >/dev/null || missing+=(chromium)
  command -v pdftotext >/dev/null || missing+=(poppler-utils)
  [ ${#missing[@]} -eq 0 ] && return
  printf 'Installing %s\n' "${missing[*]}"
  command -v apt-get >/dev/null || give_up "please install ${missing[*]}; this is not a Debian machine."
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || give_up "installing ${missing[*]} needs root or sudo."
    root=(sudo)
  fi
  "${root[@]}" apt-get update -qq >/dev/null || give_up "apt-get update failed."
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "${missing[@]}" >/dev/null ||
    give_up "apt-get could not install ${missing[*]}."
}

# Test projects, from the ground up and the browser last, so that a plain mistake shows early and where it was made; they
# are in order of time too. A project that is not named here runs before the browser.
projects() {
  local project rank
  for project in tests/*/*.Tests.csproj; do
    case "$project" in
      *.Trade.Tests.csproj) rank=1 ;;
      *.Records.Tests.csproj) rank=2 ;;
      *.Web.Tests.csproj) rank=3 ;;
      *.Paper.Tests.csproj) rank=4 ;;
      *.Browser.Tests.csproj) rank=9 ;;
      *) rank=5 ;;
    esac
    printf '%d %s\n' "$rank" "$project"
  done | sort | cut -d ' ' -f 2-
}

# A number from the counters of a result file: counter FILE NAME
counter() {
  sed -n 's/.*<Counters [^>]*\b'"$2"'="\([0-9]*\)".*/\1/p' "$1" | head -n 1
}

run_project() {
  local project=$1 name started=$SECONDS status total good
  name=$(basename "$project" .csproj)
  printf '\n== %s\n' "$name"
  dotnet test "$project" --no-build --nologo "${filter[@]}" --results-directory "$results" \
    --logger "trx;LogFileName=$name.trx" --blame-hang-timeout 30min --blame-hang-dump-type none
  status=$?
  if [ ! -f "$results/$name.trx" ]; then
    printf '%s left no result file.\n' "$name"
    failed=$((failed + 1))
    return
  fi
  total=$(counter "$results/$name.trx" total)
  good=$(counter "$results/$name.trx" passed)
  total=${total:-0} good=${good:-0}
  passed=$((passed + good))
  if [ "$total" -gt "$good" ]; then
    # A skipped test was not shown to pass: it counts as failed.
    failed=$((failed + total - good))
  elif [ "$total" -eq 0 ]; then
    printf '%s ran no test to its end (exit code %d).\n' "$name" "$status"
    failed=$((failed + 1))
  elif [ "$status" -ne 0 ]; then
    printf '%s ended with exit code %d although no test failed: the test host died or was stopped.\n' "$name" "$status"
    failed=$((failed + 1))
  fi
  printf '%s: %d of %d passed in %d s\n' "$name" "$good" "$total" $((SECONDS - started))
}

command -v dotnet >/dev/null || give_up "the .NET SDK is not installed."
install_packages
dotnet restore ProcessorDesk.sln -v q || give_up "restoring packages failed."
dotnet build ProcessorDesk.sln --no-restore -v q -nologo || give_up "the build failed."

results=$(mktemp -d)
while read -r project; do
  run_project "$project" </dev/null
done < <(projects)

if [ "$failed" -eq 0 ]; then
  rm -rf "$results"
else
  printf '\nThe result files are in %s\n' "$results"
fi
printf '\n'
finish
