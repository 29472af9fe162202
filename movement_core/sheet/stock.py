"""Is this stock ready for that home, and if not, how long till it is: the answer in words and as data."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from movement_core.air.bounds import within
from movement_core.air.daily import Air
from movement_core.errors import InputError
from movement_core.moisture.acceptance import Acceptance, acceptance
from movement_core.moisture.events import BoardInAir
from movement_core.moisture.meter import MoistureReading, meter_moisture
from movement_core.sheet.text import WIDTH
from movement_core.wood import Species

THICKNESS_MM = (1.0, 300.0)  # from veneer to beams (own)
ROOM_C = (-30.0, 45.0)  # sheds in winter, lofts in summer (own)
SPEEDS = (1 / 3, 1.0, 3.0)  # the sources of how fast wood answers span a factor of three either way


def judge_stock(
    species: Species,
    thickness_mm: float,
    readings: Sequence[float],
    home: Air,
    room: tuple[float, float],
    *,
    skin_mc: float | None = None,
    meter: str = "pin",
    wood_temperature_c: float | None = None,
    species_correction: float | None = None,
    set_gravity: float | None = None,
) -> dict[str, Any]:
    """The verdict on stock as plain data.

    Parameters
    ----------
    species, thickness_mm : the boards. readings : percent as the meter shows them, of the core or of the whole.
    home : the air it is meant for. room : (°C, RH percent) of the room it lies in, stickered.
    skin_mc : reading at the surface, if one was taken. meter : "pin" or "pad".
    wood_temperature_c, species_correction : for pins; set_gravity : the density that a pad meter is set to.

    Raises
    ------
    InputError : what is no wood, no density, or a value that cannot be.
    """
    within(thickness_mm, "thickness", *THICKNESS_MM, "mm", todo="give the board's thickness in mm")
    _check_room(*room)
    if species.kind != "wood" or species.specific_gravity_12 is None:
        raise InputError(
            f"{species.name} is no wood of known density", where="stock", todo="name a near relative"
        )
    found = meter_moisture(
        list(readings),
        kind=meter,
        wood_temperature_c=wood_temperature_c,
        species_correction=species_correction,
        set_gravity=set_gravity,
        specific_gravity=None if set_gravity is None else species.specific_gravity_12,
    )
    board = BoardInAir(thickness_mm, species.specific_gravity_12, *room)
    verdicts = [
        acceptance(replace(board, diffusivity_factor=speed), home, found.mc, skin_mc, reading_sd_mc=found.sd)
        for speed in SPEEDS
    ]
    return _entry(species, thickness_mm, found, home, room, verdicts)


def _check_room(temperature_c: float, rh_percent: float) -> None:
    """InputError for what no room is, with what it may have been meant as."""
    if 0 < rh_percent <= 1:
        raise InputError(
            f"a humidity of {rh_percent:g} % looks like a fraction",
            where="room",
            allowed="°C and percent, such as 20/50",
            todo=f"write {100 * rh_percent:g} if that is meant",
        )
    if 45 < temperature_c <= 110:
        raise InputError(
            f"{temperature_c:g} °C is no room; it looks like °F",
            where="room",
            allowed=f"{ROOM_C[0]:g} to {ROOM_C[1]:g} °C",
            todo=f"write {(temperature_c - 32) / 1.8:.0f} if °F were meant",
        )
    within(temperature_c, "room temperature", *ROOM_C, "°C")
    within(rh_percent, "room humidity", 1.0, 100.0, "%")


def _entry(
    species: Species,
    thickness_mm: float,
    found: MoistureReading,
    home: Air,
    room: tuple[float, float],
    verdicts: Sequence[Acceptance],
) -> dict[str, Any]:
    slow, usual, quick = verdicts
    return {
        "species": species.name,
        "thickness_mm": thickness_mm,
        "moisture_percent": round(found.mc, 2),
        "moisture_sd_percent": round(found.sd, 2),
        "corrections": list(found.steps),
        "home": home.name,
        "home_mean_percent": round(usual.target_mc, 2),
        "home_range_percent": [round(v, 2) for v in usual.home_range_mc],
        "room_temperature_c": room[0],
        "room_rh_percent": room[1],
        "room_percent": round(usual.room_mc, 2),
        "ready": usual.ready,
        "doubtful": usual.doubtful,
        "reasons": list(usual.reasons),
        "days_to_wait": {
            "usual": usual.days_to_wait,
            "quickest": quick.days_to_wait,
            "slowest": slow.days_to_wait,
        },
        "notes": [*found.notes, *usual.notes],
    }


def stock_text(entry: dict[str, Any]) -> str:
    """The verdict for a terminal."""
    low, high = entry["home_range_percent"]
    lines = [
        f"{entry['species']}, {entry['thickness_mm']:g} mm: {entry['moisture_percent']:.1f} % "
        f"± {entry['moisture_sd_percent']:.1f}",
        *(f"  {step}" for step in entry["corrections"]),
        f"In use ({entry['home']}): {entry['home_mean_percent']:.1f} % on average, "
        f"{low:.1f} to {high:.1f} % over the year.",
    ]
    if entry["ready"]:
        lines.append("Ready to work.")
    else:
        lines.append("Not ready: " + "; ".join(entry["reasons"]) + ".")
        lines.append(_wait(entry))
    if entry["doubtful"]:
        lines.append(
            "The meter's own error could turn this: take more readings, or weigh and oven-dry an offcut."
        )
    lines += [f"  {note}" for note in entry["notes"]]
    return "\n".join(textwrap.fill(line, WIDTH, subsequent_indent="  ") for line in lines)


def _wait(entry: dict[str, Any]) -> str:
    room = (
        f"In stick in the room it lies in ({entry['room_temperature_c']:g} °C, {entry['room_rh_percent']:g} %), which "
        f"brings wood to {entry['room_percent']:.1f} %,"
    )
    usual, quick, slow = (entry["days_to_wait"][name] for name in ("usual", "quickest", "slowest"))
    if usual is None:
        return f"{room} it does not come right within two years: find drier or damper air."
    longest = f"{slow:.0f}" if slow is not None else "more than 700"
    return f"{room} it takes about {usual:.0f} days ({quick:.0f} to {longest}: sources differ that much)."
