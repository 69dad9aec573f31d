#!/usr/bin/env bash
# Plays the invented season of season.json over REST, as any other program would.
#   demo/play.sh http://localhost:8080 owner 'the password'
# Every request carries its own id, so playing it again changes nothing. Needs curl and jq.
set -euo pipefail
address=${1:?address, for example http://localhost:8080}
user=${2:?user name}
password=${3:?password}
folder=$(cd "$(dirname "$0")" && pwd)
declare -A answers

jq -c '.requests[]' "$folder/season.json" | while read -r step; do
  body=$(jq -c '.body' <<<"$step")
  path=$(jq -r '.post' <<<"$step")
  # {june.lot} stands for the field "lot" in the answer to the request named "june", {fernby.id} for "id".
  for name in "${!answers[@]}"; do
    for field in lot id; do
      value=$(jq -r ".$field // empty" <<<"${answers[$name]}")
      body=${body//"{$name.$field}"/$value}
      path=${path//"{$name.$field}"/$value}
    done
  done
  answer=$(curl --silent --show-error --fail-with-body --user "$user:$password" \
    --header 'Content-Type: application/json' \
    --header "Idempotency-Key: $(jq -r '.id' <<<"$step")" \
    --data "$body" "$address$path")
  name=$(jq -r '.name // empty' <<<"$step")
  if [ -n "$name" ]; then answers[$name]=$answer; fi
  echo "$path $(jq -r '.tag // .lot // .code // .id // "done"' <<<"$answer")"
done
