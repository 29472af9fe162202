#!/bin/bash
# Rehearse a user's first minutes: a bare Debian with python3 and nothing else, a clone, the commands of the README.
#
#   bare_root.sh RELEASE DIR [COMMAND...]
#
# Makes a minimal root of the release in DIR (removed and made anew if this script made it), clones this project's
# last commit into it, and runs the commands there, each a shell line; without any, the two of the README, first
# without and then with leave to install. Everything is printed, with exit codes and times. Needs root, debootstrap.
set -euo pipefail

release=${1:?release}; dir=${2:?folder}; shift 2
project=$(cd "$(dirname "$0")/../.." && pwd)
here=$project/tests/running

if [ "${1:-}" = __inside ]; then     # in namespaces of its own
    shift
    mount --bind "$dir" "$dir"; cd "$dir"     # a root that is a mount, as on a real machine: hosts can be built in it
    mount -t proc proc "$dir/proc"
    mount --rbind /dev "$dir/dev"
    exec chroot "$dir" /usr/bin/env -i PATH=/usr/local/bin:/usr/bin:/bin:/usr/sbin:/sbin HOME=/root TERM=dumb \
        ${PIP_CERT:+PIP_CERT=/etc/ssl/this-machine.crt} /bin/sh -c "cd /root/clone && $1" </dev/null
fi

inside() {
    unshare --mount --propagation private --pid --fork --kill-child -- "$BASH" "$0" "$release" "$dir" __inside "$1"
}

[ "$(id -u)" = 0 ] || { echo "bare_root: needs root" >&2; exit 2; }
if [ -e "$dir" ]; then
    [ -e "$dir/.bare-root-mine" ] || { echo "bare_root: $dir was not made by this script" >&2; exit 2; }
    rm -rf --one-file-system "$dir"
fi
mkdir -p "$dir"; touch "$dir/.bare-root-mine"
uri=$(bash "$here/chroot.sh" mirror)
script=/usr/share/debootstrap/scripts
[ -e "$script/$release" ] && script=$script/$release || script=$script/sid
echo "== minimal root of $release, with python3"
debootstrap --variant=minbase --include=python3 "$release" "$dir" "$uri" "$script" >"$dir.debootstrap.log" 2>&1
bash "$here/chroot.sh" network "$release" "$dir" "$uri"
# certificates that this machine needs for its way to the package index; the root's own list replaces the usual file
[ -z "${PIP_CERT:-}" ] || cp -L "$PIP_CERT" "$dir/etc/ssl/this-machine.crt"
git clone -q "$project" "$dir/root/clone"

[ $# -gt 0 ] || set -- "python3 -m workbench_pkg demo" "python3 -m tests" \
    "python3 -m workbench_pkg demo --install" "python3 -m tests --install"
failed=0
for line in "$@"; do
    before=$(chroot "$dir" dpkg-query -f '.\n' -W | wc -l); began=$SECONDS; code=0
    echo; echo "== $line"
    inside "$line" || code=$?
    after=$(chroot "$dir" dpkg-query -f '.\n' -W | wc -l)
    echo "== code $code, $((SECONDS - began)) s, packages $before -> $after, $(du -shx "$dir" | cut -f1) in all"
    case "$line" in *--install*) [ "$code" = 0 ] || failed=1 ;; esac
done
exit $failed
