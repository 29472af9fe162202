"""What the parts of a document would be with facts that nobody has written yet: for showing before it is said."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from movement_core.piece.facts import TAGGED
from movement_core.piece.frame import Measure
from movement_core.piece.part import Part, parts_of
from movement_core.piece.tag_sources import merge
from movement_core.piece.tags import AXES, MOISTURES, WORDS, Tags, tags_from_words
from workbench_pkg.actions.reading import read_solids
from workbench_pkg.actions.tag import as_text
from workbench_pkg.host.leaf import Leaf

Floats = NDArray[np.float64]
Facts = Mapping[str, object]  # word → value; None: say nothing of it

STRAIGHT = 0.9999  # cosine from which a direction counts as an axis of the object


class Draft:
    """The solids of a document, read once. ``parts`` works out what they are, with these facts in place of theirs."""

    def __init__(self, doc: Any) -> None:
        read = read_solids(doc)
        self.leaves: dict[str, Leaf] = {leaf.key: leaf for leaf in read.leaves}
        self._solids = tuple(replace(s, measure=_kept(s.measure) if s.measure else None) for s in read.solids)

    def parts(self, facts: Mapping[str, Facts] | None = None) -> dict[str, Part]:
        """Every visible part by its key; ``facts`` by key."""
        own = facts or {}
        solids = [
            replace(solid, tags=with_facts(solid.tags, solid.name, own[solid.key]))
            if solid.key in own
            else solid
            for solid in self._solids
        ]
        return {part.key: part for part in parts_of(solids)}


def with_facts(tags: Tags, part: str, facts: Facts) -> Tags:
    """Tags with facts said anew or taken away; what cannot be understood becomes a problem."""
    bare = tags
    for word, value in facts.items():
        if value is None and word in WORDS:
            names = [f"{one}_mc" for one in MOISTURES] if word == "built" else [WORDS[word][0]]
            cleared: dict[str, Any] = dict.fromkeys(names)
            bare = replace(bare, **cleared)
    said = {word: as_text(value) for word, value in facts.items() if value is not None}
    return merge(tags_from_words(part, said, "panel"), bare)


def own_direction(part: Part, direction: Floats) -> str:
    """A direction of the document's frame in the axes of the part's own object, as the tag says it."""
    assert part.outline is not None
    own = np.linalg.solve(part.outline.own_axes.T, np.asarray(direction, dtype=float))
    own /= np.linalg.norm(own)
    for name, axis in AXES.items():
        if np.dot(own, axis) > STRAIGHT:
            return name
    return ",".join(f"{value:.9g}" for value in own)


def accepted(part: Part) -> dict[str, object]:
    """The facts of a part that were inferred, by word, as they would be said; empty where nothing was.

    What is taken for want of knowing (bare wood, a plain figure, one moisture in place of another) is among them: a
    maker who looks at it and agrees says it.
    """
    facts: dict[str, object] = {}
    frame = part.frame
    if part.moves and frame.grain.known and frame.grain.origin != TAGGED:
        facts["grain"] = own_direction(part, frame.axes[2])
    if part.moves and frame.show.known and frame.show.origin != TAGGED:
        facts["show"] = own_direction(part, frame.axes[1])
    rings = part.rings
    if part.moves and rings.value is not None and rings.origin != TAGGED:
        facts["cut"] = rings.value.cut_class
    for word in MOISTURES:
        moisture = getattr(part, f"{word}_mc")
        if moisture.known and moisture.origin != TAGGED:
            facts[word] = round(float(moisture.value), 2)
    return facts


def as_it_lies(part: Part) -> dict[str, object]:
    """Grain and show face of a part as they stand, where they are not told: places on its end mean nothing without."""
    frame, facts = part.frame, dict[str, object]()
    if frame.grain.origin != TAGGED:
        facts["grain"] = own_direction(part, frame.axes[2])
    if frame.show.origin != TAGGED:
        facts["show"] = own_direction(part, frame.axes[1])
    return facts


def flipped(part: Part, facts: Facts) -> dict[str, object]:
    """The grain the other way, and every place on the ends where it was.

    facts : what the part says now by word. Turning the arrow round mirrors the section's x and swaps the ends.
    """
    turned: dict[str, object] = {"grain": own_direction(part, -part.frame.axes[2])}
    if part.frame.show.origin != TAGGED:
        turned["show"] = own_direction(part, part.frame.axes[1])
    near, far = facts.get("pith"), facts.get("far")
    if near is not None and far is not None:
        near, far = far, near
    for word, place in (("pith", near), ("far", far), ("points", facts.get("points"))):
        if place is not None:
            values = np.ravel(np.asarray(place, dtype=float)).copy()
            values[::2] *= -1.0
            turned[word] = tuple(values.tolist())
    return turned


def turned(part: Part, facts: Facts) -> dict[str, object]:
    """The grain along the next of the object's axes; what was said of another section is taken back."""
    order = ["x", "y", "z"]
    now = own_direction(part, part.frame.axes[2]).lstrip("-") if part.frame.grain.known else "z"
    following = order[(order.index(now) + 1) % 3] if now in order else "x"
    changed: dict[str, object] = {"grain": following}
    for word in ("pith", "far", "points", "show"):
        if facts.get(word) is not None:
            changed[word] = None
    return changed


def _kept(measure: Measure) -> Measure:
    """The same measure, asking the host once for each set of axes."""
    known: dict[bytes, tuple[Floats, Floats]] = {}

    def ask(axes: Floats) -> tuple[Floats, Floats]:
        key = (np.round(axes, 12) + 0.0).tobytes()
        if key not in known:
            known[key] = measure(axes)
        return known[key]

    return ask
