#!/bin/sh
# Opt-in: clang-tidy (rules in .clang-tidy) and clazy over the sources of the program:  sh tests/support/lint.sh [FILE…]
# Needs the packages clang-tidy and clazy. Says nothing and ends with 0 when they find nothing.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
. "$top/tests/support/steps.sh"
cd "$top"
for tool in clang-tidy clazy-standalone; do
    command -v "$tool" >/dev/null || { echo "lint: install clang-tidy and clazy first" >&2; exit 1; }
done
[ "$#" -gt 0 ] || set -- $(find core ui app -name '*.cpp' | sort)

# Options that g++ knows and clang does not.
gcc_only="--extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-ignored-optimization-argument --extra-arg=-Wno-unused-command-line-argument"

quietly cmake --preset dev
quietly cmake --build build-dev -j 2 # headers that moc writes
# shellcheck disable=SC2086
step "clang-tidy" sh -c 'printf "%s\n" "$@" | xargs -P 2 -n 1 clang-tidy --quiet -p build-dev '"$gcc_only"' 2>/dev/null' sh "$@"
# detaching-temporary and the like are level 1; the two left out ask for what the style does not want.
step "clazy" sh -c 'found=$(clazy-standalone -p build-dev '"$gcc_only"' -checks=level1,no-non-pod-global-static,no-overloaded-signal "$@" 2>&1 |
    grep -E "warning|error" | sort -u); echo "$found"; [ -z "$found" ]' sh "$@"
