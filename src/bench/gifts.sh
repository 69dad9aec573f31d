#!/usr/bin/env bash
# A gift order of 500 recipients with 4 jars each: taking, reserving, picking and its papers, and the heap the papers take.
JAVA_OPTIONS="${JAVA_OPTIONS:-} -Xlog:gc:file=/tmp/barreltally-gifts-gc.txt"
. "$(dirname "$0")/common.sh"
begin
{
  echo "kind,lot,season,brix,transmittance,taste,place,container,count,packedOn"
  for i in $(seq 10); do
    echo "jars,G24-$i,2024,66.9,80,clean,cool-room,HP,600,2024-06-$((i + 10))"
    echo "jars,D24-$i,2024,66.9,40,clean,cool-room,HP,600,2024-07-$((i + 10))"
  done
} >"$folder/stock.csv"
curl -sf -u "owner:$password" -H 'Content-Type: text/csv' -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" \
  --data-binary @"$folder/stock.csv" "$address/api/opening-stock" >/dev/null
post /api/gift-boxes '{"name": "Four", "price": {"amount": 40.00, "currency": "USD"}, "carton": "Carton", "contents": [
  {"container": "HP", "grade": "golden", "count": 2}, {"container": "HP", "grade": "dark", "count": 2}]}' >/dev/null
{
  echo "name,line1,town,region,postcode,country,box,count,card,delivery,postage,sendBy"
  for n in $(seq 500); do
    echo "Recipient $n Quillfeather,$n Tarn Lane,Fernby,VT,05999,US,Four,1,Warm greetings number $n,post,12.50,2026-12-14"
  done
} >"$folder/recipients.csv"
timed() { # label, curl arguments
  local label=$1
  shift
  echo "  $label $(curl -sf -o "$folder/answer" -w '%{time_total} s' -u "owner:$password" "$@")"
}
for round in 1 2 3; do
  echo "round $round"
  timed "take" -H 'Content-Type: text/csv' -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" \
    --data-binary @"$folder/recipients.csv" "$address/api/gift-orders/from-file?buyer=Bench"
  order=$address/api/gift-orders/$(jq -r .id "$folder/answer")
  timed "reserve" -H 'Content-Type: application/json' -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" -d '{}' "$order/reserve"
  timed "pick" -H 'Content-Type: application/json' -H "Idempotency-Key: $(cat /proc/sys/kernel/random/uuid)" -d '{}' "$order/pick"
  for paper in pick-list packing-slips greeting-cards address-labels bill receipt lots; do
    timed "$paper" "$order/$paper.pdf"
  done
done
grep -o 'Pause.*' /tmp/barreltally-gifts-gc.txt | tail -3
