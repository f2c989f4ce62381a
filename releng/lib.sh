# Shared by the scripts of this folder: packages, Maven, the product and its rebuilding. Sourced, never run.
# shellcheck shell=bash

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
cache=$root/.cache
tools=$root/.tools
readonly root cache tools
readonly maven_version=3.9.11
readonly EXIT_INTERNAL=4

say() {
    printf '%s\n' "$*" >&2
}

die() {
    say "${0##*/}: $*"
    exit "$EXIT_INTERNAL"
}

# need_packages NAME... : installs Debian packages that are missing where the user is root, else names them and stops.
need_packages() {
    local missing=() name
    if ! command -v dpkg-query > /dev/null; then
        say "Not a Debian system: make sure that what these packages hold is there: $*"
        return 0
    fi
    for name in "$@"; do
        if ! dpkg-query -W -f '${db:Status-Status}\n' "$name" 2> /dev/null | grep -qx installed; then
            missing+=("$name")
        fi
    done
    if [ ${#missing[@]} -eq 0 ]; then
        return 0
    fi
    if [ "$(id -u)" -ne 0 ]; then
        die "these Debian packages are missing: ${missing[*]} (as root: apt-get install --no-install-recommends ${missing[*]})"
    fi
    say "Installing ${missing[*]}"
    {
        apt-get update -q &&
            DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
    } >&2 < /dev/null || die "these Debian packages could not be installed: ${missing[*]}"
}

# java_major JAVA : prints the major version of a java or javac command, nothing where it does not run.
java_major() {
    "$1" -version 2>&1 | sed -n 's/.*\(version "\|javac \)\([0-9]*\).*/\2/p' | head -n 1
}

# need_jdk : makes sure that a compiler for Java 17 or newer is there.
need_jdk() {
    local javac=javac major
    [ -n "${JAVA_HOME:-}" ] && javac=$JAVA_HOME/bin/javac
    if command -v "$javac" > /dev/null; then
        major=$(java_major "$javac")
        if [ "${major:-0}" -ge 17 ]; then
            return 0
        fi
    fi
    if command -v apt-cache > /dev/null && [ "$(id -u)" -eq 0 ]; then
        apt-get update -q >&2 || true
    fi
    if apt-cache show openjdk-17-jdk-headless > /dev/null 2>&1; then
        need_packages openjdk-17-jdk-headless
    else
        need_packages default-jdk-headless
    fi
    unset JAVA_HOME
    major=$(java_major javac)
    [ "${major:-0}" -ge 17 ] || die "a Java compiler of version 17 or newer is needed; set JAVA_HOME to one"
}

maven_is_new_enough() {
    local version
    version=$("$1" -version 2> /dev/null | sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p' | head -n 1)
    case $version in
        3.9.* | 3.[1-9][0-9].* | 4.*) return 0 ;;
        *) return 1 ;;
    esac
}

# find_maven : sets $maven to a Maven of at least 3.9: the one on the PATH, the one fetched before, or one fetched now.
find_maven() {
    local kept=$tools/apache-maven-$maven_version
    if [ -x "$kept/bin/mvn" ]; then
        maven=$kept/bin/mvn
        return 0
    fi
    if command -v mvn > /dev/null && maven_is_new_enough mvn; then
        maven=mvn
        return 0
    fi
    need_packages maven
    say "Fetching Maven $maven_version"
    mkdir -p "$tools"
    (cd "$tools" && mvn -q -B org.apache.maven.plugins:maven-dependency-plugin:3.6.1:unpack \
        -Dartifact=org.apache.maven:apache-maven:$maven_version:zip:bin -DoutputDirectory="$tools") >&2 ||
        die "Maven $maven_version could not be fetched"
    chmod +x "$kept/bin/mvn"
    maven=$kept/bin/mvn
}

# with_build_lock COMMAND... : runs a command while no other script of this folder builds.
with_build_lock() {
    mkdir -p "$cache"
    if command -v flock > /dev/null; then
        (
            flock 9
            "$@" 9>&-
        ) 9> "$cache/build.lock"
    else
        "$@"
    fi
}

# source_time : prints when the sources were committed, seconds since 1970; a fixed day where there is no history.
source_time() {
    git -C "$root" log -1 --format=%ct 2> /dev/null || echo 1767225600
}

# What marks a build is the time of its sources and not that of the machine, so that the same sources give the same bytes.
build_stamp=(-DforceContextQualifier="$(date -u -d "@$(source_time)" +%Y%m%d%H%M)"
    -Dproject.build.outputTimestamp="$(date -u -d "@$(source_time)" +%Y-%m-%dT%H:%M:%SZ)")
readonly build_stamp

readonly product=$cache/product
readonly built_from=$cache/built-from

# sources_changed : true where a source of the product is newer than the product, or there is none.
sources_changed() {
    [ -x "$product/slopewright" ] && [ -e "$built_from" ] || return 0
    local newer
    newer=$(find "$root/bundles/core" "$root/bundles/app" "$root/bundles/ui" "$root/features" \
        "$root/releng/parent" "$root/releng/compat" "$root/releng/product" "$root/releng/slopewright.target" "$root/pom.xml" \
        -name target -prune -o \
        \( -type f -o -type d \( -path '*/src' -o -path '*/src/*' -o -path '*/src-gen/*' -o -path '*/data/*' \) \) \
        -newer "$built_from" -print -quit)
    [ -n "$newer" ]
}

# forget_classes : drops what was compiled before. The compiler takes only the sources that changed, and a class that did not change
# goes on calling what another one no longer has.
forget_classes() {
    rm -rf "$root"/bundles/*/*/target/classes
}

# build_product : builds the product and keeps a copy of it that later builds do not disturb.
build_product() {
    sources_changed || return 0
    local log=$cache/build.log fresh=$cache/products/$$ begun=$cache/begun.$$
    need_jdk
    find_maven
    mkdir -p "$cache/products"
    : > "$begun"
    say "Building Slopewright (log in ${log#"$root"/}) ..."
    forget_classes
    if ! (cd "$root" && "$maven" -B -ntp verify -DskipTests -Dcheckstyle.skip=true "${build_stamp[@]}" -pl releng/product -am) > "$log" 2>&1 < /dev/null; then
        grep -E '^\[ERROR\]|^error:' "$log" | head -n 30 >&2
        rm -f "$begun"
        die "the build failed; see ${log#"$root"/}"
    fi
    rm -rf "$fresh"
    cp -a "$root/releng/product/target/products/slopewright/linux/gtk/x86_64" "$fresh"
    "$fresh/slopewright" --help > /dev/null 2>&1 < /dev/null || true
    ln -sfn "products/$$" "$product"
    mv "$begun" "$built_from"
    find "$cache/products" -mindepth 1 -maxdepth 1 ! -name "$$" -mmin +60 -exec rm -rf {} +
}

# ensure_product : builds what is missing, unless SLOPEWRIGHT_NO_BUILD is set.
ensure_product() {
    if [ -n "${SLOPEWRIGHT_NO_BUILD:-}" ]; then
        [ -x "$product/slopewright" ] || die "nothing is built yet, and SLOPEWRIGHT_NO_BUILD forbids building"
        return 0
    fi
    if sources_changed; then
        with_build_lock build_product || exit "$EXIT_INTERNAL"
    fi
}

# start_display [SIZE] : starts a display of its own, 1600x1000x24 unless another size is named, with a window manager; stop_display ends both.
own_processes=()
start_display() {
    local number_file
    mkdir -p "$cache"
    number_file=$(mktemp "$cache/display.XXXXXX")
    Xvfb -displayfd 3 -screen 0 "${1:-1600x1000x24}" -nolisten tcp > /dev/null 2>&1 3> "$number_file" &
    own_processes+=($!)
    local tries=0
    while [ ! -s "$number_file" ]; do
        tries=$((tries + 1))
        [ "$tries" -le 100 ] || die "the virtual display did not start"
        sleep 0.1
    done
    DISPLAY=:$(head -n 1 "$number_file")
    export DISPLAY
    rm -f "$number_file"
    export GDK_BACKEND=x11 NO_AT_BRIDGE=1 SWT_GTK3=1
    unset WAYLAND_DISPLAY
    openbox > /dev/null 2>&1 &
    own_processes+=($!)
}

stop_display() {
    local process
    for process in "${own_processes[@]}"; do
        kill "$process" 2> /dev/null || true
    done
    own_processes=()
}
