#!/usr/bin/env bash
# What to take: 12 kinds of jars from 200 past shows, without database and web. Needs target/quarkus-app, as the others do.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
libraries="$root/target/classes:$root/target/quarkus-app/lib/main/*"
javac -nowarn -d "$folder" -cp "$libraries" "$root"/src/bench/java/org/barreltally/shows/plan/PlanBench.java
java -cp "$folder:$libraries" org.barreltally.shows.plan.PlanBench
