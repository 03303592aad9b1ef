#!/bin/sh
# Makes the Debian package:  sh app/package.sh [FOLDER]
# Builds in build-package and puts tierloam_VERSION_ARCH.deb into FOLDER (the folder build-package when none is named).
# Needs the packages of app/packages.txt and dpkg-dev; the same source gives the same bytes on the same Debian.
set -eu
top=$(cd "$(dirname "$0")/.." && pwd)
build="$top/build-package"
folder=${1:-$build}
sh "$top/app/setup.sh" "$top/app/packages.txt" "$top/app/packages-deb.txt"

# Times inside resources and archives are those of the source.
: "${SOURCE_DATE_EPOCH:=$(git -C "$top" log -1 --format=%ct 2>/dev/null || echo 0)}"
export SOURCE_DATE_EPOCH
export QT_RCC_SOURCE_DATE_OVERRIDE="$SOURCE_DATE_EPOCH"
umask 022
mkdir -p "$folder"
folder=$(cd "$folder" && pwd)
cmake -S "$top" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DTIERLOAM_TESTS=OFF
cmake --build "$build"
cpack --config "$build/CPackConfig.cmake" -B "$folder"
rm -rf "$folder/_CPack_Packages"
