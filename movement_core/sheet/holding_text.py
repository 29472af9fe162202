"""How to hold a top, as text for a terminal: what it does, the ways to hold it side by side, and the chosen one."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from movement_core.air.year import MONTHS
from movement_core.holding.plan_words import case_told
from movement_core.piece.top_shapes import DRIEST, TODAY, WETTEST
from movement_core.sheet.bar_text import bar_lines
from movement_core.sheet.datum import length_told
from movement_core.sheet.lines import capital, table, wrapped
from movement_core.sheet.plan_text import plan_text
from movement_core.sheet.text import printable
from movement_core.wording import say, word

MOST_PROBLEMS = 4
FARTHER_MM = 0.1  # so much farther than on the driest or wettest day is told


def holding_text(entries: Sequence[Mapping[str, Any]]) -> str:
    """Every top one after another, and the cautions of all of them once."""
    cautions = list(dict.fromkeys(text for entry in entries for text in entry.get("cautions", [])))
    mind = ["\n".join([say("Mind"), *(wrapped(text, "  ") for text in cautions)])] if cautions else []
    return "\n\n".join([*(top_text(entry) for entry in entries), *mind])


def top_text(entry: Mapping[str, Any]) -> str:
    """One top: its heading, what it does by itself, the alternatives, the chosen plan."""
    length = length_told(f"{entry['length_mm']:.0f}", entry["length_between_shoulders"])
    heading = (
        f"{printable(entry['name'])}: {length} × {entry['width_mm']:.0f} × "
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
    lines = [_moistures(entry)]
    if entry["hearts"]:
        lines.append(f"{capital(printable(entry['hearts']))}.")
    lines += [_rests(entry), _by_itself(entry)]
    if entry["drawn_fasteners"]:
        lines.append(
            say(
                "As drawn, with {count} small parts under it taken as its fasteners, it is {flat:.1f} mm out of flat "
                "at worst.",
                count=entry["drawn_fasteners"],
                flat=max(entry["as_drawn_out_of_flat_mm"].values()),
            )
        )
    lines += entry["middle_of_ends"]["says"]
    if entry["if_fixed"]:
        lines.append(_if_fixed(entry["if_fixed"]))
    return [wrapped(line, "  ") for line in lines]


def _moistures(entry: Mapping[str, Any]) -> str:
    moisture = entry["moisture_percent"]
    year = say(
        "{driest:.1f} % on its driest day, {wettest:.1f} % on its wettest, {today:.1f} % today.",
        driest=moisture[DRIEST],
        wettest=moisture[WETTEST],
        today=moisture[TODAY],
    )
    if entry["fitted_percent"] is None:
        return year
    return say("Fitted at {fitted:.1f} %; {year}", fitted=entry["fitted_percent"], year=year)


def _by_itself(entry: Mapping[str, Any]) -> str:
    shapes, on_days = {}, [0.0]
    for day in (DRIEST, WETTEST):
        values = [value for name, value in entry["free_departure_mm"].items() if name.split(",")[0] == day]
        shapes[day] = _shape(values)
        on_days += values
    return say(
        "Held by nothing, by its rings and by what its faces differ in moisture, it would {dry} on the driest day and "
        "{wet} on the wettest day, over its width{farther}; with its weight on its frame and no fastener it is "
        "{worst:.1f} mm out of flat at worst, over its whole surface. Wished: {wished:g} mm in every month.",
        farther=_farther(entry["free_departure_mm"], on_days),
        dry=shapes[DRIEST],
        wet=shapes[WETTEST],
        worst=max(entry["unheld_out_of_flat_mm"].values()),
        wished=entry["wish"]["flatness_mm"],
    )


def _farther(free: Mapping[str, float], on_days: Sequence[float]) -> str:
    """Of the months those in which it goes farthest, where that is farther than on the driest and the wettest day."""
    told = []
    for sign, reached in ((1, max(on_days)), (-1, -min(on_days))):
        name = max(free, key=lambda case: sign * free[case])
        month = name.split(",")[0]
        if month in MONTHS and sign * free[name] - reached >= FARTHER_MM:
            told.append(say("{shape} in {month}", shape=_shape([free[name]]), month=word(month)))
    return say(", and farther in between: {told}", told=", ".join(told)) if told else ""


def _rests(entry: Mapping[str, Any]) -> str:
    told = []
    for way, how in (("across", say("across its grain")), ("along", say("along it"))):
        names = [printable(rail["name"]) for rail in entry["rails"] if rail["runs"] == way]
        if names:
            told.append(f"{', '.join(names)} ({how})")
    if entry["rests_also_on"]:
        names = [printable(name) for name in entry["rests_also_on"]]
        told.append(say("{names} (no rail for fasteners)", names=", ".join(names)))
    alone = say("Nothing lies under it: it has no frame.")
    rests = say("Rests on {names}.", names="; ".join(told)) if told else alone
    if entry["recipes"]:
        bars = [f"{printable(one['part'])} ({word(one['kind'])})" for one in entry["recipes"]]
        rests += " " + say("Stiffened by {names}.", names=", ".join(bars))
    return rests


def _shape(values: Sequence[float]) -> str:
    low, high = min(values), max(values)
    if max(abs(low), abs(high)) < 0.05:
        return say("lie flat")
    if low * high < 0 and min(abs(low), abs(high)) >= 0.05:
        return say(
            "lie between {low:.1f} mm hollow and a crown of {high:.1f} mm", low=abs(low), high=abs(high)
        )
    sizes = sorted((abs(low), abs(high)))
    far = f"{sizes[1]:.1f}"
    if sizes[1] - sizes[0] >= 0.05:
        far = say("{least:.1f} to {most:.1f}", least=sizes[0], most=sizes[1])
    return say("crown {far} mm", far=far) if low + high > 0 else say("go hollow {far} mm", far=far)


def _if_fixed(fixed: Mapping[str, Any]) -> str:
    told = []
    if fixed["shrinkage_kept_mm"] and fixed["shrinkage_kept_mm"] >= 0.1:
        kept = say(
            "{kept:.1f} mm of shrinkage would be kept, up to {tension:.0f} MPa across the grain",
            kept=fixed["shrinkage_kept_mm"],
            tension=fixed["tension_mpa"],
        )
        if fixed["strength_mpa"]:
            kept += " " + say("against a strength of {strength:g}", strength=fixed["strength_mpa"])
        told.append(f"{kept}: {_split(fixed['split'])}")
    if fixed["swelling_kept_mm"] and fixed["swelling_kept_mm"] >= 0.1:
        crush = {
            "none": say("no crushing"),
            "begins": say("the fibres begin to crush"),
            "certain": say("the fibres crush"),
        }
        kept = say("{kept:.1f} mm of swelling would be kept", kept=fixed["swelling_kept_mm"])
        told.append(f"{kept}: {crush[fixed['crush']]}")
    what = "; ".join(told) or say("it hardly moves")
    return say("Glued or screwed solid across its whole width: {what}.", what=what)


def _split(chance: str) -> str:
    if chance == "unknown":
        return say("whether it splits cannot be foreseen, its strength across the grain is not known")
    if chance == "none":
        return say("a split is not to fear")
    return say("a split is {chance}", chance=word(chance))


# ---- the alternatives ------------------------------------------------------------------------------------


def _head() -> tuple[str, ...]:
    return (
        say("kind"), say("fasteners"), say("driest"), say("wettest"), say("worst"), say("pull"), say("allowed"), "",
    )  # fmt: skip


def _alternatives(entry: Mapping[str, Any]) -> str:
    plans = [plan for plan in entry["plans"] if plan["count"]]
    if not plans:
        return ""
    rows = [_head(), *(_alternative(plan) for plan in plans)]
    lines = ["  " + say("Ways to hold it (mm out of flat; N)"), *table(rows, left=(0, 7))]
    refused = list(dict.fromkeys(text for plan in entry["plans"] for text in plan["refused"]))
    if refused:
        lines.append("  " + say("Refused"))
        lines += [wrapped(printable(text), "    ") for text in refused]
    return "\n".join(lines)


def _alternative(plan: Mapping[str, Any]) -> tuple[str, ...]:
    used = plan["kinds_used"]
    name = (
        " + ".join(f"{count} {word(kind)}" for kind, count in used.items()) if len(used) > 1 else plan["name"]
    )
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
        say(
            "The nearest, {name} with {count} fasteners, leaves {flat:.1f} mm out of flat ({when}).",
            name=plan["name"],
            count=plan["count"],
            flat=plan["worst_out_of_flat_mm"],
            when=case_told(plan["worst_case"]),
        )
    ]
    pull, allowed = plan["worst_pull_n"], plan["allowable_pull_n"]
    if allowed is not None and pull > allowed:
        told.append(
            say(
                "It is pulled with {pull:.0f} N, and {allowed:.0f} N are allowed.", pull=pull, allowed=allowed
            )
        )
    return [*told, *(f"{capital(printable(text))}." for text in plan["other_problems"][:MOST_PROBLEMS])]
