# Sourced by run: conduction against SciPy's BDF and CalculiX on one mesh, cost against mesh and places, ensemble. Expects $work,
# $classes and row. The bare 12 mm bar on a plate at 290 °C, 1000 s, one core; needs python3-scipy and calculix-ccx for its first part.

twin() { OMP_NUM_THREADS=1 /usr/bin/python3 "$root/verification/heat/$1" "${@:2}"; }
ours() { "$java_home/bin/java" -XX:+UseSerialGC -cp "$classes" org.strawblue.benchmarks.HeatSpeed "$@"; }

# error FILE SKIP: each line of FILE with, in front, its greatest difference from the reference [K]; readings begin after SKIP fields.
error() {
    awk -F, -v skip="$2" -v wanted="$(cat "$work/reference")" 'BEGIN { n = split(wanted, ref, ",") - 3 }
        { most = 0
          for (i = 1; i <= n; i++) { d = $(skip + i) - ref[i + 3]; if (d < 0) d = -d; if (d > most) most = d }
          print most "," $0 }' "$1"
}

# The quickest line within an error: error FILE's lines, whose time is field $2.
quickest() { awk -F, -v most="$1" -v field="$2" '$1 <= most && (best == "" || $field < best) { best = $field; line = $0 } END { print line }'; }

field() { cut -d, -f"$1" <<<"$2"; }

# Ours at tolerance $1 and SciPy at $2 by turns: how many times as long SciPy takes, one line a turn.
pairs() {
    local turn turns=${QUICK:+3}
    for turn in $(seq "${turns:-7}"); do
        echo "$(ours solve $sectors $rings 1000 "$1" | cut -d, -f2),$(twin same_mesh.py bar12-bare $sectors $rings 1000 "$2" | cut -d, -f2)"
    done | tee "$work/pairs" | awk -F, '{ print $2 / $1 }'
}

heat_against_twins() {
    local sectors=48 rings=24 bound us them times
    twin same_mesh.py bar12-bare 144 72 1000 1e-6 >"$work/reference" || return
    ours solve $sectors $rings 1000 1 0.5 0.3 0.2 0.1 0.03 0.01 >"$work/ours"
    twin same_mesh.py bar12-bare $sectors $rings 1000 1e-2 3e-3 1e-3 3e-4 1e-4 5e-5 3e-5 2e-5 1e-5 >"$work/scipy"
    echo "error [K] against 144 x 72 cells; processor time [s] by tolerance, shortest, warm"
    error "$work/ours" 3 | awk -F, '{ printf "  ours, %6g K    %8.4f K %9.5f s\n", $2, $1, $3 }'
    error "$work/scipy" 3 | awk -F, '{ printf "  SciPy, rtol %-6g %6.4f K %9.5f s\n", $2, $1, $3 }'
    # a quarter more than the worse of the two makes at best on this mesh
    bound=$( (error "$work/ours" 3 | sort -g | head -n 1; error "$work/scipy" 3 | sort -g | head -n 1) |
        awk -F, '$1 > most { most = $1 } END { print 1.25 * most }')
    us=$(error "$work/ours" 3 | quickest "$bound" 3)
    them=$(error "$work/scipy" 3 | quickest "$bound" 3)
    printf 'within %.4f K: ours %s s, error %s K; SciPy %s s, error %s K\n' "$bound" \
        "$(field 3 "$us")" "$(field 1 "$us")" "$(field 3 "$them")" "$(field 1 "$them")"
    awk -F, -v them="$(field 3 "$them")" '$1 == 0.01 { printf "at the tolerance the program uses, 0.01 K: SciPy takes %.1f times as long\n", them / $2 }' "$work/ours"
    times=$(pairs "$(field 2 "$us")" "$(field 2 "$them")")
    echo "by turns, SciPy over ours: $(sort -g <<<"$times" | xargs printf '%.1f ')"
    row "SciPy's BDF, sparse, over ours, same mesh, same error" "$(median <<<"$times")" times 10 at-least
    twin same_mesh_ccx.py bar12-bare $sectors $rings 1000 >"$work/ccx" || return
    error "$work/ccx" 4 | awk -F, '{ printf "CalculiX, %d nodes in the section, %d steps: %.3f K, processor %.2f s, its own count %s s\n", $2, $3, $1, $4, $5 }'
    row "CalculiX, whole process, over ours, same section" \
        "$(awk -v a="$(field 3 "$(cat "$work/ccx")")" -v b="$(field 3 "$us")" 'BEGIN { print a / b }')" times 200 at-least
}

heat_cost() {
    local n
    for n in 7 14 28 56; do
        printf '%d,%s\n' $((2 * n * n)) "$(ours solve $((2 * n)) $n 1000 0.01 | cut -d, -f2)"
    done | tee "$work/mesh" | awk -F, '{ printf "%10d cells %9.4f s\n", $1, $2 }'
    awk -F, '{ n++; x = log($1); y = log($2); sx += x; sy += y; xx += x * x; xy += x * y }
        END { printf "time goes with cells to the power %.2f\n", (n * xy - sx * sy) / (n * xx - sx * sx) }' "$work/mesh"
    row "usual mesh, 28 x 14" "$(ours solve 28 14 1000 0.01 | cut -d, -f2)" s 0.05 at-most
    echo "hardness and colour, 120 moments each, against places:"
    ours places | awk -F, '{ printf "%10d places %8.4f s\n", $1, $2 }'
}

ensemble() {
    local cold warm held weighed
    read -r cold warm held weighed < <("$java_home/bin/java" -Xmx300m -cp "$classes" org.strawblue.benchmarks.EnsembleSpeed)
    row "ensemble, first draw in a fresh process" "$cold" s 5 at-most
    row "ensemble, warm" "$warm" s 5 at-most
    row "ensemble, heap it holds" "$held" MB 300 at-most
    row "one observation weighed anew" "$weighed" ms 50 at-most
}

heat() {
    echo
    echo "Conduction on one mesh, 48 x 24, once warm: ours, SciPy, CalculiX"
    if /usr/bin/python3 -c 'import scipy' 2>/dev/null && command -v ccx >/dev/null; then
        heat_against_twins
    else
        echo "left out: needs python3-scipy and calculix-ccx (./check --twins installs them)"
    fi
    echo
    echo "Conduction, time against mesh and places"
    heat_cost
    echo
    echo "Ensemble of 5,000 histories on a hot plate, heap limited to 300 MB"
    ensemble
}
