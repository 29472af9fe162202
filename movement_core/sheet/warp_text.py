"""A diagnosis of a warped top as text."""

from __future__ import annotations

from movement_core.piece.warp import LEAST_SHARE, Diagnosis, WarpCase
from movement_core.wording import phrase, say, word

LEAST_SHOWN = LEAST_SHARE
# option → what it tells: without these most causes cannot be worked out
WORTH_TELLING = (
    ("--flat-at", phrase("its moisture when it was last flat")),
    ("--moisture-now", phrase("its moisture today")),
    ("--heart", phrase("the face nearer the centre of the tree")),
    ("--finish", phrase("what is on each face")),
)


def options_worth_telling(case: WarpCase) -> tuple[tuple[str, str], ...]:
    """The options that nobody gave, with what they tell."""
    metered = case.now_mc is not None or (case.show_mc is not None and case.back_mc is not None)
    told = (case.flat_mc is not None, metered, case.heart is not None, case.finish is not None)
    return tuple(one for one, known in zip(WORTH_TELLING, told) if not known)


def warp_text(case: WarpCase, found: Diagnosis) -> str:
    """Causes in order with their figures, what to measure, what to do and what not."""
    way = say("crown") if case.cup_mm >= 0 else say("hollow")
    lines = [
        say("{wood}, {width:g} x {thickness:g} mm, {cup:.1f} mm {way}",
            wood=case.species.name, width=case.width_mm, thickness=case.thickness_mm, cup=abs(case.cup_mm), way=way),
        "", say("Likely causes (crown +, hollow -; shares order them, and are no promise)"),
    ]  # fmt: skip
    for number, cause in enumerate((c for c in found.causes if c.share >= LEAST_SHOWN), 1):
        lines.append(
            say("{n}. {share:.0f} %  {name}: would make {low:+.1f} to {high:+.1f} mm",
                n=number, share=100 * cause.share, name=cause.name, low=cause.least_mm, high=cause.most_mm)
        )  # fmt: skip
        lines += ["   " + cause.reason, "   " + say("To do: {remedy}", remedy=cause.remedy)]
    rest = [cause.name for cause in found.causes if cause.share < LEAST_SHOWN]
    if rest:
        lines.append(say("Unlikely: {names}", names="; ".join(rest)))
    asked = ", ".join(f"{option} ({word(what)})" for option, what in options_worth_telling(case))
    if asked:
        lines += ["", say("Not told yet: {options}", options=asked)]
    lines += ["", say("To decide: {measure}", measure=found.measure), "", say("Do not")]
    lines += ["- " + line for line in found.not_to]
    lines += ["", say("An estimate from averages: a board differs from its species by some 15 %.")]
    return "\n".join(lines)
