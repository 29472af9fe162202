"""Getting ready to run: the system's packages, the host, a private profile, running a file inside the host.

Standard library only, and nothing else of ours is imported here: this is what runs before numpy or FreeCAD
are known to be there. `workbench_pkg/__main__.py` and `tests/__main__.py` stand on it.
"""

from __future__ import annotations

from workbench_pkg.setup.errors import PlainError, SetupError, UseError
from workbench_pkg.setup.hostrun import HostFacts, HostRun, ask_host, ensure_host, find_host, run_in_host
from workbench_pkg.setup.packages import (
    ensure_packages,
    install_command,
    is_root,
    missing_packages,
)
from workbench_pkg.setup.profile import link_project, project_root
from workbench_pkg.setup.standing import HostEnded, HostHung, StandingHost
from workbench_pkg.setup.whole_files import work_folder, written_whole

__all__ = [
    "HostEnded",
    "HostFacts",
    "HostHung",
    "HostRun",
    "PlainError",
    "SetupError",
    "StandingHost",
    "UseError",
    "ask_host",
    "ensure_host",
    "ensure_packages",
    "find_host",
    "install_command",
    "is_root",
    "link_project",
    "missing_packages",
    "project_root",
    "run_in_host",
    "work_folder",
    "written_whole",
]
