#!/usr/bin/env bash
# Runs the tests of Trade and tells which part of its branches they went through: a line for each file under 95 %, the least
# covered first, and the whole at the end.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."

results=$(mktemp -d)
trap 'rm -rf "$results"' EXIT
dotnet test tests/ProcessorDesk.Trade.Tests --nologo --collect 'XPlat Code Coverage' --results-directory "$results" \
  -- DataCollectionRunSettings.DataCollectors.DataCollector.Configuration.Include='[ProcessorDesk.Trade]*' \
  DataCollectionRunSettings.DataCollectors.DataCollector.Configuration.ExcludeByFile='**/obj/**'

# A branch stands in the report as condition-coverage="50% (1/2)" on its line, once in its class and once in its method.
find "$results" -name coverage.cobertura.xml -exec awk '
  /<class / { match($0, /filename="[^"]*"/); file = substr($0, RSTART + 10, RLENGTH - 11) }
  /<methods>/ { inMethods = 1 }
  /<\/methods>/ { inMethods = 0 }
  !inMethods && match($0, /condition-coverage="[^"]*\([0-9]+\/[0-9]+\)"/) {
    split(substr($0, RSTART, RLENGTH), part, /[(\/)]/)
    hit[file] += part[2]; all[file] += part[3]; hits += part[2]; total += part[3]
  }
  END {
    for (file in all) if (hit[file] < 0.95 * all[file]) printf "%5.1f %%  %d of %d  %s\n", 100 * hit[file] / all[file], hit[file], all[file], file | "sort -n"
    close("sort -n")
    printf "Trade: %.2f %% of %d branches\n", 100 * hits / total, total
  }' {} +
