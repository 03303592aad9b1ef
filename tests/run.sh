#!/bin/sh
# Builds everything and runs every test, without a display:  sh tests/run.sh [options of ctest]
# Installs what is missing first. Each step says its seconds; the last words are ctest's own summary, and its status is the script's.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/tests/support/steps.sh"
cd "$top"

step "set-up" sh app/setup.sh app/packages.txt tests/packages.txt
step "configure" quietly cmake --preset dev
step "build" quietly cmake --build build-dev -j 2
exec ctest --test-dir build-dev -j 2 --timeout 600 --output-on-failure "$@"
