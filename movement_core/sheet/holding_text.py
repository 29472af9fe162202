"""How to hold a top, as text for a terminal: what it does, the ways to hold it side by side, and the chosen one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.sheet.bar_text import bar_lines
from movement_core.sheet.lines import capital, table, wrapped
from movement_core.sheet.plan_text import plan_text
from movement_core.sheet.text import printable
from movement_core.wording import say

MOST_PROBLEMS = 4


def holding_text(entries: Sequence[Mapping[str, Any]]) -> str:
    """Every top one after another, and the cautions of all of them once."""
    cautions = list(dict.fromkeys(text for entry in entries for text in entry.get("cautions", [])))
    mind = ["\n".join([say("Mind"), *(wrapped(text, "  ") for text in cautions)])] if cautions else []
    return "\n\n".join([*(top_text(entry) for entry in entries), *mind])


def top_text(entry: Mapping[str, Any]) -> str:
    """One top: its heading, what it does by itself, the alternatives, the chosen plan."""
    heading = (
        f"{printable(entry['name'])}: {entry['length_mm']:.0f} × {entry['width_mm']:.0f} × "
        f"{entry['thickness_mm']:.0f} mm, {_boards(len(entry['boards']))}"
    )
    if entry["missing"]:
        lines = [heading, "  " + say("It cannot be worked out before this is said:")]
        lines += [wrapped(printable(text), "    ") for text in entry["missing"]]
        return "\n".join(lines)
    blocks = ["\n".join([heading, *_about(entry)]), _alternatives(entry)]
    best = entry["plans"][0]
    if best["found"]:
        blocks.append(plan_text(best, entry))
    else:
        blocks.append(_none(best, entry))
    blocks += bar_lines(entry["recipes"], entry["datum"])
    if entry["notes"]:
        notes = [wrapped(f"{capital(printable(note))}.", "    ") for note in entry["notes"]]
        blocks.append("\n".join(["  " + say("Taken"), *notes]))
    return "\n\n".join(block for block in blocks if block)


def _boards(count: int) -> str:
    return say("one board") if count == 1 else say("{count} boards edge to edge", count=count)


def _about(entry: Mapping[str, Any]) -> list[str]:
    moisture, free = entry["moisture_percent"], entry["free_departure_mm"]
    fitted = f"Fitted at {entry['fitted_percent']:.1f} %; " if entry["fitted_percent"] is not None else ""
    air = (
        f"{fitted}{moisture['driest day']:.1f} % on its driest day, {moisture['wettest day']:.1f} % on its wettest, "
        f"{moisture['today']:.1f} % today."
    )
    lines = [air]
    if entry["hearts"]:
        lines.append(f"{capital(printable(entry['hearts']))}.")
    lines.append(_rests(entry))
    shapes = []
    for day in ("driest day", "wettest day"):
        values = [value for name, value in free.items() if name.split(",")[0] == day]
        shapes.append(f"{_shape(values)} on the {day}")
    worst = max(entry["unheld_out_of_flat_mm"].values())
    lines.append(
        f"Held by nothing it would {' and '.join(shapes)}; with its weight on its frame and no fastener it is "
        f"{worst:.1f} mm out of flat at worst. Wished: {entry['wish']['flatness_mm']:g} mm in every month."
    )
    if entry["drawn_fasteners"]:
        drawn = max(entry["as_drawn_out_of_flat_mm"].values())
        lines.append(
            f"As drawn, with {entry['drawn_fasteners']} small parts under it taken as its fasteners, it is "
            f"{drawn:.1f} mm out of flat at worst."
        )
    lines += entry["middle_of_ends"]["says"]
    fixed = entry["if_fixed"]
    if fixed:
        lines.append(_if_fixed(fixed))
    return [wrapped(line, "  ") for line in lines]


def _rests(entry: Mapping[str, Any]) -> str:
    told = []
    for way, word in (("across", "across its grain"), ("along", "along it")):
        names = [printable(rail["name"]) for rail in entry["rails"] if rail["runs"] == way]
        if names:
            told.append(f"{', '.join(names)} ({word})")
    if entry["rests_also_on"]:
        told.append(
            f"{', '.join(printable(name) for name in entry['rests_also_on'])} (no rail for fasteners)"
        )
    rests = f"Rests on {'; '.join(told)}." if told else "Nothing lies under it: it has no frame."
    if entry["recipes"]:
        bars = [f"{printable(one['part'])} ({one['kind']})" for one in entry["recipes"]]
        rests += f" Stiffened by {', '.join(bars)}."
    return rests


def _shape(values: Sequence[float]) -> str:
    low, high = min(values), max(values)
    if max(abs(low), abs(high)) < 0.05:
        return "lie flat"
    if low * high < 0 and min(abs(low), abs(high)) >= 0.05:
        return f"lie between {abs(low):.1f} mm hollow and a crown of {high:.1f} mm"
    word = "crown" if low + high > 0 else "go hollow"
    sizes = sorted((abs(low), abs(high)))
    far = f"{sizes[0]:.1f} to {sizes[1]:.1f}" if sizes[1] - sizes[0] >= 0.05 else f"{sizes[1]:.1f}"
    return f"{word} {far} mm"


def _if_fixed(fixed: Mapping[str, Any]) -> str:
    told = []
    if fixed["shrinkage_kept_mm"] and fixed["shrinkage_kept_mm"] >= 0.1:
        strength = f" against a strength of {fixed['strength_mpa']:g}" if fixed["strength_mpa"] else ""
        told.append(
            f"{fixed['shrinkage_kept_mm']:.1f} mm of shrinkage would be kept, up to {fixed['tension_mpa']:.0f} MPa "
            f"across the grain{strength}: a split is {_likely(fixed['split'])}"
        )
    if fixed["swelling_kept_mm"] and fixed["swelling_kept_mm"] >= 0.1:
        crush = {"none": "no crushing", "begins": "the fibres begin to crush", "certain": "the fibres crush"}
        told.append(f"{fixed['swelling_kept_mm']:.1f} mm of swelling would be kept: {crush[fixed['crush']]}")
    return f"Glued or screwed solid across its whole width: {'; '.join(told) or 'it hardly moves'}."


def _likely(split: str) -> str:
    return {
        "unknown": "not foreseeable, its strength across the grain is not known",
        "none": "not to fear",
    }.get(split, split)


# ---- the alternatives ------------------------------------------------------------------------------------

_HEAD = ("kind", "fasteners", "driest", "wettest", "worst", "pull", "allowed", "")


def _alternatives(entry: Mapping[str, Any]) -> str:
    plans = [plan for plan in entry["plans"] if plan["count"]]
    if not plans:
        return ""
    rows = [_HEAD, *(_alternative(plan) for plan in plans)]
    lines = ["  " + say("Ways to hold it (mm out of flat; N)"), *table(rows, left=(0, 7))]
    refused = list(dict.fromkeys(text for plan in entry["plans"] for text in plan["refused"]))
    if refused:
        lines.append("  " + say("Refused"))
        lines += [wrapped(printable(text), "    ") for text in refused]
    return "\n".join(lines)


def _alternative(plan: Mapping[str, Any]) -> tuple[str, ...]:
    used = plan["kinds_used"]
    name = " + ".join(f"{count} {kind}" for kind, count in used.items()) if len(used) > 1 else plan["name"]
    allowed = plan["allowable_pull_n"]
    return (
        name,
        str(plan["count"]),
        f"{plan['driest_out_of_flat_mm']:.1f}",
        f"{plan['wettest_out_of_flat_mm']:.1f}",
        f"{plan['worst_out_of_flat_mm']:.1f}",
        f"{plan['worst_pull_n']:.0f}",
        "?" if allowed is None else f"{allowed:.0f}",
        say("holds it") if plan["found"] else say("does not hold it"),
    )


def _none(plan: Mapping[str, Any], entry: Mapping[str, Any]) -> str:
    if entry["flat_by_itself"]:
        lines = [
            "  "
            + say(
                "It stays within the wish with nothing holding it down; fasteners only keep it in its place."
            )
        ]
    elif entry["rails"]:
        lines = ["  " + say("No plan of these kinds holds it.")]
    else:
        lines = ["  " + say("There is no rail to fasten it to, and by itself it does not stay flat.")]
    if entry["rails"] and not entry["flat_by_itself"]:
        lines += [wrapped(text, "    ") for text in _nearest(plan)]
    if plan["what_would"] and not entry["flat_by_itself"]:
        lines.append("  " + say("What would help, each tried out"))
        lines += [wrapped(f"{capital(text)}.", "    ") for text in plan["what_would"]]
    return "\n".join(lines)


def _nearest(plan: Mapping[str, Any]) -> list[str]:
    """What is wrong with the plan that comes nearest."""
    if not plan["count"]:
        return [f"{capital(text)}." for text in plan["refused"][:MOST_PROBLEMS]]
    told = [
        f"The nearest, {plan['name']} with {plan['count']} fasteners, leaves {plan['worst_out_of_flat_mm']:.1f} mm "
        f"out of flat ({plan['worst_case']})."
    ]
    pull, allowed = plan["worst_pull_n"], plan["allowable_pull_n"]
    if allowed is not None and pull > allowed:
        told.append(f"It is pulled with {pull:.0f} N, and {allowed:.0f} N are allowed.")
    other = [
        text for text in plan["problems"] if "out of flat, wished" not in text and "pulled with" not in text
    ]
    return [*told, *(f"{capital(printable(text))}." for text in other[:MOST_PROBLEMS])]
