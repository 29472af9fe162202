#!/bin/bash
# The FreeCAD of another Debian release, in a chroot of its own.
#
#   chroot.sh can                                  exit 0 where chroots can be used here; else says why not
#   chroot.sh ready DIR                            exit 0 where DIR is a finished tree with all packages
#   chroot.sh build RELEASE DIR                    make the tree, or add what a finished one lacks
#   chroot.sh run   DIR PROJECT COMMAND [ARG...]   PROJECT is mounted read-only on /project, $OUT writable on /out
#   chroot.sh clean DIR
#   chroot.sh mirror | network RELEASE DIR MIRROR  name the mirror; give a tree this machine's way to it
#
# Needs root, debootstrap, util-linux. The mirror comes from this machine's own apt configuration; override with
# MIRROR=uri. Every run has mount and process namespaces of its own: nothing stays mounted, nothing stays running,
# and runs in the same tree or in different ones do not meet.
set -euo pipefail

PACKAGES="freecad freecad-python3 python3-numpy python3-pytest python3-hypothesis python3-jsonschema
    xvfb libgl1-mesa-dri fonts-dejavu-core"

die() { echo "chroot: $*" >&2; exit 2; }

can() {
    [ "$(id -u)" = 0 ] || die "needs root"
    command -v debootstrap >/dev/null || die "debootstrap is not installed"
    local why
    why=$(unshare --mount --pid --fork true 2>&1) || die "namespaces cannot be made on this system ($why)"
}

mirror() {   # the first target of component main that is no update or security archive
    if [ -n "${MIRROR:-}" ]; then echo "$MIRROR"; return; fi
    apt-get indextargets --format '$(REPO_URI) $(RELEASE) $(COMPONENT)' 'Created-By: Packages' |
        awk '$3=="main" && $2 !~ /security|updates|backports/ {print $1; exit}'
}

apart() {    # run a function of this script in namespaces of its own; it dies with us
    exec unshare --mount --propagation private --pid --fork --kill-child -- "$BASH" "$0" "__$1" "${@:2}"
}

mounts() {   # only ever called inside the namespaces
    mount -t proc proc "$1/proc"
    mount --rbind /dev "$1/dev"
}

lacking() {  # packages of the list that the tree has not got
    local have
    # shellcheck disable=SC2086
    have=$(chroot "$1" dpkg-query -W -f '${db:Status-Status} ${Package}\n' $PACKAGES 2>/dev/null || true)
    local p
    for p in $PACKAGES; do grep -qx "installed $p" <<<"$have" || echo "$p"; done
}

ready() { [ -e "$1/.host-chroot-ok" ] && [ -z "$(lacking "$1")" ]; }

__install() {
    local dir=$1; shift
    mounts "$dir"
    printf '#!/bin/sh\nexit 101\n' >"$dir/usr/sbin/policy-rc.d"   # packages start no services in there
    chmod 755 "$dir/usr/sbin/policy-rc.d"
    export DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8
    chroot "$dir" apt-get -q update
    chroot "$dir" apt-get -q -y install --no-install-recommends "$@"
    chroot "$dir" apt-get -q clean
}

base() {     # the bare system, once
    local release=$1 dir=$2 uri=$3
    [ ! -e "$dir/.debootstrap-ok" ] || return 0
    if [ -n "$(ls -A "$dir" 2>/dev/null)" ]; then
        [ -e "$dir/.host-chroot-mine" ] || die "$dir is not empty and was not made by this script"
        unmounted "$dir"
        rm -rf --one-file-system "$dir"                           # an attempt that was broken off
    fi
    mkdir -p "$dir"; touch "$dir/.host-chroot-mine"
    # a debootstrap older than the release has no script of that name: that of sid serves
    local script=/usr/share/debootstrap/scripts
    [ -e "$script/$release" ] && script=$script/$release || script=$script/sid
    debootstrap --variant=minbase "$release" "$dir" "$uri" "$script"
    touch "$dir/.debootstrap-ok"
}

network() {  # this machine's way to the network: names, certificates, apt's own settings
    local release=$1 dir=$2 uri=$3
    cp -L /etc/resolv.conf /etc/hosts "$dir/etc/"
    mkdir -p "$dir/etc/ssl/certs"; cp -Lr /etc/ssl/certs/. "$dir/etc/ssl/certs/" 2>/dev/null || true
    { apt-config dump | grep -E '^Acquire::(http|https|Check|Retries|Languages|Max-Default-Age)' || true; } \
        >"$dir/etc/apt/apt.conf.d/99host"
    echo "deb $uri $release main" >"$dir/etc/apt/sources.list"
}

build() {
    can
    local release=$1 dir=$2
    mkdir -p "$(dirname "$dir")"
    exec 9>"$dir.lock"; flock 9                                   # two builds of one tree: the second waits
    if ready "$dir"; then echo "chroot: $dir is ready"; return; fi
    local uri; uri=$(mirror); [ -n "$uri" ] || die "no Debian mirror in apt's configuration; set MIRROR"
    base "$release" "$dir" "$uri"
    network "$release" "$dir" "$uri"
    # shellcheck disable=SC2046
    (apart install "$dir" $(lacking "$dir"))
    [ -z "$(lacking "$dir")" ] || die "not installed: $(lacking "$dir" | tr '\n' ' ')"
    echo "$release" >"$dir/.host-chroot-ok"
}

__run() {
    local dir=$1 project=$2 out=$3; shift 3
    mounts "$dir"
    mkdir -p "$dir/project" "$dir/out"
    mount --bind "$project" "$dir/project"
    mount -o remount,bind,ro "$dir/project"
    mount --bind "$out" "$dir/out"
    mount -t tmpfs tmpfs "$dir/tmp"; chmod 1777 "$dir/tmp"; mkdir -m 700 "$dir/tmp/run"
    # Nothing of the caller's environment goes in, but what the command line itself sets with `env`.
    exec chroot "$dir" /usr/bin/env -i PATH=/usr/local/bin:/usr/bin:/bin:/usr/sbin:/sbin HOME=/tmp \
        XDG_RUNTIME_DIR=/tmp/run LC_ALL=C.UTF-8 TERM=dumb PYTHONPYCACHEPREFIX=/tmp/pycache \
        /bin/sh -c 'cd /project && exec "$@"' sh "$@"
}

run() {
    can
    local dir=$1 project; project=$(realpath "$2"); shift 2
    [ -e "$dir/.host-chroot-ok" ] || die "$dir is not built"
    [ -n "${OUT:-}" ] || die "name the output folder in OUT"
    mkdir -p "$OUT"
    apart run "$dir" "$project" "$(realpath "$OUT")" "$@"
}

unmounted() {
    local dir; dir=$(realpath "$1")
    if awk -v d="$dir/" 'index($5"/", d)==1 && $5"/"!=d {f=1} END{exit !f}' /proc/self/mountinfo; then
        die "something is mounted below $dir; unmount it first"
    fi
}

clean() {
    [ "$(id -u)" = 0 ] || die "needs root"
    [ -e "$1/.host-chroot-mine" ] || die "$1 was not made by this script"
    unmounted "$1"
    rm -rf --one-file-system "$(realpath "$1")"
}

case "${1:-}" in
    can) can ;;
    ready) [ $# = 2 ] || die "ready DIR"; ready "$2" ;;
    build) [ $# = 3 ] || die "build RELEASE DIR"; build "$2" "$3" ;;
    run) [ $# -ge 4 ] || die "run DIR PROJECT COMMAND..."; shift; run "$@" ;;
    mirror) mirror ;;
    network) [ $# = 4 ] || die "network RELEASE DIR MIRROR"; network "$2" "$3" "$4" ;;
    clean) [ $# = 2 ] || die "clean DIR"; clean "$2" ;;
    __install|__run) c=$1; shift; "$c" "$@" ;;
    *) sed -n '2,14p' "$0"; exit 2 ;;
esac
