#!/usr/bin/env bash
# 10,000 labels drawn by the program's own code beside bare OpenPDF drawing the same words and codes. Needs the built program only.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
app=$root/target/quarkus-app
java ${JAVA_OPTIONS:-} -cp "$app/app/*:$app/lib/main/*" "$root/src/bench/Labels.java" "${ROUNDS:-15}"
