"""The report of one file as text for a terminal."""

from __future__ import annotations

import re
import textwrap
import unicodedata
from collections import Counter
from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.piece.frame import EDGES
from movement_core.sheet.between_text import between_sentences, gap_lines
from movement_core.wording import say, word

WIDTH = 118
MOST_NOTES = 8
NAME_CELLS = 60  # columns of a name in running text
MESSAGE_CELLS = (700, 300)  # columns kept of the start and of the end of a message


def as_text(entry: Mapping[str, Any]) -> str:
    """A heading, one line a part, what is missing, what was found, what could not be read."""
    blocks = [_heading(entry)]
    if entry["parts"]:
        blocks.append(_table(entry["parts"]))
    blocks += _panels(entry.get("panels", []))
    between = [_wrapped(printable(line), "  ") for line in between_sentences(entry)]
    between += ["  " + printable(line) for line in gap_lines(entry)]
    blocks += [say("Between the parts") + "\n" + "\n".join(between)] if between else []
    blocks += _notes(entry["parts"], entry.get("hidden", []))
    names = [each["name"] for each in (*entry["parts"], *entry.get("panels", []))]
    blocks += _findings(entry["findings"], names)
    blocks += _errors(entry["errors"], names)
    if any(part["today_mm"] is not None or part.get("today_range_mm") for part in entry["parts"]):
        blocks.append(_wrapped(_caution(), ""))
    return "\n\n".join(blocks)


def _caution() -> str:
    return say(
        "Estimates from averages, for movement only: a board differs from its species by some 15 %. Loads, overhead, "
        "children, stairs and wall fixings belong to local codes and licensed practice."
    )


def _heading(entry: Mapping[str, Any]) -> str:
    lines = [printable(entry["path"])]
    year, today = entry.get("year"), entry.get("today")
    if year and today:
        low, high = min(year["moisture_percent"]), max(year["moisture_percent"])
        about = say(
            "Year: {year}: its air brings wood to {low:.1f} % in {dry} and {high:.1f} % in {wet}. Basis: {basis}.",
            year=word(year["name"]),
            low=low,
            dry=say(year["driest_month"]),
            high=high,
            wet=say(year["wettest_month"]),
            basis=year["basis"],
        )
        lines.append(_wrapped(about, "  "))
        lines += [_wrapped(printable(note), "    ") for note in year.get("notes", [])[:MOST_NOTES]]
        if len(year.get("notes", [])) > MOST_NOTES:
            lines.append(
                "    " + say("… and {count} more of the kind", count=len(year["notes"]) - MOST_NOTES)
            )
        if today["moisture_percent"] is not None:
            wood = today["moisture_percent"]
            told = (
                say("wood at {wood:.1f} % by meter", wood=wood)
                if today["metered"]
                else say("the air brings wood to {wood:.1f} %; boards lag", wood=wood)
            )
            lines.append("  " + say("Today: {date}, {told}.", date=today["date"], told=told))
    return "\n".join(lines)


_LEFT = 3  # columns with words


def _columns() -> tuple[str, ...]:
    return (
        say("part"), say("material"), say("rings"), say("as drawn"), say("today"), say("driest"), say("wettest"), "±",
        say("thickness"), say("cup"),
    )  # fmt: skip


def _table(parts: Sequence[Mapping[str, Any]]) -> str:
    alike: dict[tuple[str, ...], list[str]] = {}
    for part in parts:
        alike.setdefault(_row(part), []).append(printable(part["name"]))
    columns = _columns()
    rows = [columns, *((_first_of(names, 28), *row) for row, names in alike.items())]
    widths = [max(_cells(row[column]) for row in rows) for column in range(len(columns))]
    lines = [
        "  " + "  ".join(_padded(c, w, left=i < _LEFT) for i, (c, w) in enumerate(zip(row, widths))).rstrip()
        for row in rows
    ]
    lines.insert(1, "  " + "  ".join("-" * width for width in widths))
    rules = Counter(part["doubt"]["wettest"]["rules"] for part in parts if part["doubt"])
    if rules:
        causes = ", ".join(f"{word(cause)} ({count})" for cause, count in rules.most_common())
        lines.append("  " + say("What makes most of the ±, by number of parts: {causes}.", causes=causes))
    legend = (
        say("±: likely error of driest and wettest, two times in three; twice that is nearly certain."),
        say(
            "mm. As drawn: length × width × thickness. Today, driest, wettest: width across the grain, with the month."
        ),
        say(
            "Thickness and cup: driest..wettest; cup + is a crown on the show face, - a hollow. ? is not known."
        ),
    )
    lines += ["  " + line for line in legend]
    return "\n".join(lines)


def _first_of(names: Sequence[str], cells: int) -> str:
    """The first of several alike parts, and how many more there are."""
    more = f" +{len(names) - 1}" if len(names) > 1 else ""
    return shortened(names[0], cells - len(more)) + more


def _row(part: Mapping[str, Any]) -> tuple[str, ...]:
    as_drawn = [part["length_mm"], part["width_mm"], part["thickness_mm"]]
    if part["width_mm"] is None:
        as_drawn = list(part["box_mm"])
    cut = (say(part["cut"]) if part["cut"] else "") or ("?" if part["kind"] in (None, "wood") else "")
    angle = part["ring_angle_deg"]
    return (
        shortened(printable(part["species"] or "?"), 24),
        f"{cut} {angle:.0f}°" if angle is not None else cut,
        " × ".join(f"{value:.1f}".removesuffix(".0") for value in as_drawn),
        *(_size(part, name) for name in ("today", "driest", "wettest")),
        _plus_minus(part),
        _span(part["thickness"]),
        _span(part["cup"], sign=True),
    )


def _size(group: Mapping[str, Any], name: str, month: bool = True, sign: bool = False) -> str:
    """A figure of one day, as one number where its range rounds to one, else as least–most."""
    value, spread = group[f"{name}_mm"], group.get(f"{name}_range_mm")
    when = f" {say(group[f'{name}_month'])[:3]}" if month and group.get(f"{name}_month") else ""
    if value is None and not spread:
        return "?"
    texts = [_signed(v) if sign else f"{v:.1f}" for v in (spread or (value, value))]
    if texts[0] == texts[1]:
        return texts[0] + when
    if sign and texts[0] == texts[1].replace("+", "-"):
        return texts[1].replace("+", "±")
    return f"{texts[0]}–{texts[1]}" + when


def _plus_minus(part: Mapping[str, Any]) -> str:
    """Likely error of the driest and wettest width, the larger."""
    doubt = part["doubt"] or {}
    errors = [
        (day["likely_mm"][1] - day["likely_mm"][0] - (spread[1] - spread[0])) / 2
        for name, day in doubt.items()
        for spread in [part.get(f"{name}_range_mm", (0.0, 0.0))]
        if name != "today"
    ]
    return f"{max(errors):.1f}" if errors and max(errors) >= 0.05 else ""


def _signed(value: float) -> str:
    text = f"{value:+.1f}"
    return text[1:] if float(text) == 0 else text


def _span(group: Mapping[str, Any] | None, sign: bool = False) -> str:
    if not group:
        return "" if sign else "?"
    driest, wettest = (_size(group, name, month=False, sign=sign) for name in ("driest", "wettest"))
    return driest if driest == wettest else f"{driest}..{wettest}"


def _panels(panels: Sequence[Mapping[str, Any]]) -> list[str]:
    if not panels:
        return []
    lines = []
    for panel in panels:
        about = say(
            "{name}: {count} boards edge to edge, {width:.1f} drawn; today {today}, driest {driest}, wettest "
            "{wettest}.",
            name=_name(panel["name"]),
            count=len(panel["boards"]),
            width=panel["width_mm"],
            today=_size(panel, "today"),
            driest=_size(panel, "driest"),
            wettest=_size(panel, "wettest"),
        )
        lines.append(_wrapped(f"{about} {_profile(panel)}", "  "))
    return [
        say("Glued panels, mm, free: fixed to nothing; crown and hollow over the width, by the rings alone")
        + "\n"
        + "\n".join(lines)
    ]


def _profile(panel: Mapping[str, Any]) -> str:
    if panel["months"] is None:
        return say("Its profile is not known: {reason}.", reason=_brief(panel["profile_unknown"]))
    told = []
    for way, sign in ((say("crown"), 1), (say("hollow"), -1)):
        month, most = max(panel["months"].items(), key=lambda item: sign * item[1]["departure_mm"])
        if sign * most["departure_mm"] >= 0.05:
            told.append(
                say("{way} {size:.1f} in {month}", way=way, size=abs(most["departure_mm"]), month=say(month))
            )
    step = max(month["greatest_step_mm"] for month in panel["months"].values())
    shape = say(" and ").join(told) if told else say("it stays flat within 0.05")
    return say(
        "{shape}; greatest step at a glue line {step:.2f}.", shape=shape[0].upper() + shape[1:], step=step
    )


def _notes(parts: Sequence[Mapping[str, Any]], hidden: Sequence[str]) -> list[str]:
    told: dict[str, list[str]] = {}
    for part in parts:
        for about, fact in part["facts"].items():
            if fact["origin"] == "inferred" and about in ("grain", "show", "rings", "fitted"):
                inferred = say(
                    "{fact} inferred, {reason}", fact=say(about), reason=without_sizes(fact["reason"])
                )
                told.setdefault(inferred, []).append(part["name"])
            if fact["origin"] == "missing" and about == "show" and part["cup"]:
                unknown = say("show face not known, {reason}", reason=fact["reason"])
                told.setdefault(unknown, []).append(part["name"])
        if part["twist"]:
            told.setdefault(_twist(part["twist"]), []).append(part["name"])
        for note in part["notes"]:
            told.setdefault(note, []).append(part["name"])
    if hidden:
        told[say("hidden, and left out")] = list(hidden)
    every = [part["name"] for part in parts]
    lines = [_wrapped(f"{_brief(note, every)}: {_some(names)}", "  ") for note, names in told.items()]
    return [say("Inferred and noted") + "\n" + "\n".join(lines)] if lines else []


def _twist(twist: Mapping[str, Any]) -> str:
    if twist["driest_deg"] is None:
        turns = (twist["driest_from_rings_deg"], twist["wettest_from_rings_deg"])
        return say(
            "the rings twist it {dry:+.2f}° driest, {wet:+.2f}° wettest; {note}",
            dry=turns[0],
            wet=turns[1],
            note=twist["notes"][0],
        )
    ends = "; ".join(
        say(
            "{when} {least:+.2f} to {most:+.2f}°, a corner off by {low:.1f} to {high:.1f}",
            when=word,
            least=min(twist[f"{when}_deg"]),
            most=max(twist[f"{when}_deg"]),
            low=min(twist[f"{when}_corner_lift_mm"]),
            high=max(twist[f"{when}_corner_lift_mm"]),
        )
        for when, word in (("driest", say("driest")), ("wettest", say("wettest")))
    )
    return say("twists: {ends}", ends=ends)


def without_sizes(reason: str) -> str:
    """A reason without its figures, so that parts of many sizes share one line."""
    sizes = re.sub(r"\\{\w+\\}", "[0-9.e+]+", re.escape(re.sub(":[^}]*", "", word(EDGES))))
    return re.sub(f", {sizes}", "", reason)


def _some(names: Sequence[str], most: int = 6) -> str:
    return _listed([_name(name) for name in names], most)


def _listed(shown: Sequence[str], most: int = 6) -> str:
    first = ", ".join(shown[:most])
    if len(shown) <= most:
        return first
    return say("{first} and {count} more", first=first, count=len(shown) - most)


def _findings(findings: Sequence[Mapping[str, Any]], names: Sequence[str]) -> list[str]:
    if not findings:
        return [say("No findings.")]
    alike: dict[tuple[str, str, str], list[str]] = {}
    for finding in findings:
        when = " " + say("(worst in {month})", month=say(finding["month"])) if finding["month"] else ""
        key = (finding["severity"], finding["message"] + when, finding["remedy"])
        alike.setdefault(key, []).append(" + ".join(_name(name) for name in finding["parts"]))
    lines = []
    for (severity, message, remedy), where in alike.items():
        lines.append(_wrapped(f"[{say(severity)}] {_listed(where)}: {_brief(message, names)}", "  "))
        lines.append(_wrapped(f"→ {_brief(remedy, names)}", "      "))
    count = say("{count} findings", count=len(findings)) if len(findings) > 1 else say("1 finding")
    return [count + "\n" + "\n".join(lines)]


def _errors(errors: Sequence[Mapping[str, Any]], names: Sequence[str]) -> list[str]:
    if not errors:
        return []
    lines = [_wrapped(_brief(e["message"], names), "  ") for e in errors]
    return [say("Could not be checked") + "\n" + "\n".join(lines)]


def _wrapped(text: str, indent: str) -> str:
    return textwrap.fill(text, WIDTH, initial_indent=indent, subsequent_indent=indent + "  ")


def _name(name: str) -> str:
    return shortened(printable(name), NAME_CELLS)


def _brief(message: str, names: Sequence[str] = ()) -> str:
    """A message with the names in it shortened; what is long all the same loses its middle."""
    for name in sorted({name for name in names if len(name) > NAME_CELLS}, key=len, reverse=True):
        message = message.replace(name, _name(name))
    message = printable(message)
    start, end = MESSAGE_CELLS
    if _cells(message) <= start + end:
        return message
    return shortened(message, start) + shortened(message[::-1], end - 1)[-2::-1]


def printable(text: str) -> str:
    """Text from a file with everything that could move a terminal's cursor shown as a code."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(
        c if c.isprintable() and unicodedata.category(c) not in ("Cf", "Cs") else f"\\x{ord(c):02x}"
        for c in text
    )


def _cells(text: str) -> int:
    """Columns that a text takes in a terminal."""
    if text.isascii():  # names of thousands of letters are measured in every line that tells them
        return len(text)
    return sum(
        0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1 for c in text
    )


def _padded(text: str, width: int, left: bool) -> str:
    fill = " " * (width - _cells(text))
    return text + fill if left else fill + text


def shortened(text: str, cells: int) -> str:
    """The text cut to so many columns, with an ellipsis where it was cut."""
    if _cells(text) <= cells:
        return text
    kept = ""
    for c in text:
        if _cells(kept + c) > cells - 1:
            break
        kept += c
    return kept + "…"
