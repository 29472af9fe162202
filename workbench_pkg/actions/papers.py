"""Papers inside the document: a schedule and a drawing page of each top, and out again. One undo step each."""

from __future__ import annotations

import warnings
from typing import Any

import FreeCAD as App
import Part

from movement_core.errors import InputError
from movement_core.piece.hardware import hardware_of
from movement_core.sheet.pages.material import planned_tops
from movement_core.sheet.schedule import fasteners_block, schedule, without_empty
from movement_core.sheet.template.marks import CutOutline, TemplateMarks, template_marks
from movement_core.sheet.template.numbers import drawn_numbers
from movement_core.wording import say
from workbench_pkg.actions.check import Answer, work_out
from workbench_pkg.actions.hardware import PlaceWish, plans_of
from workbench_pkg.actions.transaction import one_step
from workbench_pkg.host.drawing import drawn
from workbench_pkg.host.leaves import read_leaves
from workbench_pkg.objects import papers as kept

CROSS_MM = 1.8  # arm of a screw's cross on paper


def write_schedule(doc: Any, answer: Answer | None = None) -> Any:
    """Put a spreadsheet with parts, joints, fasteners and gaps into the document, in place of an earlier one.

    ``answer``: of the document, where it has been worked out already. Returns the spreadsheet.
    """
    answer = answer or work_out(doc)
    blocks = schedule(answer.entry, [top.entry for top in planned_tops(answer.whole)])
    with one_step(doc, say("Heartside: write the schedule")):
        kept.remove(doc, (kept.SCHEDULE,))
        sheet = kept.write_sheet(doc, say("Schedule"), blocks)
        doc.recompute([sheet])
    return sheet


def draw_page(doc: Any, top: str = "", plan: str = "") -> Any:
    """Put a drawing page of a top from below, with screws, slots and their table, into the document.

    ``top``, ``plan``: as for ``place_plan``. Returns the page. Pages of other tops are replaced as well. Where the
    host leaves the page's view empty, which 1.0 may do without a window, a warning says so and what to do.

    Raises
    ------
    InputError : no top, no plan, or something that is missing.
    """
    answer = plans_of(doc, PlaceWish(top))
    if answer.plans is None:
        raise InputError("; ".join(answer.entry["missing"]), where=say("drawing the top"))
    kind = plan or answer.drillable
    answer.hardware(kind)  # raises for a plan that is not there
    chosen = next(one for one in answer.plans.plans if one.kind == kind)
    marks = template_marks(answer.plans, chosen, answer.entry, hardware_of(answer.plans, chosen))
    entry = {**answer.entry, "plans": [one for one in answer.entry["plans"] if one["kind"] == kind]}
    place = answer.plans.found.place
    keys = {board.part.key for board in place.boards}
    solids = [leaf.global_solid() for leaf in read_leaves(doc).leaves if leaf.key in keys]
    solids += _drawn_marks(marks, place)
    with one_step(doc, say("Heartside: draw the top")):
        kept.remove(doc, (kept.PAGE, kept.DRAWN))
        page = kept.write_page(doc, marks, without_empty(fasteners_block(entry)), solids, place.axes)
        doc.recompute()
    view = next(one for one in page.Views if one.TypeId == "TechDraw::DrawViewPart")
    if not drawn(view):
        warnings.warn(kept.not_drawn(page), stacklevel=2)
    return page


def remove_papers(doc: Any) -> int:
    """Take schedule and pages out; one undo step. How many objects went."""
    with one_step(doc, say("Heartside: take the papers out")):
        return kept.remove(doc)


def _drawn_marks(marks: TemplateMarks, place: Any) -> list[Any]:
    """Wires below the top: cross, circle and number of each screw, the outline of each slot."""
    across, up, along = (App.Vector(*axis) for axis in place.axes)
    half, low = place.length_mm / 2, place.lines_mm[0]
    origin = App.Vector(*place.origin) - up

    def at(x: float, y: float) -> Any:
        return origin + along * (x - half) + across * (y + low)

    wires: list[Any] = []
    arm = CROSS_MM / kept.page_scale(marks)
    for screw in marks.screws:
        x, y = screw.place
        wires.append(Part.makeCircle((screw.hole_mm or 4.0) / 2, at(x, y), up))
        wires += [
            Part.makeLine(at(x - arm, y), at(x + arm, y)),
            Part.makeLine(at(x, y - arm), at(x, y + arm)),
        ]
    cuts: list[CutOutline] = [cut for cut in marks.cuts if cut.purpose in ("slot", "mortise", "groove")]
    wires += [Part.makePolygon([at(*point) for point in (*cut.points, cut.points[0])]) for cut in cuts]
    for one in drawn_numbers(marks, kept.page_scale(marks), CROSS_MM, kept.DIGITS_MM):
        wires += [Part.makePolygon([at(*point) for point in line]) for line in one.lines]
    return wires
