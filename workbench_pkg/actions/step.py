"""The piece with its slots cut, as STEP for whoever goes on with it; the model itself is never changed.

What was said of each part's wood goes along: in its name, and in a table beside the file, as text words in the axes of
the file. Only what was said is written, nothing that was inferred.
"""

from __future__ import annotations

import csv
import io
import os
import tempfile
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import FreeCAD as App
import numpy as np

from movement_core.errors import FileError
from movement_core.piece.hardware import parts_cut
from movement_core.piece.part import Solid
from movement_core.piece.tags import Tags
from movement_core.wording import say
from workbench_pkg.actions.check import TABLE_ENDING, table_beside
from workbench_pkg.actions.hardware import PlaceWish, PlanAnswer, PlanQuestion, answer_plans, plans_of
from workbench_pkg.actions.reading import ReadSolids, read_piece, read_solids
from workbench_pkg.actions.settings import Settings
from workbench_pkg.host.documents import opened
from workbench_pkg.host.hardware_shapes import holds_point, joined, shared_volume, solid_of
from workbench_pkg.host.plain_files import check_new_file, write_file

FORMS = (".step", ".stp")
LEAST_VOLUME_MM3 = 1e-3


@dataclass(frozen=True)
class StepReport:
    """What was written: names of all parts, names of those that were cut, and what was not cut, one sentence each."""

    parts: tuple[str, ...]
    cut: tuple[str, ...]
    refused: tuple[str, ...]


def export_cut(
    doc: Any, output: str | os.PathLike[str], top: str = "", plan: str = "", *, force: bool = False
) -> StepReport:
    """Write the visible parts of an open document as STEP, with the slots of a plan cut; the document stays as it is.

    Parameters
    ----------
    output : the file to write, ending in .step or .stp; NAME.wood.csv is written beside it.
    top, plan : as for ``place_plan``. force : replace files that are there.

    Raises
    ------
    InputError : no top, no plan, or something that is missing. FileError : a file cannot or may not be written.
    """
    target = Path(output)
    _check(target, [doc.FileName or None], force)
    return _export(read_solids(doc), plans_of(doc, PlaceWish(top)), plan, target, force)


def export_cut_file(
    path: Path, output: Path, settings: Settings, wish: PlaceWish, plan: str = "", force: bool = False
) -> StepReport:
    """The same of a file, which is never written to."""
    _check(output, [path, path.with_name(path.stem + TABLE_ENDING)], force)
    table, _ = table_beside(path)
    with opened(path) as doc:
        answer = answer_plans(PlanQuestion(settings, read_piece(doc, table, settings.shop), wish, ""))
        return _export(read_solids(doc, table), answer, plan, output, force)


def _check(target: Path, sources: Sequence[Any], force: bool) -> None:
    check_new_file(target, FORMS, sources, force)
    check_new_file(_table(target), (".csv",), sources, force)


def _table(target: Path) -> Path:
    return target.with_name(target.stem + TABLE_ENDING)


def _export(read: ReadSolids, answer: PlanAnswer, plan: str, target: Path, force: bool) -> StepReport:
    kind = plan or answer.drillable
    hardware = answer.hardware(kind)
    wanted = parts_cut(hardware.cuts)
    refused = list(hardware.refused)
    names, cut, rows = [], [], []
    scratch = App.newDocument("HeartsideStep", hidden=True)
    try:
        objects = []
        for solid, leaf in zip(read.solids, read.leaves):
            shape = leaf.global_solid()
            tools = []
            for one in wanted.get(solid.key, ()):
                tool = solid_of(one.body)
                if shared_volume(shape, tool) < LEAST_VOLUME_MM3:
                    refused.append(say("{what}: there is no wood to cut", what=one.name))
                elif one.blind and not holds_point(shape, one.blind):
                    refused.append(say("{what}: it would come through on the other side", what=one.name))
                else:
                    tools.append(tool)
            if tools:
                shape = _cut(shape, joined(tools), solid.name)
                cut.append(solid.name)
            words = words_of(solid)
            obj = scratch.addObject("Part::Feature", "Part")
            obj.Label = f"{solid.name} {_text(words)}".strip()
            obj.Shape = _written_in(shape)
            objects.append(obj)
            names.append(solid.name)
            rows.append({"part": solid.name, **words})
        scratch.recompute()
        content = _step(objects)
    finally:
        App.closeDocument(scratch.Name)
    write_file(target, content, force)
    write_file(_table(target), _csv(rows), force)
    return StepReport(tuple(names), tuple(cut), tuple(refused))


def _cut(shape: Any, tool: Any, name: str) -> Any:
    made = shape.cut(tool)
    if made.isNull() or not made.isValid() or len(made.Solids) != 1 or not made.Volume < shape.Volume:
        raise FileError(say("the host fails to cut it"), where=name, todo=say("check the part's geometry"))
    return made.Solids[0]


def _written_in(shape: Any) -> Any:
    """The same solid with its place written into its geometry.

    Otherwise the file keeps the place apart, whoever reads it has an object that was turned, and the directions of
    the tags, which are global, would be turned a second time.
    """
    place, made = shape.Placement.toMatrix(), shape.copy()
    made.Placement = App.Placement()
    made.transformShape(place, True)
    return made


def _step(objects: Sequence[Any]) -> bytes:
    """The objects as the text of a STEP file."""
    import Import

    with tempfile.TemporaryDirectory() as folder:
        made = Path(folder) / "piece.step"
        Import.export(list(objects), str(made))
        return made.read_bytes()


def words_of(solid: Solid) -> dict[str, str]:
    """What was said of a part, as text words; directions in the global axes, in which the file has it."""
    tags, axes = solid.tags, solid.outline.own_axes
    words: dict[str, str] = {}

    def direction(vector: Any) -> str:
        turned = np.asarray(vector, dtype=float) @ np.asarray(axes, dtype=float)
        return ",".join(f"{value:.9g}" for value in np.where(np.abs(turned) < 1e-12, 0.0, turned))

    if tags.species is not None:
        words["species"] = tags.species.name
    for word, value in (("grain", tags.grain), ("show", tags.show)):
        if value is not None:
            words[word] = direction(value)
    if tags.heart is not None:
        words["heart"] = tags.heart if isinstance(tags.heart, str) else direction(tags.heart)
    words |= _plain_words(tags)
    if tags.fixed is not None:
        words["fixed"] = f"{tags.fixed:g}" if isinstance(tags.fixed, float) else direction(tags.fixed)
    return words


def _plain_words(tags: Tags) -> dict[str, str]:
    points = tags.ring_points_mm
    flat = [value for point in points for value in point] if points is not None else None
    said: Mapping[str, Any] = {
        "cut": tags.cut, "rings": tags.ring_angle_deg, "pith": tags.pith_mm, "far": tags.far_pith_mm,
        "radius": tags.ring_radius_mm, "points": flat, "slope": tags.grain_slope, "finish": tags.finish,
        "figure": tags.figure, "looks": tags.looks, "glued": tags.glued_mc, "flattened": tags.flattened_mc,
        "fitted": tags.fitted_mc, "kept": None if tags.kept is None else tags.kept.name, "lot": tags.lot,
    }  # fmt: skip
    return {word: _value(value) for word, value in said.items() if value is not None}


def _value(value: Any) -> str:
    if isinstance(value, str):
        return value
    if isinstance(value, (tuple, list)):
        return ",".join(f"{each:.9g}" for each in value)
    return f"{value:.9g}"


def _text(words: Mapping[str, str]) -> str:
    """The words as a tag in a name: the species first."""
    if not words:
        return ""
    rest = [f"{word} {value}" for word, value in words.items() if word != "species"]
    return "wood{" + "; ".join([*([words["species"]] if "species" in words else []), *rest]) + "}"


def _csv(rows: Sequence[Mapping[str, str]]) -> bytes:
    columns = ["part", *dict.fromkeys(word for row in rows for word in row if word != "part")]
    out = io.StringIO(newline="")
    writer = csv.DictWriter(out, columns, restval="")
    writer.writeheader()
    named: set[str] = set()
    for row in rows:
        if row["part"] not in named:  # the table goes by names; alike parts are told apart by their own tags
            writer.writerow(row)
        named.add(row["part"])
    return out.getvalue().encode("utf-8")
