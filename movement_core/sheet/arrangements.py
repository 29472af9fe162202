"""An arrangement study as plain data and as text."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.section.arrangement import Arrangement, Season, Study
from movement_core.sheet.text import WIDTH, printable
from movement_core.wording import phrase, say

MOST_SHOWN = 12
MESSAGE = phrase(
    "Choose by looks. What a layout goes further from flat is what joinery has to hold, while "
    "letting the top move; 'hold' works that out."
)


def study_entry(name: str, boards: Sequence[str], study: Study, keys: Sequence[str] = ()) -> dict[str, Any]:
    """The study of one panel as plain data: the layouts from best looks to flattest, and the maker's own.

    Boards are numbered from 1 in the order in which they are drawn; ``keys`` name them for good in the document.
    """
    listed = [*study.front]
    own = _layout(study.own, boards)
    entries = [_layout(layout, boards) for layout in listed]
    return {
        "panel": name,
        "boards": [
            {"board": i + 1, "name": name, "key": keys[i] if keys else None} for i, name in enumerate(boards)
        ],
        "moisture_change_driest_percent": round(study.own.driest.mc_change, 2),
        "moisture_change_wettest_percent": round(study.own.wettest.mc_change, 2),
        "as_drawn": own,
        "layouts": entries,
        "tried": study.tried,
        "certainty": study.guarantee,
    }


def _layout(layout: Arrangement, boards: Sequence[str]) -> dict[str, Any]:
    return {
        "boards": [
            {"board": i + 1, "name": boards[i], "over": over, "turned": turned}
            for i, over, turned in zip(layout.order, layout.over, layout.turned)
        ],
        "looks": round(layout.looks, 3),
        "departure_mm": round(layout.departure_mm, 3),
        "price_mm": round(layout.price_mm, 3),
        "driest": _season(layout.driest),
        "wettest": _season(layout.wettest),
    }


def _season(season: Season) -> dict[str, Any]:
    return {"way": season.way, "departure_mm": round(season.departure_mm, 3)}


def study_text(entry: Mapping[str, Any]) -> str:
    """The study for a terminal: one line a layout."""
    lines = [
        say(
            "{panel}: {count} boards, {moisture_change_driest:+.1f} % at the driest and "
            "{moisture_change_wettest:+.1f} % at the wettest since they were made flat.",
            panel=printable(entry["panel"]),
            count=len(entry["boards"]),
            moisture_change_driest=entry["moisture_change_driest_percent"],
            moisture_change_wettest=entry["moisture_change_wettest_percent"],
        ),
        say(
            "Boards are numbered as drawn: 1 is {name}, {count} is {name2}. ^ lies as drawn, v is "
            "turned over, t is turned end for end.",
            name=printable(entry["boards"][0]["name"]),
            count=len(entry["boards"]),
            name2=printable(entry["boards"][-1]["name"]),
        ),
        "",
        f"  {'layout':{_room(entry)}}  looks  from flat  extra  driest         wettest",
    ]
    lines.append(_line(say("as drawn  "), entry["as_drawn"], entry))
    shown = entry["layouts"][:MOST_SHOWN]
    for place, layout in enumerate(shown):
        rank = _RANKS["flattest" if place == len(shown) - 1 else "best" if place == 0 else "between"]
        lines.append(_line(rank, layout, entry))
    if len(entry["layouts"]) > MOST_SHOWN:
        lines.append(say("  … and {count} more between", count=len(entry["layouts"]) - MOST_SHOWN))
    lines.append("")
    certain = say(
        "{upper}{certainty}. mm; + is a crown (centre high), - a hollow. Extra: how much further "
        "from flat than the flattest one.",
        upper=entry["certainty"][:1].upper(),
        certainty=entry["certainty"][1:],
    )
    lines.append(textwrap.fill(certain, WIDTH))
    if not any(layout["looks"] for layout in (entry["as_drawn"], *entry["layouts"])):
        lines.append(say("No board says which of its faces looks better; tag it with 'looks'."))
    lines.append(textwrap.fill(MESSAGE, WIDTH))
    return "\n".join(lines)


_RANKS = {"best": "best looks", "flattest": "flattest  ", "between": "          "}


def _room(entry: Mapping[str, Any]) -> int:
    return max(len(_letters(layout, entry)) for layout in (entry["as_drawn"], *entry["layouts"])) + 11


def _letters(layout: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    return " ".join(
        f"{board['board']}{'v' if board['over'] else '^'}{'t' if board['turned'] else ''}"
        for board in layout["boards"]
    )


def _signed(value: float) -> str:
    text = f"{value:+.2f}"
    return text[1:] if float(text) == 0 else text


def _line(rank: str, layout: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    seasons = "  ".join(
        f"{layout[name]['way']:6} {_signed(layout[name]['departure_mm']):>6}"
        for name in ("driest", "wettest")
    )
    return (
        f"  {rank + ' ' + _letters(layout, entry):{_room(entry)}}  {layout['looks']:5.1f}  "
        f"{layout['departure_mm']:9.2f}  {layout['price_mm']:5.2f}  {seasons}"
    )
