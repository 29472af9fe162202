"""``woods``, ``years``, ``places``, inside the host: lists of what is known."""

from __future__ import annotations

from typing import Any

from movement_core.sheet.listing import list_places, list_species, list_years

LISTS = {"woods": list_species, "years": list_years, "places": list_places}


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    return {"text": LISTS[job["command"]](job["word"])}
