#!/usr/bin/env bash
# Networks of 200 and 1,000 flows reconciled, without database and web. Needs target/quarkus-app, as the others do.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
libraries="$root/target/classes:$root/target/quarkus-app/lib/main/*"
javac -nowarn -d "$folder" -cp "$libraries" "$root"/src/bench/java/org/barreltally/reconciliation/flows/FlowsBench.java
java -cp "$folder:$libraries" org.barreltally.reconciliation.flows.FlowsBench
