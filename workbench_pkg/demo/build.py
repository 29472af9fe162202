"""Build the demo models: two FreeCAD documents and a STEP file with its tags beside it. Runs inside the host.

All of it is invented: the workshop at Lower Sallowby, the house at Fenwhistle End, the pieces and their boards.
What is wrong with them on purpose stands in ``workbench_pkg.demo.faults``.
"""

from __future__ import annotations

from pathlib import Path

import FreeCAD as App

from workbench_pkg.demo.bench import write_bench
from workbench_pkg.demo.colours import colours_of
from workbench_pkg.demo.faults import SIDEBOARD, TABLE
from workbench_pkg.demo.sideboard import sideboard
from workbench_pkg.demo.table import trestle_table
from workbench_pkg.host.looks import add_window_half

SCENARIO = (
    "Invented for trying out Heartside: a piece for the house at Fenwhistle End from the two-bench workshop of "
    "Lower Sallowby, neither of which exists."
)
LICENCE = "LGPL-2.1-or-later"  # as the program; the host would write its own default
MODELS = {TABLE: trestle_table, SIDEBOARD: sideboard}


def build_demo(folder: Path, repaired: bool = False) -> list[Path]:
    """Write the demo models into a folder, which is made if need be; files of the same names are replaced.

    Parameters
    ----------
    folder : where to write.
    repaired : build the pieces without the faults of ``faults.FAULTS`` and with all their facts told.

    Returns
    -------
    The files that can be checked: ``trestle_table.FCStd``, ``sideboard.FCStd``, ``hall_bench.step``.
    """
    folder.mkdir(parents=True, exist_ok=True)
    paths = []
    for stem, model in MODELS.items():
        path = folder / f"{stem}.FCStd"
        path.unlink(missing_ok=True)  # saving over it would leave a backup beside it
        doc = App.newDocument(stem, hidden=True)
        try:
            doc.Comment = SCENARIO
            doc.License = LICENCE
            model(doc, repaired)
            doc.saveAs(str(path))
            add_window_half(path, doc, colours_of(doc))
        finally:
            App.closeDocument(doc.Name)
        paths.append(path)
    return [*paths, write_bench(folder, repaired)]
