#!/bin/sh
# Installs a real homeserver and a second client, both test programs of other people, into .hs/.
# Needs Python 3 with venv, PyPI, and for the second client a C compiler, make and cmake.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
root=$(cd "$here/../../.." && pwd)
mkdir -p "$root/.hs"
if ! "$root/.hs/synapse/bin/python" -c "import synapse" 2>/dev/null; then
  python3 -m venv "$root/.hs/synapse"
  "$root/.hs/synapse/bin/pip" install -q --disable-pip-version-check -r "$here/synapse.txt"
fi
# the system's own copy will do as well
if ! /usr/bin/python3 -c "import nio, olm" 2>/dev/null &&
  ! "$root/.hs/nio/bin/python" -c "import nio, olm" 2>/dev/null; then
  python3 -m venv "$root/.hs/nio"
  "$root/.hs/nio/bin/pip" install -q --disable-pip-version-check cmake
  PATH="$root/.hs/nio/bin:$PATH" \
    "$root/.hs/nio/bin/pip" install -q --disable-pip-version-check -r "$here/nio.txt"
fi
echo "homeserver: $("$root/.hs/synapse/bin/python" -c 'import synapse; print(synapse.__version__)') in .hs"
