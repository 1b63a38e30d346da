#!/usr/bin/env bash
# One run: the full search of a drawer, every allowed cut included, for a thousand to a million springs, first and best of five in a
# fresh process with a heap of 300 MB, peak memory, how straight time runs with size; the same rules vectorised in NumPy in the
# same run, that both find the same, and by how much ours is faster. Needs python3 with NumPy for the twin; leaves it out without.
set -u
root=$(dirname "$(dirname "$(readlink -f "$0")")")
cd "$root" || exit
. scripts/tools.sh

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
sizes=${*:-1000 10000 100000 1000000}

# row WHAT VALUE UNIT BOUND at-most|at-least
row() {
    awk -v what="$1" -v value="$2" -v unit="$3" -v bound="$4" -v sense="$5" 'BEGIN {
        ratio = sense == "at-least" ? bound / value : value / bound
        printf "%-52s %12.4g %-7s %s %-8g ratio %5.2f %s\n", what, value, unit, sense == "at-least" ? ">=" : "<=", bound, ratio, ratio <= 1 ? "kept" : "MISSED"
    }'
}

# Runs a command, its output to $work/out, its peak resident memory [MB] to $work/peak.
peak() {
    "$@" >"$work/out" &
    local pid=$! most=0 key value unit
    while [ -r /proc/$pid/status ] && kill -0 $pid 2>/dev/null; do
        while read -r key value unit; do
            if [ "$key" = VmHWM: ] && [ "$value" -gt "$most" ]; then most=$value; fi
        done </proc/$pid/status 2>/dev/null
        sleep 0.01
    done
    wait $pid
    awk -v kb="$most" 'BEGIN { print kb / 1000 }' >"$work/peak"
}

need_build_tools
echo "building the benchmarks ..."
locked maven -q -Dfast -Dmaven.test.skip=true -Djacoco.skip=true -pl benchmarks -am package >"$work/build.log" 2>&1 ||
    { grep ERROR "$work/build.log" | head; exit 1; }
classes=$(printf '%s:' "$root"/benchmarks/target/lib/*.jar)$(ls "$root"/benchmarks/target/strawblue-benchmarks-*.jar)
search=("$java_home/bin/java" -Xmx300m -XX:+UseParallelGC -cp "$classes" org.strawblue.benchmarks.SpringSearchSpeed)
twin=
python3 -c 'import numpy' 2>/dev/null && twin=benchmarks/springs_numpy.py

echo "processors: $(nproc); load: $(cut -d' ' -f1-3 /proc/loadavg)"
printf '%10s %9s %9s %9s %8s %8s %9s %9s %8s %s\n' springs first best CPU peak works NumPy CPU faster agree
: >"$work/table"
for n in $sizes; do
    peak "${search[@]}" "$n"
    read -r _ first best cpu works chances removed <"$work/out"
    read -r memory <"$work/peak"
    numpy=- numpy_cpu=- faster=- agree=-
    if [ -n "$twin" ]; then
        "${search[@]}" --write "$work/drawer.bin" "$n"
        read -r _ numpy numpy_cpu its_works its_chances its_removed < <(python3 "$twin" "$root" "$work/drawer.bin")
        faster=$(awk -v a="$numpy" -v b="$best" 'BEGIN { printf "%.1f", a / b }')
        agree=$(awk -v a="$works $removed" -v b="$its_works $its_removed" -v c="$chances" -v d="$its_chances" \
            'BEGIN { e = c / d - 1; print (a == b && e * e < 1e-6) ? "yes" : "NO" }')
    fi
    printf '%10s %7s s %7s s %7s s %5.0f MB %8s %7s s %7s s %7sx %s\n' \
        "$n" "$first" "$best" "$cpu" "$memory" "$works" "$numpy" "$numpy_cpu" "$faster" "$agree"
    echo "$n $first $best $cpu $memory $numpy $numpy_cpu $faster $agree" >>"$work/table"
done

echo
read -r n first best cpu memory numpy numpy_cpu faster agree < <(tail -n 1 "$work/table")
row "search of $n springs, first in a fresh process" "$first" s 2 at-most
row "search of $n springs, warm" "$best" s 2 at-most
awk -v cpu="$cpu" -v n="$(nproc)" 'BEGIN { printf "its processor time, warm: %.2f s; with %d processors to itself that is %.2f s\n", cpu, n, cpu / n }'
row "its peak memory, whole process" "$memory" MB 400 at-most
[ "$numpy" = - ] || row "faster than the same rules in NumPy" "$faster" times 5 at-least
awk '{ n++; x += $1; y += $4; xx += $1 * $1; xy += $1 * $4; yy += $4 * $4 }
    END { if (n > 2) { s = (n * xy - x * y) / (n * xx - x * x); r = (n * xy - x * y) / sqrt((n * xx - x * x) * (n * yy - y * y))
          printf "straight line of processor time: %.3f s + springs / %.3g per s, R² %.4f\n", (y - s * x) / n, 1 / s, r * r } }' "$work/table"
! grep -q NO "$work/table"
