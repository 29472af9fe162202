"""Joints that the maker confirmed, from a CSV file beside the model: two parts by name, and the kind."""

from __future__ import annotations

import difflib
from collections.abc import Sequence
from dataclasses import dataclass

from movement_core.piece.contact.joints import KINDS
from movement_core.piece.part import Part
from movement_core.tables import read_headed
from movement_core.wording import say

COLUMNS = ("part", "other", "kind")


@dataclass(frozen=True)
class NamedJoint:
    """One row: the names of two parts, the kind of their joint, and where it was said."""

    part: str
    other: str
    kind: str
    where: str


def joints_from_table(text: str, name: str) -> tuple[tuple[NamedJoint, ...], tuple[str, ...]]:
    """Joints from CSV text with the columns ``part``, ``other`` and ``kind``, and the problems of single rows.

    Comma or semicolon, found from the heading.

    Raises
    ------
    InputError : the heading lacks a column.
    """
    columns, rows = read_headed(text, name, COLUMNS, COLUMNS)
    found, problems = [], []
    for line, cells in rows:
        where = say("{name}, line {line}", name=name, line=line)
        row = dict(zip(columns, (cell.strip() for cell in cells)))
        if not any(row.values()):
            continue
        part, other, kind = (row.get(column, "") for column in COLUMNS)
        if not (part and other and kind):
            problems.append(say("{where}: part, other and kind are all needed.", where=where))
        elif kind not in KINDS:
            problems.append(f"{where}: {no_such_kind(kind)}")
        else:
            found.append(NamedJoint(part, other, kind, where))
    return tuple(found), tuple(problems)


def no_such_kind(kind: str) -> str:
    """What to say of a kind that is none."""
    near = difflib.get_close_matches(kind, KINDS, n=1)
    meant = say(" Did you mean {near!r}?", near=near[0]) if near else ""
    return say(
        "no joint is called {kind!r}. Allowed: {names}.{meant}",
        kind=kind,
        names=", ".join(KINDS),
        meant=meant,
    )


def by_keys(
    joints: Sequence[NamedJoint], parts: Sequence[Part]
) -> tuple[dict[tuple[str, str], str], tuple[str, ...]]:
    """Kinds by the keys of the two parts, and what could not be matched; the first row of a pair counts."""
    keys = {part.name: part.key for part in parts}
    found: dict[frozenset[str], tuple[tuple[str, str], str]] = {}
    problems = []
    for joint in joints:
        unknown = [name for name in (joint.part, joint.other) if name not in keys]
        if unknown:
            near = difflib.get_close_matches(unknown[0], keys, n=1)
            meant = say(" Did you mean {near!r}?", near=near[0]) if near else ""
            problems.append(
                say(
                    "{where}: there is no part {unknown!r}.{meant}",
                    where=joint.where,
                    unknown=unknown[0],
                    meant=meant,
                )
            )
            continue
        pair = keys[joint.part], keys[joint.other]
        if frozenset(pair) in found:
            problems.append(
                say(
                    "{where}: {part!r} and {other!r} stand here twice; the first counts.",
                    where=joint.where,
                    part=joint.part,
                    other=joint.other,
                )
            )
            continue
        found[frozenset(pair)] = pair, joint.kind
    return dict(found.values()), tuple(problems)
