#!/bin/sh
# Installs what is missing of the Debian packages named in the given lists:  sh app/setup.sh app/packages.txt [more lists]
# As root, or with sudo; otherwise says exactly what to install and ends with 1. With nothing missing it touches nothing.
set -eu

wanted=$(cat "$@" | sed 's/#.*//')

if ! command -v dpkg-query >/dev/null 2>&1 || ! command -v apt-get >/dev/null 2>&1; then
    echo "setup: this is no Debian system, so nothing is installed. Needed, by their Debian names:" $wanted >&2
    exit 0
fi

missing=""
for package in $wanted; do
    state=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null) || state=""
    [ "$state" = installed ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

if [ "$(id -u)" = 0 ]; then
    as_root=""
elif command -v sudo >/dev/null 2>&1 && { [ -t 0 ] || sudo -n true 2>/dev/null; }; then
    as_root="sudo"
else
    echo "setup: these packages are missing, and neither root nor sudo is at hand. As root, run:" >&2
    echo "    apt-get update && apt-get install --no-install-recommends$missing" >&2
    exit 1
fi

echo "setup: installing$missing" >&2
log=$(mktemp)
trap 'rm -f "$log"' EXIT
run() {
    if ! $as_root env DEBIAN_FRONTEND=noninteractive "$@" >"$log" 2>&1; then
        cat "$log" >&2
        echo "setup: «$*» failed; nothing was built." >&2
        exit 1
    fi
}
run apt-get update
# shellcheck disable=SC2086 # one word a package
run apt-get install -y --no-install-recommends $missing
