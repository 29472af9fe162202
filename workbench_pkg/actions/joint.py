"""Say how parts are joined where it was inferred otherwise, and take it back: kept in the model, one undo step."""

from __future__ import annotations

import csv
import itertools
from collections.abc import Iterable, Mapping, Sequence
from pathlib import Path
from typing import Any

from movement_core.errors import HeartsideError, InputError
from movement_core.piece.contact.joints import KINDS
from movement_core.piece.joint_table import NamedJoint, by_keys, joints_from_table, no_such_kind
from movement_core.piece.part import Part
from movement_core.wording import say
from workbench_pkg.actions.beside import find_beside, text_of
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.objects.joints import keep_joints, kept_joints

JOINTS_ENDING = ".joints.csv"
MOST_PAIRS = 400  # more at once is a slip of the selection


def confirm_joint(obj_a: Any, obj_b: Any, kind: str | None, sub_a: str = "", sub_b: str = "") -> int:
    """Say what joins the parts of two objects of one document; returns for how many pairs of parts.

    Parameters
    ----------
    obj_a, obj_b, sub_a, sub_b : objects and sub-paths as the selection gives them. One that stands for several parts
        (a link array, a board that other containers link to) means each of them.
    kind : one of the kinds of joint, such as "slides", "glued cross-grain", "rests"; None takes it back.

    Raises
    ------
    InputError : no such kind, no part, or the same part twice; then nothing is changed.
    """
    if kind is not None and kind not in KINDS:
        raise InputError(no_such_kind(kind), where=say("joint"))
    doc = obj_a.Document
    reading = read_leaves(doc, hidden=True)
    sides = []
    for obj, sub in ((obj_a, sub_a), (obj_b, sub_b)):
        leaves = reading.find(obj, sub)
        if not leaves:
            raise InputError(
                say("{name!r} is no part of this document", name=obj.Label),
                where=say("joint"),
                todo=say("select two parts"),
            )
        sides.append([leaf.key for leaf in leaves])
    pairs = {frozenset(pair) for pair in itertools.product(*sides) if pair[0] != pair[1]}
    if not pairs or len(pairs) > MOST_PAIRS:
        raise InputError(
            say("that means {count} pairs of parts", count=len(pairs)),
            where=say("joint"),
            todo=say("select two parts"),
        )
    _keep(doc, {leaf.key for leaf in reading.leaves}, dict.fromkeys(pairs, kind))
    return len(pairs)


def confirm_joints(doc: Any, joints: Iterable[tuple[str, str, str | None]]) -> int:
    """Say what joins pairs of parts by their keys, all in one undo step; returns for how many.

    Parameters
    ----------
    joints : (key of a part, key of the other, kind); None for the kind takes it back.

    Raises
    ------
    InputError : no such kind or part, or nothing to say; then nothing is changed.
    """
    said = {frozenset((one, other)): kind for one, other, kind in joints}
    there = {leaf.key for leaf in read_leaves(doc, hidden=True).leaves}
    for pair, kind in said.items():
        if kind is not None and kind not in KINDS:
            raise InputError(no_such_kind(kind), where=say("joint"))
        gone = sorted(pair - there)
        if gone or len(pair) != 2:
            raise InputError(
                say("{names} make no joint of this document", names=", ".join(gone or sorted(pair))),
                where=say("joint"),
                todo=say("give the keys of two parts, as the report tells them"),
            )
    if not said:
        raise InputError(
            say("no joint is chosen"), where=say("joint"), todo=say("choose one or more joints first")
        )
    _keep(doc, there, said)
    return len(said)


def _keep(doc: Any, there: set[str], said: Mapping[frozenset[str], str | None]) -> None:
    # Joints of parts that are gone go with them.
    kinds = {
        pair: kind
        for pair, kind in kept_joints(doc).items()
        if set(pair) <= there and frozenset(pair) not in said
    }
    for pair, new in said.items():
        if new is not None:
            one, other = sorted(pair)
            kinds[one, other] = new
    with one_step(doc, say("Heartside: confirm a joint")):
        keep_joints(doc, kinds)


def confirmed_joints(
    doc: Any, parts: Sequence[Part], named: Sequence[NamedJoint] = ()
) -> tuple[dict[tuple[str, str], str], tuple[str, ...]]:
    """Kinds by the keys of two parts, from the document and from beside it, and what could not be used."""
    from_table, problems = by_keys(named, parts)
    try:
        kept = kept_joints(doc)
    except InputError as error:
        return from_table, (*problems, str(error))
    bad = tuple(
        say("a joint kept in the document: {problem}", problem=no_such_kind(k))
        for k in kept.values()
        if k not in KINDS
    )
    good = {pair: kind for pair, kind in kept.items() if kind in KINDS}
    said = {frozenset(pair) for pair in good}
    return {**{p: k for p, k in from_table.items() if frozenset(p) not in said}, **good}, (*problems, *bad)


def joints_beside(path: Path) -> tuple[tuple[NamedJoint, ...], tuple[str, ...]]:
    """Joints from the CSV file beside a model (``table.step`` → ``table.joints.csv``), and its problems."""
    try:
        beside = find_beside(path, path.stem + JOINTS_ENDING)
        return ((), ()) if beside is None else joints_from_table(text_of(beside), beside.name)
    except (HeartsideError, csv.Error, OSError) as error:
        return (), (say("the joints beside the model cannot be read: {error}", error=error),)
