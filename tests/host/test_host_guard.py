"""Files that the host must not open: each gets one clear line, and a good one passes."""

from __future__ import annotations

import io
import os
import re
import stat
import struct
import zipfile
import zlib

import FreeCAD as App
import Part
import pytest
from bench import box, host_documents, link

from movement_core.errors import FileError
from workbench_pkg.host.guard import Limits, check_file

GOOD_XML = (
    b'<?xml version="1.0" encoding="utf-8"?>\n<Document SchemaVersion="4"><Objects Count="0"/></Document>\n'
)


def packed(*entries, method=zipfile.ZIP_DEFLATED):
    """Bytes of an archive with (name, content) entries, as they come."""
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", method) as archive:
        for name, content in entries:
            archive.writestr(name, content)
    return stream.getvalue()


@pytest.fixture
def refuse(tmp_path):
    """Writes bytes to a file and returns the message with which it is refused."""

    def check(content, name="model.FCStd", **limits):
        path = tmp_path / name
        path.write_bytes(content)
        with pytest.raises(FileError) as caught:
            check_file(path, Limits(**limits))
        message = str(caught.value)
        assert str(path) in message and "\n" not in message
        assert os.listdir(tmp_path) == [name], "nothing may be unpacked to disk"
        return message

    return check


def test_good_files_pass(doc, tmp_path):
    board = box(doc, "Board")
    doc.recompute()
    doc.saveAs(str(tmp_path / "model.FCStd"))
    board.Shape.exportStep(str(tmp_path / "model.STEP"))
    board.Shape.exportBrep(str(tmp_path / "model.brep"))
    board.Shape.exportBrep(str(tmp_path / "model.brp"))
    assert check_file(tmp_path / "model.FCStd") == "document"
    assert check_file(tmp_path / "model.STEP") == "step"
    assert check_file(tmp_path / "model.brep") == check_file(tmp_path / "model.brp") == "brep"


@pytest.mark.parametrize("method", [zipfile.ZIP_DEFLATED, zipfile.ZIP_STORED])
def test_plainest_document_passes(tmp_path, method):
    path = tmp_path / "model.FCStd"
    path.write_bytes(
        packed(("Document.xml", GOOD_XML), ("x.brp", b""), ("thumbnails/a.png", b"x"), method=method)
    )
    assert check_file(path) == "document"


def test_a_streamed_archive_with_trailing_sizes_passes(tmp_path):
    class Pipe(io.RawIOBase):
        """A file that cannot be gone back in, so that sizes follow the data."""

        def __init__(self):
            self.taken = b""

        def writable(self):
            return True

        def write(self, data):
            self.taken += bytes(data)
            return len(data)

    pipe = Pipe()
    with zipfile.ZipFile(pipe, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("Document.xml", GOOD_XML)
        archive.writestr("x.brp", b"x" * 1000)
    path = tmp_path / "model.FCStd"
    path.write_bytes(pipe.taken)
    assert check_file(path) == "document"


def test_missing_folder_pipe_and_strange_endings(tmp_path):
    with pytest.raises(FileError, match="no such file"):
        check_file(tmp_path / "none.FCStd")
    (tmp_path / "folder.FCStd").mkdir()
    with pytest.raises(FileError, match="a folder"):
        check_file(tmp_path / "folder.FCStd")
    os.mkfifo(tmp_path / "pipe.FCStd")
    with pytest.raises(FileError, match="not an ordinary file"):
        check_file(tmp_path / "pipe.FCStd")
    (tmp_path / "model.skp").write_text("x", encoding="utf-8")
    with pytest.raises(FileError, match=r"\.skp.*FCStd"):
        check_file(tmp_path / "model.skp")
    with pytest.raises(FileError):
        check_file("bad\0name.FCStd")


def test_empty_large_and_no_archive(refuse):
    assert "empty" in refuse(b"")
    assert "MiB" in refuse(packed(("Document.xml", GOOD_XML)), file_bytes=100)
    assert "not an archive" in refuse(b"hello " * 100)
    assert "not an archive" in refuse(b"MZ" + packed(("Document.xml", GOOD_XML)))


def test_every_truncation_of_a_document_is_noticed(refuse):
    whole = packed(("Document.xml", GOOD_XML), ("x.brp", os.urandom(300)))
    for length in [*range(4, len(whole), 7), len(whole) - 1]:
        assert refuse(whole[:length])


def test_every_flipped_byte_of_packed_data_is_noticed(refuse):
    content = os.urandom(200)
    whole = packed(("Document.xml", GOOD_XML), ("x.brp", content), method=zipfile.ZIP_STORED)
    start = whole.index(content)
    for i in range(0, 200, 13):
        damaged = bytearray(whole)
        damaged[start + i] ^= 0x40
        assert "checksum" in refuse(bytes(damaged))


def test_document_xml_must_be_there_first_and_once(refuse):
    assert "no Document.xml" in refuse(packed(("other.xml", GOOD_XML)))
    assert "first" in refuse(packed(("a.brp", b"x"), ("Document.xml", GOOD_XML)))
    with pytest.warns(UserWarning, match="Duplicate"):
        twice = packed(("Document.xml", GOOD_XML), ("a", b"1"), ("a", b"2"))
    assert "twice" in refuse(twice)


@pytest.mark.parametrize("name", ["../evil", "a/../../evil", "/etc/evil", "C:/evil", "a\\..\\evil", "a\tb"])
def test_names_that_lead_outside(refuse, name):
    assert "outside" in refuse(packed(("Document.xml", GOOD_XML), (name, b"x")))


def test_links_encryption_and_strange_packing(refuse):
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w") as archive:
        archive.writestr("Document.xml", GOOD_XML)
        entry = zipfile.ZipInfo("shape.brp")
        entry.external_attr = (stat.S_IFLNK | 0o777) << 16
        archive.writestr(entry, "/etc/passwd")
    assert "link to another file" in refuse(stream.getvalue())
    assert "packed in a way" in refuse(packed(("Document.xml", GOOD_XML), method=zipfile.ZIP_BZIP2))
    locked = bytearray(packed(("Document.xml", GOOD_XML)))
    central = locked.index(b"PK\x01\x02")
    locked[central + 8] |= 1
    assert "encrypted" in refuse(bytes(locked))


def test_counts_depths_and_sizes(refuse):
    many = packed(("Document.xml", GOOD_XML), *((f"e{i}", b"") for i in range(20)))
    assert "21 entries" in refuse(many, entries=20)
    assert "folders deep" in refuse(packed(("Document.xml", GOOD_XML), ("a/b/c/d/e/f/g/h/i/j", b"x")))
    zeros = packed(("Document.xml", GOOD_XML), ("x.brp", bytes(3_000_000)), ("y.brp", bytes(3_000_000)))
    assert len(zeros) < 20_000
    assert "unpacked" in refuse(zeros, unpacked_bytes=5_000_000)
    deep = b"<Document>" + b"<a>" * 200 + b"</a>" * 200 + b"</Document>"
    assert "nested" in refuse(packed(("Document.xml", deep)))
    wide = b"<Document>" + b"<a/>" * 200 + b"</Document>"
    assert "elements" in refuse(packed(("Document.xml", wide)), xml_elements=100)
    assert "larger" in refuse(packed(("Document.xml", wide)), xml_bytes=100)


def test_a_list_that_understates_a_bomb_is_not_believed(refuse):
    """The list says 10 bytes; the packed data holds 50 million. Whoever trusts the list sees a small document."""
    squeeze = zlib.compressobj(9, zlib.DEFLATED, -15)
    bomb = squeeze.compress(bytes(50_000_000)) + squeeze.flush()
    crc = zlib.crc32(bytes(10))
    xml_crc, n, m = zlib.crc32(GOOD_XML), len(GOOD_XML), len(bomb)

    def local(name, method, crc_, packed_, size):
        return (
            struct.pack("<4s5H3L2H", b"PK\3\4", 20, 0, method, 0, 33, crc_, packed_, size, len(name), 0)
            + name
        )

    def central(name, method, crc_, packed_, size, offset):
        head = struct.pack("<4s6H3L", b"PK\1\2", 20, 20, 0, method, 0, 33, crc_, packed_, size)
        return head + struct.pack("<5H2L", len(name), 0, 0, 0, 0, 0, offset) + name

    first = local(b"Document.xml", 0, xml_crc, n, n) + GOOD_XML
    second = local(b"x.brp", 8, crc, m, 10) + bomb
    listing = central(b"Document.xml", 0, xml_crc, n, n, 0) + central(b"x.brp", 8, crc, m, 10, len(first))
    end = struct.pack("<4s4H2LH", b"PK\5\6", 0, 0, 2, 2, len(listing), len(first) + len(second), 0)
    whole = first + second + listing + end
    assert zipfile.ZipFile(io.BytesIO(whole)).testzip() is None  # an ordinary look finds nothing wrong
    assert "unpacked" in refuse(whole, unpacked_bytes=1_000_000)
    assert "checksum" in refuse(whole)


def test_entries_hidden_from_the_list_are_noticed(refuse):
    """The host reads an archive from front to back, so that an unlisted entry would be read too."""
    whole = packed(
        ("Document.xml", GOOD_XML), ("hidden.brp", b"x" * 100), ("z.brp", b"y"), method=zipfile.ZIP_STORED
    )
    entries = [m.start() for m in re.finditer(b"PK\x01\x02", whole)]
    cut = whole[: entries[1]] + whole[entries[2] :]
    end = cut.index(b"PK\x05\x06")
    size = end - cut.index(b"PK\x01\x02")
    cut = cut[: end + 8] + struct.pack("<2HL", 2, 2, size) + cut[end + 16 :]
    assert zipfile.ZipFile(io.BytesIO(cut)).namelist() == ["Document.xml", "z.brp"]
    assert "gaps" in refuse(cut)


@pytest.mark.parametrize("name", ["Document.xml", "GuiDocument.xml"])
@pytest.mark.parametrize(
    ("xml", "word"),
    [
        (b'<!DOCTYPE Document [<!ENTITY a "aaaa">]><Document>&a;</Document>', "DOCTYPE"),
        (b'<!DOCTYPE Document SYSTEM "http://example.invalid/x.dtd"><Document/>', "DOCTYPE"),
        (b"<Document><open></Document>", "damaged"),
        (b"<Document/>trailing", "damaged"),
        (b"", "damaged"),
        (b"<html/>", "instead of"),
        (b'<?xml version="1.0" encoding="no-such"?><Document/>', "damaged"),
        (b"\xff\xfe\x00", "damaged"),
    ],
)
def test_bad_xml(refuse, name, xml, word):
    entries = [(name, xml)] if name == "Document.xml" else [("Document.xml", GOOD_XML), (name, xml)]
    message = refuse(packed(*entries))
    assert name in message and word in message


def test_utf_16_cannot_smuggle_a_declaration(refuse):
    xml = '<?xml version="1.0" encoding="utf-16"?><!DOCTYPE Document [<!ENTITY a "b">]><Document/>'.encode(
        "utf-16"
    )
    assert "DOCTYPE" in refuse(packed(("Document.xml", xml)))


def test_step_and_brep(refuse, tmp_path):
    solid = Part.makeCylinder(5, 10).fuse(Part.makeBox(10, 3, 3))
    solid.exportStep(str(tmp_path / "s.step"))
    solid.exportBrep(str(tmp_path / "s.brep"))
    step, brep = (tmp_path / "s.step").read_bytes(), (tmp_path / "s.brep").read_bytes()
    (tmp_path / "s.step").unlink()
    (tmp_path / "s.brep").unlink()
    assert "not a STEP file" in refuse(b"solid cube", "x.step")
    (tmp_path / "x.step").unlink()
    for share in (0.2, 0.5, 0.9, 0.995):
        assert "cut short" in refuse(step[: int(len(step) * share)], "x.stp")
    (tmp_path / "x.stp").unlink()
    assert "not a BREP file" in refuse(b"hello", "x.brep")
    for share in (0.2, 0.5, 0.9, 0.995):  # 0.20 reads on for ever in the first of these
        assert "cut short" in refuse(brep[: int(len(brep) * share)], "x.brep")


def test_linked_files_are_checked_as_well(doc, tmp_path):
    store = App.newDocument("Store", hidden=True)
    board = box(store, "Board")
    store.recompute()
    store.saveAs(str(tmp_path / "store.FCStd"))
    doc.saveAs(str(tmp_path / "main.FCStd"))
    link(doc, "Copy", board)
    doc.recompute()
    doc.save()
    assert check_file(tmp_path / "main.FCStd") == "document"
    (tmp_path / "store.FCStd").write_bytes(b"PK\x03\x04 spoilt")
    with pytest.raises(FileError, match=r"store\.FCStd"):
        check_file(tmp_path / "main.FCStd")
    (tmp_path / "store.FCStd").unlink()
    assert check_file(tmp_path / "main.FCStd") == "document"  # a missing one is reported with the leaves


def test_hosts_own_documents_all_pass():
    found = 0
    for path in host_documents():
        if path.read_bytes()[:2] == b"PK":
            assert check_file(path) == "document"
            found += 1
        else:  # test data of the host's add-on manager: macro texts that only bear the ending
            with pytest.raises(FileError, match="not an archive"):
                check_file(path)
    assert found > 10
