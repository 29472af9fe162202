"""Works a document, or the plans of its top, out without holding up the window."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Any

import FreeCAD as App

from workbench_pkg.actions.check import Answer, Question, answering, read_document
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.actions.hardware import PlanAnswer, PlanQuestion, answer_plans, read_for_plans, remember
from workbench_pkg.panels import working
from workbench_pkg.panels.enough import no_solid, not_said

translate = App.Qt.translate


def work_out_soon(
    doc: Any,
    then: Callable[[Any, Answer], object],
    key: str,
    ended: Callable[[], object] | None = None,
) -> working.Work | None:
    """Read a document now, work it out in a thread, and hand document and answer on in the window's thread.

    Nothing is handed on where the document was changed or closed meanwhile, or the user cancels. Raises what reading
    the document raises, and HeartsideError where it shows no solid. ``key``: work of the same key that still runs is
    cancelled.
    """
    name = doc.Name

    def read() -> Question:
        question = read_document(doc)
        if not question.read.parts:
            raise no_solid(doc)
        return question

    return working.work(
        translate("Heartside", "Working the piece out"),
        read=read,
        solve=answering,
        then=lambda answer: then(App.listDocuments()[name], answer),
        still=partial(holds, name),
        ended=ended,
        key=key,
    )


def plans_soon(doc: Any, then: Callable[[Any, PlanAnswer], object], key: str) -> working.Work | None:
    """The same for the plans of its first top, which are remembered; a box tells where there can be none."""
    name = doc.Name

    def take(answer: PlanAnswer) -> None:
        if answer.plans is None:
            raise not_said(answer.tops[answer.chosen])
        remember(answer)
        then(App.listDocuments()[name], answer)

    return working.work(
        translate("Heartside", "Working the plans out"),
        read=lambda: read_for_plans(doc),
        solve=answer_plans,
        then=take,
        still=partial(holds, name),
        key=key,
    )


def holds(name: str, question: Question | PlanQuestion) -> bool:
    """Whether a document is still there and stands as it was read."""
    now = App.listDocuments().get(name)
    return now is not None and fingerprint(now) == question.fingerprint
