#!/bin/sh
# Builds the Debian package twice, from two copies of the source in folders of different names, the second time without any cache, and
# compares the bytes; looks at the package with lintian and at its desktop files with their own checkers; and, as root, installs it into a
# bare Debian 12, runs it there and removes it again:  sh tests/support/package.sh
# Run by tests/long.sh. TIERLOAM_BARE_DEBIAN=no leaves the last part out, which downloads some 300 MB.
set -eu
top=$(cd "$(dirname "$0")/../.." && pwd)
. "$top/tests/support/steps.sh"
sh "$top/app/setup.sh" "$top/app/packages.txt" "$top/app/packages-deb.txt" "$top/tests/support/packages-package.txt"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
: "${SOURCE_DATE_EPOCH:=$(git -C "$top" log -1 --format=%ct)}"
export SOURCE_DATE_EPOCH

copy() {
    mkdir -p "$work/$1"
    git -C "$top" ls-files -z --cached --others --exclude-standard | (cd "$top" && tar -c --null -T - --ignore-failed-read) | tar -x -C "$work/$1"
}
same_bytes() {
    cmp "$work"/first/*.deb "$work"/second/*.deb && sha256sum "$work"/first/*.deb
}
desktop_files() {
    dpkg-deb -x "$work"/first/*.deb "$work/tree"
    share="$work/tree/usr/share"
    desktop-file-validate "$share/applications/tierloam.desktop"
    # The project owns no domain, so its id is its plain name; that the name stands under no domain is told and no fault.
    appstreamcli validate --no-net --override=cid-desktopapp-is-not-rdns=info "$share"/metainfo/*.metainfo.xml
    # The type is known by the name of a file and by its bytes alone.
    update-mime-database "$share/mime" 2>/dev/null
    "$work/tree/usr/bin/tierloam" "$work/named.tierloam" --import "$top/demo-data/journal.csv"
    cp "$work/named.tierloam" "$work/unnamed"
    for file in named.tierloam unnamed; do
        type=$(XDG_DATA_HOME="$work/none" XDG_DATA_DIRS="$share:/usr/share" gio info -a standard::content-type "$work/$file" | sed -n 's/.*standard::content-type: //p')
        echo "$file is $type"
        [ "$type" = application/x-tierloam ]
    done
    man --warnings -l "$share/man/man1/tierloam.1.gz" >"$work/man.txt" 2>"$work/man.err"
    [ ! -s "$work/man.err" ] || { cat "$work/man.err"; return 1; }
}
bare_debian() {
    debootstrap --variant=minbase bookworm "$work/bare" >"$work/bootstrap.log" 2>&1 || { tail -n 20 "$work/bootstrap.log"; return 1; }
    mkdir "$work/bare/tried"
    cp "$work"/first/*.deb "$top/demo-data/journal.csv" "$work/bare/tried/"
    inside() { chroot "$work/bare" env HOME=/tried LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive sh -ec "$1"; }
    inside 'apt-get update && apt-get install -y --no-install-recommends /tried/*.deb' >"$work/install.log" 2>&1 || { tail -n 30 "$work/install.log"; return 1; }
    inside 'cd /tried && tierloam --version && tierloam h.tierloam --import journal.csv && tierloam h.tierloam --summary --at 2031-05-06 >summary.json &&
        tierloam h.tierloam --report Scullery --out sheet.pdf --at 2031-05-06 && tierloam h.tierloam --portrait pages --at 2031-05-06 && ls pages &&
        test -s sheet.pdf && test -s summary.json'
    inside 'cd /tried && mkdir -p .config/tierloam && echo kept >.config/tierloam/mine && sha256sum h.tierloam .config/tierloam/mine >before && apt-get purge -y tierloam >/dev/null 2>&1 &&
        ! command -v tierloam && test ! -e /usr/share/applications/tierloam.desktop && sha256sum -c before'
}

step "two copies of the source" copy one
copy another/place
step "first package" quietly sh "$work/one/app/package.sh" "$work/first"
step "second package, without a cache" quietly env CCACHE_DISABLE=1 sh "$work/another/place/app/package.sh" "$work/second"
step "the same bytes" same_bytes
step "lintian: no errors" lintian --allow-root --fail-on error "$work"/first/*.deb
step "desktop files" desktop_files
if [ "${TIERLOAM_BARE_DEBIAN:-yes}" = yes ] && [ "$(id -u)" = 0 ]; then
    step "a bare Debian 12: installed, run, removed" bare_debian
else
    echo "== not tried on a bare Debian: that needs root" >&2
fi
