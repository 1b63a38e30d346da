# Sourced by ./check for --twins: solves the cases of verification/heat anew by SciPy and CalculiX and compares. Expects $root.

twin_python=/usr/bin/python3

twin_tools_here() { command -v ccx >/dev/null && "$twin_python" -c 'import numpy, scipy' 2>/dev/null; }

# SciPy and CalculiX, installed if need be; ends the script with 69 where that is impossible.
need_twin_tools() {
    twin_tools_here && return 0
    if may_install; then
        echo "installing calculix-ccx, python3-scipy and python3-numpy with apt"
        apt_get update && apt_get install -y --no-install-recommends calculix-ccx python3-scipy python3-numpy
        twin_tools_here && return 0
    fi
    say "please install CalculiX and SciPy, for example: sudo apt-get install calculix-ccx python3-scipy python3-numpy"
    exit 69
}

twin_cases() { grep -v '^#' "$root/verification/heat/cases.csv" | tail -n +2 | cut -d, -f1; }

# Both twins anew into $1, as many cases at a time as there are cores; a line is told, on descriptor 3, as each is done.
solve_twins() {
    (
        set -o pipefail
        for twin in scipy calculix; do
            twin_cases | xargs -P "$(nproc)" -n 1 "$twin_python" "$root/verification/heat/${twin}_twin.py" "$1" |
                while IFS= read -r line; do
                    echo "$twin $line"
                    echo "$twin $line" >&3
                done || exit 1
        done
    )
}

# Makes the results anew, compares them with those kept, and the program with both.
twins() {
    local fresh outcome=0
    fresh=$(mktemp -d) || return
    solve_twins "$fresh" && "$twin_python" "$root/verification/heat/compare.py" "$fresh" "$root/verification/heat/kept" || outcome=1
    rm -rf "$fresh"
    maven_locked -Dfast -Djacoco.skip=true -pl core -Dtest=TwinsTest -Dsurefire.failIfNoSpecifiedTests=false test || outcome=1
    return $outcome
}
