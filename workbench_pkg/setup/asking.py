"""Runs inside the host: prints what this host is, as JSON."""

from __future__ import annotations

import json
import sys

import FreeCAD

print(
    json.dumps(
        {
            "version": ".".join(FreeCAD.Version()[:3]),
            "python": ".".join(str(n) for n in sys.version_info[:3]),
            "library": FreeCAD.__file__ if hasattr(FreeCAD, "__file__") else "",
            "home": FreeCAD.getHomePath(),
        }
    )
)
