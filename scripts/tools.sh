# Sourced by ./strawblue, ./check and benchmarks/run: finds a JDK and Maven, installs them where apt may be used
# without asking, builds and keeps what the launcher runs. POSIX shell. Expects $root.

run_dir=$root/target/run
oldest_java=17

say() { printf 'strawblue: %s\n' "$*" >&2; }

# The version of the Java in folder $1, from its release file: starting it to ask would cost a tenth of a second.
java_version() {
    [ -x "$1/bin/java" ] && [ -r "$1/release" ] || return 1
    version=
    while IFS='=' read -r key value; do
        if [ "$key" = JAVA_VERSION ]; then version=${value#\"}; version=${version%%\"*}; fi
    done <"$1/release"
    [ -n "$version" ]
}

new_enough() {
    java_version "$1" || return 1
    major=${version%%[.+-]*}
    case $major in '' | *[!0-9]*) return 1 ;; esac
    [ "$major" -ge "$oldest_java" ]
}

java_on_path() {
    found=$(command -v java) || return 1
    found=$(readlink -f "$found") || return 1
    printf '%s\n' "${found%/bin/java}"
}

# Sets $java_home and $version. With "jdk" as first word, only one that can compile will do.
find_java() {
    for candidate in "${JAVA_HOME:-}" "$(java_on_path)" /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
        [ -n "$candidate" ] && new_enough "$candidate" || continue
        [ "${1:-}" != jdk ] || [ -x "$candidate/bin/javac" ] || continue
        java_home=$candidate
        return 0
    done
    return 1
}

# Runs apt-get as root, if that is possible without asking anyone.
apt_get() {
    if [ "$(id -u)" = 0 ]; then
        DEBIAN_FRONTEND=noninteractive apt-get -o Acquire::Retries=5 -qq "$@"
    else
        sudo -n env DEBIAN_FRONTEND=noninteractive apt-get -o Acquire::Retries=5 -qq "$@"
    fi
}

may_install() {
    command -v apt-get >/dev/null || return 1
    [ "$(id -u)" = 0 ] || { command -v sudo >/dev/null && sudo -n true 2>/dev/null; }
}

jdk_package() {
    for package in openjdk-17-jdk-headless openjdk-21-jdk-headless openjdk-25-jdk-headless default-jdk-headless; do
        if apt-cache show "$package" 2>/dev/null | grep -q '^Version:'; then
            printf '%s\n' "$package"
            return
        fi
    done
}

install_missing() {
    apt_get update && apt_get install -y --no-install-recommends $(find_java jdk || jdk_package) \
        $(command -v mvn >/dev/null || echo maven)
}

# A JDK and Maven, installed if need be; ends the script with 69 where that is impossible.
need_build_tools() {
    if find_java jdk && command -v mvn >/dev/null; then return 0; fi
    if may_install; then
        with_progress "installing a JDK and Maven with apt" install_missing || true
    fi
    missing=
    find_java jdk || missing="a Java development kit, version $oldest_java or newer (Debian: openjdk-17-jdk-headless)"
    command -v mvn >/dev/null || missing="${missing:+$missing and }Maven 3.8 or newer (Debian: maven)"
    [ -n "$missing" ] || return 0
    say "please install $missing,"
    say "for example: sudo apt-get install openjdk-17-jdk-headless maven"
    say "then give the same command again. If Java is in an unusual place, set JAVA_HOME to it."
    exit 69
}

# with_progress WORDS COMMAND...: one line on the terminal that counts seconds; plain where there is no terminal.
# What the command prints goes to the log.
with_progress() {
    words=$1
    shift
    mkdir -p "$run_dir"
    started=$(date +%s)
    counter=
    if [ -t 2 ]; then
        count_seconds "$words" &
        counter=$!
        trap 'kill $counter; exit 130' INT TERM
    else
        say "$words ..."
    fi
    "$@" >>"$run_dir/build.log" 2>&1
    outcome=$?
    if [ -n "$counter" ]; then
        kill "$counter" 2>/dev/null
        trap - INT TERM
        printf '\r\033[K' >&2
    fi
    [ $outcome != 0 ] || say "$words: done in $(($(date +%s) - started)) s"
    return $outcome
}

# Ends by itself when the script that started it is gone.
count_seconds() {
    while kill -0 $$ 2>/dev/null; do
        printf '\rstrawblue: %s ... %s s ' "$1" $(($(date +%s) - started)) >&2
        sleep 0.5
    done
}

maven() { JAVA_HOME=$java_home mvn -B -ntp "$@"; }

sources_changed() {
    [ ! -e "$run_dir/stamp" ] && return 0
    [ -n "$(find "$root/pom.xml" "$root/core/pom.xml" "$root/app/pom.xml" "$root/core/src/main" "$root/app/src/main" \
        "$root/scripts" -newer "$run_dir/stamp" -print -quit 2>/dev/null)" ]
}

# In a subshell, for its change of folder.
compile() (
    cd "$root" || exit
    rm -rf app/target/lib
    touch "$run_dir/stamp.new"
    maven -Dfast -Dmaven.test.skip=true -Djacoco.skip=true -pl app -am package || exit
    rm -rf "$run_dir/own" "$run_dir/lib" "$run_dir"/*.jsa
    mkdir -p "$run_dir/own"
    cp -R app/target/lib "$run_dir/lib" && rm "$run_dir"/lib/strawblue-*.jar || exit
    "$java_home/bin/java" -cp "app/target/tools/*" scripts/PlainClasses.java "$run_dir/own" \
        app/target/lib/strawblue-*.jar app/target/strawblue-app-*.jar || exit
    mv "$run_dir/stamp.new" "$run_dir/stamp"
)

# Our own jars first: each table is looked for in one jar after the other, and a jar is opened for it.
class_path() {
    classes=
    for jar in "$run_dir"/own/*.jar "$run_dir"/lib/*.jar; do classes=${classes:+$classes:}$jar; done
}

archive_name() { archive=$run_dir/classes-$version.jsa; }

# An archive of every class a start needs, so that later starts map it instead of reading and checking each one. A static
# archive, because a dynamic one leaves out old class files, of which the command-line library has hundreds.
train() {
    class_path
    practice=$(mktemp -d) || return
    "$java_home/bin/java" $java_flags -Xshare:off -XX:DumpLoadedClassList="$practice/classes" \
        -Dstrawblue.root="$root" -cp "$classes" org.strawblue.app.cli.Training "$practice"
    "$java_home/bin/java" $java_flags -Xshare:dump -XX:SharedClassListFile="$practice/classes" \
        -XX:SharedArchiveFile="$practice/archive" -cp "$classes"
    # an empty archive stands for "tried, in vain": starts are slower then, but not tried again each time
    if [ -s "$practice/archive" ]; then mv "$practice/archive" "$archive"; else : >"$archive"; fi
    rm -rf "$practice"
}

# Serial collector, and room for the young objects of a short run: less to set up, and no pause before it is over. The archive
# is mapped where it was made for: moved elsewhere, each of its pointers would be rewritten at every start. Huge pages, because
# a short run is first of all a matter of touching fresh memory.
java_flags="-XX:+IgnoreUnrecognizedVMOptions -XX:+UseSerialGC -XX:+UseTransparentHugePages -Xms48m -Xmn32m -Xmx512m -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -Xlog:disable -XX:-UsePerfData -Djava.awt.headless=true -Dfile.encoding=UTF-8"

# The optimising compiler pays only where thousands of rows go through the same code: for a single answer it would take the
# processor from the program, and the answer is there before its work is of use. Its code needs little room, taken at once.
quick_flags="-XX:TieredStopAtLevel=1 -XX:ReservedCodeCacheSize=16m -XX:InitialCodeCacheSize=8m"

locked() {
    mkdir -p "$run_dir"
    if command -v flock >/dev/null; then
        exec 9>"$run_dir/lock"
        flock 9
    fi
    "$@"
    locked_outcome=$?
    exec 9>&-
    return $locked_outcome
}

build() {
    sources_changed || return 0 # another start may have built while this one waited
    : >"$run_dir/build.log"
    need_build_tools
    archive_name
    if ! with_progress "building, once" compile; then
        say "the build failed; the whole log is in target/run/build.log:"
        grep 'ERROR' "$run_dir/build.log" | sed '/Help 1/q' >&2
        exit 70
    fi
}

prepare() {
    find_java || need_build_tools
    archive_name
    [ -e "$archive" ] || with_progress "preparing quick starts on Java $version" train || true
}
