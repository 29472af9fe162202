"""Names of the solids of a STEP file, read from its text, for a host that imports the solids without them.

ISO 10303-21 text is a list of entities that refer to each other by number. The name of a solid stands with its
product, or with the use of the product in an assembly. Which imported solid is which is told by the distances
between its vertices, which no placement changes. No FreeCAD here.
"""

from __future__ import annotations

import contextlib
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

LARGEST_TEXT = 64 << 20  # characters; a larger file keeps the host's own names
_ENTITY = re.compile(r"#(\d{1,18})\s*=\s*((?:'[^']*'|[^';])*);")  # '' in a string is two strings to it
_REFERENCE = re.compile(r"#(\d{1,18})")
_STRING = re.compile(r"'((?:[^']|'')*)'")
_CODED = re.compile(r"\\X2\\([0-9A-Fa-f]+)\\X0\\|\\X\\([0-9A-Fa-f]{2})|\\S\\(.)")
_SAME_MM = 0.01
_UNITS_MM = (1.0, 25.4, 10.0, 1000.0)  # what the file may count in: the host always gives millimetres
_MOST_VERTICES = 150  # of a solid with more, the distances from their middle tell enough


@dataclass(frozen=True, eq=False)
class NamedSolid:
    """A solid of the file: its name, and the distances between its vertices, least first, in the file's unit."""

    name: str
    distances: Floats


def named_solids(text: str) -> list[NamedSolid]:
    """The solids that a file's text gives a name to, in its order, once for each use in an assembly."""
    if len(text) > LARGEST_TEXT:
        return []
    entities = {int(number): body.strip() for number, body in _ENTITY.findall(text)}
    references = {number: [int(n) for n in _REFERENCE.findall(body)] for number, body in entities.items()}
    kinds: dict[str, list[int]] = {}
    for number, body in entities.items():
        kinds.setdefault(body.split("(", 1)[0].strip().upper(), []).append(number)
    uses: dict[int, list[str]] = {}
    for number in kinds.get("NEXT_ASSEMBLY_USAGE_OCCURRENCE", []):
        definitions = [r for r in references[number] if entities.get(r, "").startswith("PRODUCT_DEFINITION(")]
        if len(definitions) == 2:
            uses.setdefault(definitions[1], []).append(_text(entities[number], 1))
    found = []
    for number in kinds.get("SHAPE_DEFINITION_REPRESENTATION", []):
        definition = _down(number, references, entities, "PRODUCT_DEFINITION")
        product = _down(number, references, entities, "PRODUCT")
        if definition is None or product is None:
            continue
        name = _text(entities[product], 1) or _text(entities[product], 0)
        for solid in _solids_of(references[number][1:], references, entities):
            distances = _distances(solid, references, entities)
            for use in uses.get(definition) or [name]:
                found.append(NamedSolid(use if use and not use.isdigit() else name, distances))
    return found


def match_names(named: Sequence[NamedSolid], vertices: Sequence[Floats]) -> list[str | None]:
    """For each imported solid's vertices (N, 3), mm, its name, or None; alike solids take their names in order."""
    tries = [_match(named, vertices, unit) for unit in _UNITS_MM]
    return max(tries, key=lambda names: sum(name is not None for name in names))


def _match(named: Sequence[NamedSolid], vertices: Sequence[Floats], unit: float) -> list[str | None]:
    free = list(named)
    names: list[str | None] = []
    for points in vertices:
        wanted = _between(points)
        match = next((one for one in free if _alike(one.distances * unit, wanted)), None)
        if match is not None:
            free.remove(match)
        names.append(match.name if match is not None and match.name else None)
    return names


def _alike(one: Floats, other: Floats) -> bool:
    return len(one) == len(other) > 0 and bool(np.allclose(one, other, rtol=1e-6, atol=_SAME_MM))


def _between(points: Floats) -> Floats:
    if len(points) < 2:
        return np.zeros(0)
    if len(points) > _MOST_VERTICES:
        return np.sort(np.linalg.norm(points - points.mean(axis=0), axis=1))
    one, other = np.triu_indices(len(points), 1)
    return np.sort(np.linalg.norm(points[one] - points[other], axis=1))


def _down(start: int, references: dict[int, list[int]], entities: dict[int, str], kind: str) -> int | None:
    """The first entity of a kind on the way from a shape's definition to its product."""
    number: int | None = references[start][0] if references[start] else None
    for _ in range(6):
        if number is None:
            return None
        if re.match(rf"{kind}\s*\(", entities.get(number, "")):
            return number
        following = [r for r in references.get(number, []) if entities.get(r, "").startswith("PRODUCT")]
        number = following[0] if following else None
    return None


def _solids_of(
    starts: Iterable[int], references: dict[int, list[int]], entities: dict[int, str]
) -> list[int]:
    """Solids in a representation, or in one that is the same shape as it."""
    solids = []
    same = [
        references[number]
        for number, body in entities.items()
        if body.startswith("SHAPE_REPRESENTATION_RELATIONSHIP(")
    ]
    for start in starts:
        group = {start} | {other for pair in same if start in pair for other in pair}
        for number in sorted(group):
            for reference in references.get(number, []):
                if re.match(r"(MANIFOLD_SOLID_BREP|BREP_WITH_VOIDS)\s*\(", entities.get(reference, "")):
                    solids.append(reference)
    return solids


def _distances(solid: int, references: dict[int, list[int]], entities: dict[int, str]) -> Floats:
    points, seen, waiting = [], {solid}, [solid]
    while waiting:
        number = waiting.pop()
        body = entities.get(number, "")
        if body.startswith("VERTEX_POINT"):
            for reference in references[number]:
                point = re.search(r"\(\s*([^()]*)\)\s*\)$", entities.get(reference, ""))
                with contextlib.suppress(ValueError):  # no numbers: the host will say what it thinks of them
                    cells = [float(cell) for cell in point.group(1).split(",")] if point else []
                    if len(cells) == 3:
                        points.append(cells)
            continue
        for reference in references.get(number, []):
            if reference not in seen:
                seen.add(reference)
                waiting.append(reference)
    return _between(np.array(points, dtype=float).reshape(-1, 3))


def _text(body: str, place: int) -> str:
    """The string at a place among an entity's strings, its coded letters read."""
    strings = _STRING.findall(body.replace("\n", ""))
    return _CODED.sub(_letter, strings[place].replace("''", "'")) if place < len(strings) else ""


def _letter(match: re.Match[str]) -> str:
    if match[1]:
        return bytes.fromhex(match[1]).decode("utf-16-be", "replace")
    return chr(int(match[2], 16)) if match[2] else chr(ord(match[3]) + 128)
