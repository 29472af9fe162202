"""The system's package manager: what is missing, and installing it when that was asked for.

Only Debian's apt is driven. On any other system the message says what to install, and the user does it.
"""

from __future__ import annotations

import os
import shlex
import shutil
import subprocess
import sys
from collections.abc import Sequence

from workbench_pkg.setup.errors import SetupError
from workbench_pkg.setup.speech import say


def is_root() -> bool:
    """True where this process may install packages and mount (never on Windows)."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def has_apt() -> bool:
    """True on Debian and its relatives."""
    return shutil.which("apt-get") is not None and shutil.which("dpkg-query") is not None


def missing_packages(packages: Sequence[str]) -> list[str]:
    """Those of the Debian packages that are not installed, in the order given."""
    query = subprocess.run(
        ["dpkg-query", "-W", "-f", "${Package} ${db:Status-Status}\n", *packages],
        stdin=subprocess.DEVNULL,
        capture_output=True,
        encoding="utf-8",
        errors="replace",
    )
    installed = {line.split()[0] for line in query.stdout.splitlines() if line.endswith(" installed")}
    return [name for name in packages if name not in installed]


def install_command(packages: Sequence[str]) -> str:
    """The line a user types, as root, to install the packages without recommended extras."""
    names = " ".join(shlex.quote(name) for name in packages)
    return f"apt-get update && apt-get install -y --no-install-recommends {names}"


def ensure_packages(packages: Sequence[str], *, install: bool, why: str, again: str) -> None:
    """Make sure that the Debian packages are installed.

    packages  names of Debian packages
    install   whether the user allowed installing
    why       what they are needed for, to complete "… is needed for {why}"
    again     the command of ours that installs, printed when install is False

    Raises SetupError when they are missing and may not, or could not, be installed. What the package manager
    prints goes to stderr, since stdout belongs to the result.
    """
    if not has_apt():
        raise SetupError(
            say(
                "{names} needed for {why}, and this system has no apt-get.\n"
                "Install FreeCAD 0.20 or newer with your system's own package manager; where its command "
                "line is not on the path, name it in the environment variable FREECADCMD.",
                names=", ".join(packages),
                why=why,
            )
        )
    missing = missing_packages(packages)
    if not missing:
        return
    names = ", ".join(missing)
    needed = say("{names} are needed for {why}, and not installed.", names=names, why=why)
    if len(missing) == 1:
        needed = say("{name} is needed for {why}, and not installed.", name=names, why=why)
    if not install:
        raise SetupError(
            say(
                "{needed} Nothing was installed. To install, type as root:\n  {again}",
                needed=needed,
                again=again,
            )
        )
    if not is_root():
        raise SetupError(
            say(
                "{needed} Installing needs root. Type as root:\n  {command}",
                needed=needed,
                command=install_command(missing),
            )
        )
    _apt("update")
    _apt("install", "-y", "--no-install-recommends", *missing)
    still = missing_packages(missing)
    if still:
        raise SetupError(
            say(
                "{names} could not be installed; try as root:\n  {command}",
                names=", ".join(still),
                command=install_command(still),
            )
        )


def _apt(*arguments: str) -> None:
    command = ["apt-get", "-q", "-o", "DPkg::Lock::Timeout=300", *arguments]
    print(say("setting up:"), shlex.join(command), file=sys.stderr, flush=True)
    # Its progress is of use only when it fails: hundreds of lines otherwise.
    done = subprocess.run(
        command,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
        env={**os.environ, "DEBIAN_FRONTEND": "noninteractive"},
    )
    if done.returncode != 0:
        last = "\n  ".join(done.stdout.strip().splitlines()[-8:])
        raise SetupError(
            say(
                "{names} failed with code {code}:\n  {last}",
                names=shlex.join(command),
                code=done.returncode,
                last=last,
            )
        )
