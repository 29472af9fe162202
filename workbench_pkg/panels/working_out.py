"""Works a document out without holding up the window."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import FreeCAD as App

from workbench_pkg.actions.check import Answer, Question, answering, read_document
from workbench_pkg.actions.fingerprint import fingerprint
from workbench_pkg.panels import working

translate = App.Qt.translate


def work_out_soon(
    doc: Any,
    then: Callable[[Any, Answer], object],
    key: str,
    ended: Callable[[], object] | None = None,
) -> working.Work | None:
    """Read a document now, work it out in a thread, and hand document and answer on in the window's thread.

    Nothing is handed on where the document was changed or closed meanwhile, or the user cancels. Raises what reading
    the document raises. ``key``: work of the same key that still runs is cancelled.
    """
    name = doc.Name

    def still(question: Question) -> bool:
        now = App.listDocuments().get(name)
        return now is not None and fingerprint(now) == question.fingerprint

    return working.work(
        translate("Heartside", "Working the piece out"),
        read=lambda: read_document(doc),
        solve=answering,
        then=lambda answer: then(App.listDocuments()[name], answer),
        still=still,
        ended=ended,
        key=key,
    )
