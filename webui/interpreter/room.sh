#!/bin/sh
# room.sh FOLDER [--prove|--accept]: makes FOLDER a Debian 13 with what builds the interpreter, unless it is one already,
# and builds the interpreter in it. Needs debootstrap, root, 4 GB and a quarter of an hour.
# MIRROR names where Debian comes from, if not where debootstrap gets it: when that has moved on, a dated archive of it.
set -eu
webui=$(cd "$(dirname "$0")/.." && pwd)
room=${1:?which folder?}
wish=${2:---prove}
inside() { chroot "$room" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C DEBIAN_FRONTEND=noninteractive "$@"; }

if [ ! -e "$room/ready" ]; then
    debootstrap --variant=minbase trixie "$room" ${MIRROR:+"$MIRROR"}
    sed -i 'p; s/^deb /deb-src /' "$room/etc/apt/sources.list"
    inside apt-get update
    inside apt-get install --yes --no-install-recommends emscripten make dpkg-dev
    touch "$room/ready"
fi

rm -rf "$room/webui"
mkdir "$room/webui"
cp -R "$webui/interpreter" "$webui/vendor" "$room/webui/"
inside python3 /webui/vendor/refresh.py micropython "$wish"
if [ "$wish" = --accept ]; then
    cp -R "$room/webui/vendor/vendor.json" "$room/webui/vendor/micropython" "$webui/vendor/"
fi
