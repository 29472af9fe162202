"""An arrangement study as plain data and as text."""

from __future__ import annotations

import textwrap
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.section.arrangement import Arrangement, Season, Study
from movement_core.sheet.text import WIDTH, printable
from movement_core.wording import phrase, say, word

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
        "certainty": word(study.guarantee),
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
        *_table(entry),
    ]
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
    lines.append(textwrap.fill(word(MESSAGE), WIDTH))
    return "\n".join(lines)


_RANKS = {
    "drawn": phrase("as drawn"),
    "best": phrase("best looks"),
    "flattest": phrase("flattest"),
    "between": "",
}
# The way that a panel goes; "flat" alone is a cut, so this one has a blank.
_WAYS = {
    "crown": phrase("crown"),
    "hollow": phrase("hollow"),
    "waves": phrase("waves"),
    "flat": phrase("flat "),
}
_LEFT = (0, 4, 5)  # columns that are no figures


def _table(entry: Mapping[str, Any]) -> list[str]:
    """A head and a line a layout: as drawn first, then from best looks to flattest."""
    left_out = max(0, len(entry["layouts"]) - MOST_SHOWN)
    shown = [*entry["layouts"][: MOST_SHOWN - 1], *entry["layouts"][MOST_SHOWN - 1 :][-1:]]
    ranks = ["best", *["between"] * (len(shown) - 2), "flattest"][-len(shown) :]
    wide = max(len(word(rank)) for rank in _RANKS.values())
    heads = [say("layout"), say("looks"), say("from flat"), say("extra"), say("driest"), say("wettest")]
    rows = [heads]
    for rank, layout in zip(["drawn", *ranks], [entry["as_drawn"], *shown]):
        figures = f"{layout['looks']:.1f}", f"{layout['departure_mm']:.2f}", f"{layout['price_mm']:.2f}"
        seasons = _season_told(layout["driest"]), _season_told(layout["wettest"])
        rows.append([f"{word(_RANKS[rank]):{wide}} {_letters(layout)}", *figures, *seasons])
    widths = [max(len(row[column]) for row in rows) for column in range(len(heads))]
    lines = [
        "  "
        + "  ".join(
            f"{cell:{'<' if column in _LEFT else '>'}{width}}"
            for column, (cell, width) in enumerate(zip(row, widths))
        ).rstrip()
        for row in rows
    ]
    if left_out:
        lines.insert(-1, say("  … and {count} more between", count=left_out))
    return lines


def _letters(layout: Mapping[str, Any]) -> str:
    return " ".join(
        f"{board['board']}{'v' if board['over'] else '^'}{'t' if board['turned'] else ''}"
        for board in layout["boards"]
    )


def _season_told(season: Mapping[str, Any]) -> str:
    wide = max(len(word(way).rstrip()) for way in _WAYS.values())
    signed = f"{season['departure_mm']:+.2f}"
    signed = signed[1:] if float(signed) == 0 else signed
    return f"{word(_WAYS[season['way']]).rstrip():{wide}} {signed:>6}"
