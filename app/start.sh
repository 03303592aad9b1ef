#!/bin/sh
# Starts Tierloam from a checkout:  sh app/start.sh [FILE] [options of the program]
# The first run installs what is missing and builds; later runs only start, and build again only what has changed.
# Without a FILE it opens the demo household. Without a display it draws the pages as pictures instead.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
build="$top/build"
program="$build/app/tierloam"
stamp="$build/started"

is_fresh() {
    [ -x "$program" ] && [ -e "$stamp" ] && [ -z "$(find "$top/CMakeLists.txt" "$top/CMakePresets.json" "$top/core" "$top/ui" "$top/app" \
        "$top/resources" "$top/demo-data" -newer "$stamp" -print -quit)" ]
}

if ! is_fresh; then
    sh "$top/app/setup.sh" "$top/app/packages.txt"
    mkdir -p "$build"
    started=$(date +%s)
    touch "$build/starting" # a file that is changed while the build runs must be newer than the stamp
    echo "Building Tierloam; the first time this takes some minutes." >&2
    if ! { (cd "$top" && cmake --preset release) && cmake --build "$build"; } >"$build/build.log" 2>&1; then
        tail -n 40 "$build/build.log" >&2
        echo "The build failed; the whole of it is in $build/build.log" >&2
        exit 1
    fi
    mv "$build/starting" "$stamp"
    echo "Built in $(($(date +%s) - started)) s." >&2
fi

# Without arguments of its own: the demo. A call that names a file or needs no window is passed on as it is.
demo=yes
window=yes
for argument in "$@"; do
    case $argument in
    *.tierloam | --demo) demo=no ;;
    --import | --record | --export | --summary | --calendar | --report | --labels | --version | --help) demo=no window=no ;;
    --portrait) window=no ;;
    *) [ ! -f "$argument" ] || demo=no ;;
    esac
done
[ "$demo" = no ] || set -- --demo "$@"
[ "$window" = yes ] || exec "$program" "$@"

if [ -z "${DISPLAY:-}${WAYLAND_DISPLAY:-}${QT_QPA_PLATFORM:-}" ]; then
    why="There is no display."
else
    status=0
    "$program" "$@" || status=$?
    # Qt aborts (134) when the display that is named cannot be opened.
    [ "$status" = 134 ] || exit "$status"
    why="The display could not be opened."
fi
echo "$why The pages are drawn as pictures into $build/pages instead." >&2
QT_QPA_PLATFORM=offscreen exec "$program" "$@" --portrait "$build/pages"
