# Sourced by the scripts of this folder: starts the built program on a new folder and port, and stops it at the end.
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
folder=$(mktemp -d)
port=${PORT:-18180}
address=http://localhost:$port
password=$(head -c 18 /dev/urandom | base64)
seconds=${SECONDS_EACH:-20}
clients=16

begin() {
  PORT=$port BARRELTALLY_DATA=$folder/data BARRELTALLY_OWNER_PASSWORD=$password \
    java ${JAVA_OPTIONS:-} -jar "${APP:-$root/target/quarkus-app}/quarkus-run.jar" >"$folder/out.txt" 2>&1 &
  program=$!
  until curl -sf "$address/q/health/ready" >/dev/null; do
    kill -0 "$program" 2>/dev/null || { cat "$folder/out.txt"; exit 1; }
    sleep 0.05
  done
  PGPASSWORD=$(cat "$folder/data/database-password")
  export PGPASSWORD
}

finish() {
  kill "$program" 2>/dev/null || true
  wait "$program" 2>/dev/null || true
}

trap 'finish; rm -rf "$folder"' EXIT

post() { # path, JSON
  curl -sf -u "owner:$password" -H 'Content-Type: application/json' \
    -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" -d "$2" "$address$1"
}

token() { post /api/tokens '{"name": "bench"}' | jq -r .token; }

barrel() { # tag, net pounds
  post /api/barrels '{"tag": "'"$1"'", "season": 2026, "filledOn": "2026-03-14", "material": "stainless",
    "weighing": {"gross": {"value": '"$(($2 + 42))"', "unit": "lb"}, "tare": {"value": 42, "unit": "lb"}},
    "density": {"reading": {"value": 66.9, "unit": "Brix"}, "temperature": {"value": 68, "unit": "degF"},
                "instrument": "refractometer"}, "transmittance": 62, "taste": "clean"}' >/dev/null
}

database() { # the database's own connection string, for psql and pgbench
  local pid_file=$folder/data/database/postmaster.pid
  echo "host=127.0.0.1 port=$(sed -n 4p "$pid_file") dbname=barreltally user=barreltally"
}
