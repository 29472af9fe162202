"""Opens a document and saves it under another name, in the host of the Python that runs this, in the project's folder:

    python3 tests/documents/move.py FROM.FCStd TO.FCStd            with the add-on
    python3 tests/documents/move.py FROM.FCStd TO.FCStd --bare     as a host that has never heard of it

So were made ``moved-0.1-by-1.1-0.20-1.0`` and ``moved-0.1-by-1.1-bare-0.20``, from the frozen document of 1.1: the
hosts through which they went stand in their names, in order. Made once and never again, like the frozen ones.
"""

from __future__ import annotations

import os
import sys
import tempfile
from pathlib import Path


def main() -> None:
    source, target = (str(Path(name).resolve()) for name in sys.argv[1:3])
    with tempfile.TemporaryDirectory() as home:
        os.environ["FREECAD_USER_HOME"] = home
        if "--bare" in sys.argv:
            sys.path[:] = [folder for folder in sys.path if Path(folder).resolve() != Path.cwd()]
        else:
            sys.path.insert(0, os.getcwd())
            from workbench_pkg.setup import link_project

            link_project(Path(home))
        folders = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib")
        sys.path += [folder for folder in folders if os.path.isdir(folder)]
        import FreeCAD

        doc = FreeCAD.openDocument(source)
        doc.recompute()
        proxy = doc.getObject("HeartsideStudy").Proxy
        assert (proxy is None) == ("--bare" in sys.argv), proxy
        doc.saveAs(target)
        print(".".join(FreeCAD.Version()[:3]), target)


if __name__ == "__main__":
    main()
