# shellcheck shell=bash
# What app/run, tests/run and .ci/run have in common. Sourced, never run.

set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
jobs=${TREADWELL_JOBS:-$(nproc)}

# Most of a build is reading headers, so where nobody waits for a single file several are compiled in one.
# Core and apps in build/ stay one by one: that shows that each file includes what it needs.
# shellcheck disable=SC2034 # for those who source this
together=(-DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=16)

say() { printf '%s\n' "$@"; }
die() {
    printf '%s\n' "$*" >&2
    exit 1
}

# packages PURPOSE...: the packages of these purposes, one a line.
packages() {
    local purpose
    for purpose in "$@"; do
        grep -q "^$purpose:" "$root/.ci/packages" || die "There is no purpose '$purpose' in .ci/packages."
        sed -n "s/^$purpose://p" "$root/.ci/packages" | xargs -n 1
    done
}

# install_packages PURPOSE...: installs what is missing, and nothing where all is there.
install_packages() {
    local package wanted missing=() apt=(apt-get -q -y -o DPkg::Lock::Timeout=600)
    wanted=$(packages "$@")
    for package in $wanted; do
        if [ "$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)" != installed ]; then
            missing+=("$package")
        fi
    done
    ((${#missing[@]} > 0)) || return 0

    if [ "$(id -u)" -ne 0 ]; then
        sudo -n true 2>/dev/null ||
            die "Root is needed to install packages; please run: sudo apt-get install --no-install-recommends ${missing[*]}"
        apt=(sudo -n "${apt[@]}")
    fi
    say "Installing ${missing[*]}"
    export DEBIAN_FRONTEND=noninteractive
    update_lists "${apt[@]}"
    "${apt[@]}" install --no-install-recommends "${missing[@]}" </dev/null
}

# The lock of the package lists knows no timeout, so another program's update is waited for here.
update_lists() {
    local try
    for try in 1 2 3 4 5 6; do
        "$@" update </dev/null && return 0
        say "The package lists could not be updated (try $try of 6)."
        sleep 10
    done
    die "The package lists could not be updated, so missing packages cannot be installed."
}

# configure FOLDER OPTION...: prepares a build folder; options that are not named keep their value there.
configure() {
    local folder=$1 options=()
    shift
    if command -v ccache >/dev/null; then
        # All build folders of a checkout share what they compile alike; the precompiled header needs allowances.
        export CCACHE_NOHASHDIR=1 CCACHE_SLOPPINESS=pch_defines,time_macros
        options=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    fi
    cmake -S "$root" -B "$root/$folder" -G Ninja "${options[@]}" "$@"
}

# compile FOLDER TARGET...: builds the targets named, or all.
compile() {
    local folder=$1
    shift
    NINJA_STATUS='[%f/%t, %e s] ' ninja -C "$root/$folder" -j "$jobs" "$@"
}

# suite FOLDER ARGUMENT...: runs the tests of a build folder; arguments go to ctest. A run without a test fails.
suite() {
    local folder=$1
    shift
    QT_QPA_PLATFORM=offscreen ctest --test-dir "$root/$folder" --output-on-failure --no-tests=error \
        -j "$jobs" --timeout 600 -O "$root/$folder/suite.log" "$@"
}

# build_apps: command line and desktop. A folder that also builds the tests goes on doing so.
build_apps() {
    local options=()
    [ -f "$root/build/build.ninja" ] || options=(-DTREADWELL_TESTS=OFF -DTREADWELL_BENCH=OFF)
    install_packages core desktop
    configure build "${options[@]}"
    compile build treadwell-cli treadwell
}

# make_example FOLDER: the example season in FOLDER/example/example.treadwell, made by the command line built there
# from the farm, tickets, logs, samples, heights and the plan in examples/. What is there already is kept.
# It grows beside its place and is moved there when whole, so that half a season is never taken for one.
make_example() {
    local cli=$root/$1/bin/treadwell-cli place=$root/$1/example data=$root/examples
    [ -f "$place/example.treadwell" ] && return
    rm -rf "$place.part"
    mkdir -p "$place" "$place.part"
    "$cli" new "$place.part/example.treadwell" --farm "$data/farm.json"
    "$cli" import "$place.part/example.treadwell" --tickets "$data/tickets.csv" \
        --tractors "$data/tractor_log.csv" --samples "$data/samples.csv" --heights "$data/heights.csv" --layers "$data/layers.csv" \
        --sieves "$data/sieves.csv" --kernels "$data/kernels.csv" --chop "$data/chop.csv" \
        --temperatures "$data/temperatures.csv" --fields "$data/fields.csv"
    "$cli" plan "$data/adopted.plan.json" --adopt "$place.part/example.treadwell" --at 2026-09-14T18:00:00+02:00
    mv "$place.part"/* "$place"
    rmdir "$place.part"
}

# A display counts when it answers: a name left over in the environment, or a refusal, is none.
display_answers() {
    [ -S "${XDG_RUNTIME_DIR:-}/${WAYLAND_DISPLAY:-}" ] && return
    [ -n "${DISPLAY:-}" ] && timeout 10 xdpyinfo >/dev/null 2>&1
}
