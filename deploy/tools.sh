# Finds what every command here needs: a JDK 25, a Maven, and a build that is not older than its sources.
# Sourced, not run. `root` is the top of the source tree.

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd -P)
app=$root/deploy/target/quarkus-app

refuse() {
    echo "$*" >&2
    exit 1
}

java_major() {
    "$1/bin/java" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1
}

is_jdk_25() {
    [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] && [ "$(java_major "$1")" -ge 25 ] 2>/dev/null
}

# JAVA_HOME first, then the java on the PATH, then the folders where systems and tools put their JDKs.
find_jdk() {
    local candidate on_path
    on_path=$(command -v java 2>/dev/null) && on_path=$(readlink -f "$on_path") && on_path=${on_path%/bin/java}
    for candidate in "${JAVA_HOME:-}" "${on_path:-}" \
        /usr/lib/jvm/* /usr/java/* /usr/local/*jdk* /usr/local/lib/jvm/* /opt/*jdk* /opt/java/* /opt/jvm/* \
        "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/* "$HOME"/.local/share/mise/installs/java/* "$HOME"/.asdf/installs/java/*; do
        if [ -n "$candidate" ] && is_jdk_25 "$candidate"; then
            JAVA_HOME=$candidate
            export JAVA_HOME
            return 0
        fi
    done
    refuse "No JDK 25 was found in JAVA_HOME, on the PATH or in the usual folders; install one (Temurin 25, for instance) or set JAVA_HOME."
}

find_maven() {
    local version
    command -v mvn >/dev/null 2>&1 || refuse "Maven 3.8.7 or newer is needed and no mvn is on the PATH."
    version=$(mvn -v 2>/dev/null | sed -e 's/\x1b\[[0-9;]*m//g' -n -e 's/^Apache Maven \([0-9.]*\).*/\1/p')
    [ "$(printf '%s\n3.8.7\n' "$version" | sort -V | head -n 1)" = 3.8.7 ] \
        || refuse "Maven 3.8.7 or newer is needed; this one is ${version:-unknown}."
}

# True when the packaged application is missing or a source is newer than it.
build_is_old() {
    [ -z "${CHANGEOVER_BUILT:-}" ] || return 1
    [ -f "$app/quarkus-run.jar" ] || return 0
    [ -n "$(find "$root"/pom.xml "$root"/*/pom.xml "$root"/*/src/main "$root"/contracts/src/test \
        -newer "$app/quarkus-run.jar" -type f -print -quit 2>/dev/null)" ]
}

# Packages the application without its tests.
build() {
    find_maven
    (cd "$root" && MAVEN_OPTS="--sun-misc-unsafe-memory-access=allow ${MAVEN_OPTS:-}" mvn -q -B -Dstyle.color=never -Dquick -DskipTests package </dev/null) >&2 || refuse "The build failed; its reasons stand above."
}

build_if_old() {
    if build_is_old; then
        local began=$SECONDS
        build
        [ -z "${1:-}" ] || printf '%6d s  %s\n' "$((SECONDS - began))" "$1"
    fi
}

# The data folder that a command line means.
data_folder() {
    local previous=
    for word in "$@"; do
        [ "$previous" != --data ] || { printf '%s' "$word"; return; }
        case $word in --data=*) printf '%s' "${word#--data=}"; return ;; esac
        previous=$word
    done
    printf '%s' "$HOME/.local/share/changeover"
}

# A running installation keeps its own copy of the application, so that a build beside it disturbs nothing; its commands use that copy.
use_installed_copy() {
    local copy
    copy=$(data_folder "$@")/app
    if [ -f "$copy/quarkus-run.jar" ]; then app=$copy; else [ -f "$app/quarkus-run.jar" ] || build; fi
}

# The classes of the packaged application, for the commands that are plain Java.
class_path() {
    printf '%s' "$app/app/*:$app/lib/main/*:$app/lib/boot/*"
}

run_java() {
    exec "$JAVA_HOME/bin/java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Dchangeover.root="$root" \
        -Djava.util.logging.manager=org.jboss.logmanager.LogManager --sun-misc-unsafe-memory-access=allow --enable-native-access=ALL-UNNAMED -cp "$(class_path)" "$@"
}
