#!/bin/sh
# The tests that take too long for every change:  sh tests/long.sh [options of ctest]
# Everything of run.sh with TIERLOAM_LONG=1 (calibration, random journals, every fault, 300 rounds of kill -9), the fuzz targets a minute
# each, the thread sanitizer, core under the address and undefined-behaviour sanitizers with more households than .ci/run takes there and
# the two years of advice, and the Debian package: built twice to the same bytes, installed and removed.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
. "$top/tests/support/steps.sh"
cd "$top"

step "set-up" sh app/setup.sh app/packages.txt tests/packages.txt tests/fuzz/packages.txt
step "configure with the thread sanitizer" quietly cmake --preset tsan
step "build with the thread sanitizer" quietly cmake --build build-tsan -j 2
step "threads under the thread sanitizer" ctest --test-dir build-tsan -L threads -j 2 --timeout 3600 --output-on-failure
step "configure with address and undefined-behaviour sanitizers" quietly cmake --preset asan-ubsan
step "build with address and undefined-behaviour sanitizers" quietly cmake --build build-asan-ubsan -j 2 --target core_tests
step "core under address and undefined-behaviour sanitizers" env TIERLOAM_HOUSEHOLDS=3 ctest --test-dir build-asan-ubsan -L core -j 2 --timeout 14400 --output-on-failure
step "configure the fuzz targets" quietly cmake --preset fuzz
step "build the fuzz targets" quietly cmake --build build-fuzz -j 2 --target fuzz_journal fuzz_row fuzz_sheet fuzz_household
for target in journal row sheet household; do
    found=$(mktemp -d)
    # What is found goes into a folder of its own; the kept corpus is only read.
    step "fuzz $target for a minute" quietly env ASAN_OPTIONS=detect_leaks=0 "build-fuzz/tests/fuzz/fuzz_$target" -max_total_time="${TIERLOAM_FUZZ_SECONDS:-60}" \
        -max_len=100000 -timeout=20 -artifact_prefix="$found/" "$found" "tests/fuzz/corpus/$target"
    rm -rf "$found"
done
step "the package" sh tests/support/package.sh
step "configure" quietly cmake --preset dev
step "build" quietly cmake --build build-dev -j 2
TIERLOAM_LONG=1
export TIERLOAM_LONG
exec ctest --test-dir build-dev -j 2 --timeout 14400 --output-on-failure "$@"
