# The Debian 12 packages that building and testing need; sourced by app/start and tests/run.
WITHY_BUILD_PACKAGES="cmake ninja-build g++ ccache qt6-base-dev qt6-svg-dev libqt6sql6-sqlite libgl1-mesa-dev
  libboost-dev liblemon-dev libcli11-dev libical-dev fonts-lato fonts-vollkorn python3
  python3-fonttools"
WITHY_TEST_PACKAGES="libgtest-dev libgmock-dev nlohmann-json3-dev glpk-utils poppler-utils fonts-noto-core tzdata
  clang-14 libclang-rt-14-dev python3-icalendar python3-vobject"

# Installs those that are not there; as root directly, else through sudo.
installMissing() {
  local missing="" p
  for p in "$@"; do
    dpkg-query -W -f='${Status}' "$p" 2>/dev/null | grep -q "install ok installed" || missing="$missing $p"
  done
  [ -z "$missing" ] && return 0
  echo "Installing:$missing"
  local as=""
  [ "$(id -u)" = 0 ] || as="sudo"
  $as apt-get update
  $as env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing
}
