"""``stock``, inside the host: judge boards on the rack."""

from __future__ import annotations

from typing import Any

from movement_core.sheet.stock import judge_stock, stock_text
from movement_core.wood import find_species
from workbench_pkg.batch.inside.asked import settings_asked


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    entry = judge_stock(
        find_species(job["wood"]),
        job["thickness"],
        job["readings"],
        settings_asked(job).year,
        (job["room"][0], job["room"][1]),
        skin_mc=job["skin"],
        meter=job["meter"],
        wood_temperature_c=job["wood_temperature"],
        species_correction=job["species_correction"],
        set_gravity=job["set_gravity"],
    )
    return {"stock": entry, "text": stock_text(entry)}
