"""Which models are meant by what was typed: files, folders, patterns. Standard library only."""

from __future__ import annotations

import fnmatch
import glob
import os
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path

from workbench_pkg.setup.speech import phrase, say

ENDINGS = (".fcstd", ".step", ".stp", ".brep", ".brp")
MODELS = phrase("FCStd, STEP (.step, .stp) or BREP (.brep, .brp)")


@dataclass(frozen=True)
class Wanted:
    """A model as it is shown; ``problem`` says why what was typed gives none."""

    shown: str
    problem: str = ""


def select(typed: Sequence[str], leave_out: Sequence[str] = ()) -> list[Wanted]:
    """The models meant, in the order typed and by name within a folder or pattern.

    A file is taken at its word, whatever its ending, and as often as it is typed. A folder stands for the models in it
    and below; a pattern (``*``, ``?``, ``[…]``, ``**`` for any depth) for the models and folders it fits. Those give
    each model once. What begins with a point is passed over, and what fits one of ``leave_out``: a pattern without a
    slash is held against the name alone.
    """
    wanted: list[Wanted] = []
    seen = set()
    for word in typed:
        if os.path.isdir(word):
            found, problem = (
                list(_below(word)),
                say("there is no model in this folder. Allowed: {models}.", models=say(MODELS)),
            )
        elif glob.has_magic(word) and not os.path.lexists(word):
            found, problem = _fitting(word)
        else:
            seen.add(os.path.abspath(word))
            wanted.append(Wanted(str(Path(word))))
            continue
        kept = [path for path in found if not _left_out(path, leave_out)]
        if found and not kept:
            problem = say("every model here is left out. To do: look at --leave-out.")
        if not kept:
            wanted.append(Wanted(word, f"{word}: {problem}"))
        for path in kept:
            place = os.path.abspath(path)
            if place not in seen:
                seen.add(place)
                wanted.append(Wanted(os.path.normpath(path)))
    return wanted


def is_model(path: str) -> bool:
    """Whether the ending is that of a model that can be read."""
    return Path(path).suffix.lower() in ENDINGS


def _below(folder: str) -> Iterator[str]:
    for here, folders, files in os.walk(folder):
        folders[:] = sorted(name for name in folders if not name.startswith("."))
        for name in sorted(files):
            if is_model(name) and not name.startswith("."):
                yield os.path.join(here, name)


def _fitting(pattern: str) -> tuple[list[str], str]:
    """What a pattern fits, and what is to be said where that is no model."""
    fits = sorted(glob.glob(pattern, recursive=True))
    found: list[str] = []
    for path in fits:
        if os.path.isdir(path):
            found += _below(path)
        elif is_model(path):
            found.append(path)
    if fits:
        return found, say(
            "none of the {count} it fits is a model. Allowed: {models}.", count=len(fits), models=say(MODELS)
        )
    return found, say("no file fits this pattern. To do: check it, and put it in quotes.")


def _left_out(path: str, patterns: Sequence[str]) -> bool:
    plain = os.path.normpath(path)
    return any(
        fnmatch.fnmatch(plain if "/" in pattern or os.sep in pattern else os.path.basename(plain), pattern)
        for pattern in patterns
    )
