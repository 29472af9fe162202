"""``diagnose``, inside the host: what a model says of the part, what was typed over it, and the causes."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path
from typing import Any

import numpy as np

from movement_core.errors import InputError, UnknownName
from movement_core.piece.solve import SolvedPart
from movement_core.piece.warp import WarpCase, diagnose
from movement_core.section.twist import centre_turn
from movement_core.sheet.warp_text import warp_text
from movement_core.wood import find_species
from movement_core.wording import say
from workbench_pkg.actions.check import solve_document, table_beside
from workbench_pkg.batch.inside.asked import settings_asked
from workbench_pkg.host.documents import opened


def carry_out(job: dict[str, Any]) -> dict[str, Any]:
    said: dict[str, Any] = dict(job["said"])
    if "file" in job:
        said = {**_of_model(job), **said}
    if job["species"]:
        said["species"] = find_species(job["species"])
    for field, option in (("species", "--species"), ("width_mm", "--width"), ("thickness_mm", "--thickness")):
        if field not in said:
            raise InputError(
                say("{option} is not given", option=option),
                where="diagnose",
                todo=say("give {option}, or a model FILE and --part NAME", option=option),
            )
    case = WarpCase(**said)
    found = diagnose(case)
    return {"diagnosis": asdict(found), "text": warp_text(case, found)}


def _of_model(job: dict[str, Any]) -> dict[str, Any]:
    """What a model's part says of itself: wood, sizes, moistures, heart side, finish."""
    path = Path(job["file"])
    table, _ = table_beside(path)
    with opened(path) as doc:
        _, piece = solve_document(doc, settings_asked(job), table)
    names = [solved.part.name for solved in piece.parts]
    if not job["part"]:
        raise InputError(
            say("no part is named"),
            where="diagnose",
            allowed=", ".join(names),
            todo=say("give --part NAME"),
        )
    alike = [solved for solved in piece.parts if solved.part.name == job["part"]]
    if not alike:
        raise UnknownName(
            say("there is no part {part!r}", part=job["part"]), where="diagnose", allowed=", ".join(names)
        )
    return _said_of(alike[0])


def _said_of(solved: SolvedPart) -> dict[str, Any]:
    part = solved.part
    said: dict[str, Any] = {"width_mm": part.frame.width_mm, "thickness_mm": part.frame.thickness_mm,
                            "length_mm": part.frame.length_mm}  # fmt: skip
    if part.species.value is not None:
        said["species"] = part.species.value
    if part.flattened_mc.known:
        said["flat_mc"] = part.flattened_mc.value
    if solved.today_mc is not None:
        said["now_mc"] = solved.today_mc
    if part.finish.origin == "tagged":
        said["finish"] = part.finish.value
    rings = part.rings.value
    if rings is not None and rings.pith_mm is not None:
        said |= {"heart": "show" if rings.pith_mm[1] > 0 else "back", "pith_mm": abs(rings.pith_mm[1])}
        if part.rings.origin == "tagged" and rings.slope is not None:
            said["grain_slope"] = rings.slope
        if part.rings.origin == "tagged" and rings.far_end is not None and rings.far_end.pith_mm is not None:
            said["ring_turn_deg"] = abs(float(np.degrees(centre_turn(rings.pith_mm, rings.far_end.pith_mm))))
    return said
