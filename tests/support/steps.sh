# For sh: runs a named step and says how many seconds it took; a step that fails ends the script.
step() {
    step_name=$1
    shift
    step_began=$(date +%s)
    step_status=0
    "$@" || step_status=$?
    echo "== $step_name: $(($(date +%s) - step_began)) s"
    [ "$step_status" = 0 ] || { echo "== $step_name failed ($step_status)" >&2; exit "$step_status"; }
}

# Shows the output of a command only if it fails.
quietly() {
    quietly_log=$(mktemp)
    quietly_status=0
    "$@" >"$quietly_log" 2>&1 || quietly_status=$?
    [ "$quietly_status" = 0 ] || tail -n 100 "$quietly_log"
    rm -f "$quietly_log"
    return "$quietly_status"
}
