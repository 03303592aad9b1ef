#!/bin/sh
# The tests that take too long for every change:  sh tests/long.sh [options of ctest]
# Everything of run.sh with TIERLOAM_LONG=1 (calibration, random journals and failing disks in full), and the thread sanitizer.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/tests/support/steps.sh"
cd "$top"

step "set-up" sh app/setup.sh app/packages.txt tests/packages.txt
step "configure with the thread sanitizer" quietly cmake --preset tsan
step "build with the thread sanitizer" quietly cmake --build build-tsan -j 2
step "threads under the thread sanitizer" ctest --test-dir build-tsan -L threads -j 2 --timeout 3600 --output-on-failure
step "configure" quietly cmake --preset dev
step "build" quietly cmake --build build-dev -j 2
TIERLOAM_LONG=1
export TIERLOAM_LONG
exec ctest --test-dir build-dev -j 2 --timeout 14400 --output-on-failure "$@"
