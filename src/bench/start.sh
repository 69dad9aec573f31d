#!/usr/bin/env bash
# Time from starting the jar to ready, first and later starts, with the demo season, then with classes kept ready-made; resident memory
# of program and database.
. "$(dirname "$0")/common.sh"
export BARRELTALLY_DEMO=true
now() { date +%s.%N; }
for start in first second third "(keeps its classes)" fourth fifth; do
  case $start in
    "(keeps"*) JAVA_OPTIONS="-XX:ArchiveClassesAtExit=$folder/ready.jsa -Xlog:cds*=off" ;;
    fourth) JAVA_OPTIONS="-XX:SharedArchiveFile=$folder/ready.jsa" ;;
  esac
  from=$(now)
  begin
  echo "$start start: ready after $(awk -v a="$from" -v b="$(now)" 'BEGIN {printf "%.1f", b - a}') s"
  sleep 8
  java_kb=$(awk '/VmRSS/ {print $2}' "/proc/$program/status")
  # Shared memory counts once: proportional shares of the database's processes.
  postgres_kb=0
  postmaster=$(head -n 1 "$folder/data/database/postmaster.pid")
  for pid in $postmaster $(pgrep -P "$postmaster"); do
    postgres_kb=$((postgres_kb + $(awk '/^Pss:/ {print $2}' "/proc/$pid/smaps_rollup" 2>/dev/null || echo 0)))
  done
  echo "  resident: program $((java_kb / 1024)) MB, database $((postgres_kb / 1024)) MB"
  finish
done
