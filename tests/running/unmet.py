"""Runs in an environment of ours: prints the requirements it does not meet, one a line.

    python unmet.py PYPROJECT EXTRA...

The run-time dependencies and the named extras of the project file are looked at. The parsers are those that
pip carries, since nothing else need be there yet.
"""

from __future__ import annotations

import importlib.metadata
import sys

from pip._vendor.packaging.requirements import Requirement

if sys.version_info >= (3, 11):
    import tomllib
else:
    from pip._vendor import tomli as tomllib


def unmet(text: str) -> bool:
    """Whether a requirement such as "numpy>=1.24" is not met here."""
    requirement = Requirement(text)
    if requirement.marker is not None and not requirement.marker.evaluate():
        return False
    try:
        version = importlib.metadata.version(requirement.name)
    except importlib.metadata.PackageNotFoundError:
        return True
    return not requirement.specifier.contains(version, prereleases=True)


with open(sys.argv[1], "rb") as file:
    project = tomllib.load(file)["project"]
wanted = list(project.get("dependencies", []))
for extra in sys.argv[2:]:
    wanted += project["optional-dependencies"][extra]
for each in wanted:
    if unmet(each):
        print(each)
