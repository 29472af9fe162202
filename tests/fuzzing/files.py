"""Documents, STEP and BREP files, right and wrong, and the guard that reads them."""

from __future__ import annotations

import io
import random
import zipfile
from collections.abc import Callable
from pathlib import Path

from tests.fuzzing import spoiling
from workbench_pkg.host.guard import Limits, check_file
from workbench_pkg.host.step_names import named_solids

XML = (
    '<?xml version="1.0" encoding="utf-8"?>\n<Document SchemaVersion="4"><Objects Count="1"><Object name="Box"/>'
    '</Objects><ObjectData Count="1"><Object name="Box"><Properties Count="1"><Property name="Label"><String '
    'value="Shelf wood{oak}"/></Property><XLink file="other.FCStd" name="Box"/></Properties></Object></ObjectData>'
    "</Document>\n"
)
XML_PIECES = (
    "<!DOCTYPE Document>", '<!ENTITY a "b">', '<!DOCTYPE D [<!ENTITY a SYSTEM "file:///x">]>', "&a;", "<a>" * 300,
    "<![CDATA[", "]]>", "<?x y?>", "<!--", "\0", "&#0;", "<XLink file='../../x.FCStd'/>", "<XLink file='model.FCStd'/>",
    '<FileIncluded data="../../x"/>', "xmlns:a='b'", "<a b='1' b='2'/>",
)  # fmt: skip
STEP = (
    "ISO-10303-21;\nHEADER;\nENDSEC;\nDATA;\n#1=CARTESIAN_POINT('',(0.,0.,0.));\n#2=VERTEX_POINT('',#1);\n"
    "#3=MANIFOLD_SOLID_BREP('Sh\\X2\\00E4\\X0\\lf',#4);\n#4=CLOSED_SHELL('',(#2,#3));\n"
    "#5=ADVANCED_BREP_SHAPE_REPRESENTATION('Shelf',(#3),#6);\n#7=PRODUCT('Shelf','Shelf','',(#8));\nENDSEC;\n"
    "END-ISO-10303-21;\n"
)
SMALL = Limits(unpacked_bytes=50 << 20, xml_bytes=5 << 20, entries=500)


def document(rng: random.Random, folder: Path) -> Callable[[], object]:
    """A document spoilt in its XML, or in its archive."""
    xml = XML
    if rng.random() < 0.6:
        at = rng.randint(0, len(xml))
        xml = xml[:at] + rng.choice(XML_PIECES) + xml[at:]
        xml = spoiling.text(rng, xml) if rng.random() < 0.5 else xml
    encoding = rng.choice(("utf-8", "utf-8", "utf-16", "utf-16-be", "utf-32", "cp037"))
    content = xml.encode(encoding, "surrogatepass" if encoding.startswith("utf") else "replace")
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", rng.choice((zipfile.ZIP_DEFLATED, zipfile.ZIP_STORED))) as archive:
        archive.writestr("Document.xml", content)
        for i in range(rng.randrange(4)):
            name = rng.choice(
                (f"Box{i}.Shape.brp", "GuiDocument.xml", f"../x{i}", f"a{i}/b", f"ä{i}", "a\\b", "//")
            )
            if name not in archive.namelist():
                archive.writestr(name, content if name.endswith("xml") else rng.randbytes(rng.randrange(400)))
    whole = stream.getvalue()
    path = folder / "model.FCStd"
    path.write_bytes(spoiling.data(rng, whole) if rng.random() < 0.7 else whole)
    return lambda: check_file(path, SMALL)


def exchange(rng: random.Random, folder: Path) -> Callable[[], object]:
    """A STEP file, or the like of a BREP file."""
    text = spoiling.text(rng, STEP)
    path = folder / rng.choice(("model.step", "model.brep", "model.stp"))
    begin = rng.choice(("", "DBRep_DrawableShape\n", "CASCADE Topology V1, (c) Matra-Datavision\n"))
    path.write_bytes((begin + text + rng.choice(("", "*\n+1 0\n"))).encode("utf-8", "surrogatepass"))

    def read() -> None:
        named_solids(text)
        check_file(path, SMALL)

    return read
