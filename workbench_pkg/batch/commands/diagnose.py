"""``diagnose``: why a board or top is no longer flat, likeliest cause first. Standard library only."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from pathlib import Path
from typing import Any

from workbench_pkg.batch import values
from workbench_pkg.batch.answering import ALL_HOLD, NOT_CHECKED, ask_worker, print_answer
from workbench_pkg.batch.shared_words import Shared, file_typed, settings_typed
from workbench_pkg.setup.speech import phrase, say

# option → field of the core's WarpCase
NUMBERS = (
    ("--width", "width_mm", "MM", phrase("across the grain")),
    ("--thickness", "thickness_mm", "MM", phrase("its thickness")),
    (
        "--pith",
        "pith_mm",
        "MM",
        phrase("how far the tree's centre was from the middle of a board's thickness"),
    ),
    ("--temperature", "temperature_c", "C", phrase("the air it is in (default 20)")),
    ("--humidity", "rh_percent", "RH", phrase("the air it is in (default 50)")),
    ("--days", "days", "DAYS", phrase("how long it has been lying so (default 30)")),
    ("--length", "length_mm", "MM", phrase("along the grain; with it a twist is worked out")),
    ("--twist", "twist_mm", "MM", phrase("how far one corner stands off the plane of the other three")),
    ("--wet-hours", "wet_hours", "HOURS", phrase("one face was wet for so long")),
)
MOISTURES = (
    ("--flat-at", "flat_mc", phrase("its moisture when it was last flat")),
    ("--moisture-now", "now_mc", phrase("its moisture today")),
    ("--show-moisture", "show_mc", phrase("today, by meter near the show face")),
    ("--back-moisture", "back_mc", phrase("today, by meter near the back face")),
    ("--dampest", "most_mc", phrase("the dampest it ever was while it was fixed")),
)

HEARTS = ("show", "back", "mixed", "inside")
LYING = ("free", "bench", "floor", "wall", "sun", "frame", "steel", "cleats")


def add_words(commands: Any, shared: Shared) -> None:
    words = commands.add_parser(
        "diagnose",
        parents=[shared.common, shared.air, shared.day, shared.settings],
        help=say("say why a board or top is no longer flat"),
        description=say(
            "Say why a board or top is no longer flat: likely causes in order, what to measure to decide, what to"
            " do and what not. Name a model and a part, or the wood, width and thickness."),
        epilog=say(
            "Example: heartside diagnose --species 'yellow poplar' --width 1070 --thickness 19 --hollow 32 "
            "--boards 8 --flat-at 10 --humidity 30 --finish 'show bare, back varnish 3'"),
    )  # fmt: skip
    words.add_argument(
        "file",
        type=Path,
        nargs="?",
        default=None,
        metavar="FILE",
        help=say("FCStd, STEP or BREP; it is never written to"),
    )
    words.add_argument("--part", default="", metavar="NAME", help=say("with a model: the part that warped"))
    shape = words.add_mutually_exclusive_group(required=True)
    shape.add_argument(
        "--crown",
        type=_measure("MM"),
        default=None,
        metavar="MM",
        help=say("the middle stands so much higher, seen from the show face"),
    )
    shape.add_argument(
        "--hollow", type=_measure("MM"), default=None, metavar="MM", help=say("the middle lies so much lower")
    )
    words.add_argument("--species", default=None, metavar="WOOD", help=say("the wood ('woods' lists them)"))
    for name, field, unit, meaning in NUMBERS:
        words.add_argument(
            name, dest=field, type=_measure(unit), default=None, metavar=unit, help=say(meaning)
        )
    for name, field, meaning in MOISTURES:
        words.add_argument(
            name, dest=field, type=values.moisture, default=None, metavar="PERCENT", help=say(meaning)
        )
    words.add_argument(
        "--boards",
        type=int,
        default=None,
        metavar="N",
        help=say("of how many boards it is glued (default 1)"),
    )
    words.add_argument(
        "--heart",
        choices=HEARTS,
        default=None,
        help=say("the face nearer the centre of the tree; 'inside' where the board holds it"),
    )
    words.add_argument(
        "--grain-slope", dest="grain_slope", type=_slope, default=None, metavar="SHARE",
        help=say("slope of spiral grain, rise by length, such as 0.03; below 0 climbing to the left"),
    )  # fmt: skip
    words.add_argument(
        "--ring-turn", dest="ring_turn_deg", type=_turn, default=None, metavar="DEGREES",
        help=say("by how much the rings lie turned at the other end against this one: lay a pencil toward the tree's "
                 "centre on both"),
    )  # fmt: skip
    words.add_argument(
        "--finish", default=None, metavar="WORDS", help=say("such as 'varnish 2' or 'show oil 2, back bare'")
    )
    words.add_argument("--lying", choices=LYING, default=None,
                       help=say("where it lies, or what its back is fixed to"))  # fmt: skip
    words.add_argument(
        "--wet-side", choices=("show", "back"), default=None, help=say("which face was wet (default show)")
    )
    words.add_argument(
        "--machined",
        action="store_true",
        default=None,
        help=say("one face was planed, or it was resawn, since"),
    )
    words.add_argument("--format", choices=("text", "json"), default="text")
    words.set_defaults(command="diagnose", carry_out=carry_out)


def _slope(text: str) -> float:
    value = values.number(text)
    if not -0.5 <= value <= 0.5:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no slope of grain; write a number from -0.5 to 0.5", text=text)
        )
    return value


def _turn(text: str) -> float:
    value = values.number(text, ("°",))
    if not 0 <= value <= 180:
        raise argparse.ArgumentTypeError(
            say("{text!r} is no turn of rings; write degrees from 0 to 180", text=text)
        )
    return value


_UNITS = {
    "MM": values.MM,
    "C": values.CELSIUS,
    "RH": values.PERCENT,
    "DAYS": values.DAYS,
    "HOURS": values.HOURS,
}


def _measure(unit: str) -> Callable[[str], float]:
    def typed(text: str) -> float:
        value = values.number(text, _UNITS[unit])
        if not 0 <= value < 1e5:
            raise argparse.ArgumentTypeError(
                say("{text!r} is no such size; write a number of 0 or more", text=text)
            )
        return value

    return typed


def carry_out(options: argparse.Namespace) -> int:
    fields = [field for _, field, *_ in (*NUMBERS, *MOISTURES)] + [
        "boards",
        "heart",
        "finish",
        "lying",
        "wet_side",
        "machined",
        "grain_slope",
        "ring_turn_deg",
    ]
    said = {field: getattr(options, field) for field in fields if getattr(options, field) is not None}
    cup = options.crown if options.crown is not None else -options.hollow
    job = {
        "command": "diagnose",
        "species": options.species,
        "part": options.part,
        "said": {**said, "cup_mm": cup},
    }
    if options.file is not None:
        job.update(file_typed(options.file))
    answer = ask_worker({**job, **settings_typed(options)})
    shown = None if options.file is None else str(options.file)
    print_answer(options, answer, {"path": shown, "diagnosis": answer.get("diagnosis")})
    return NOT_CHECKED if answer.get("errors") else ALL_HOLD
