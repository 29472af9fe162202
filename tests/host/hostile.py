"""Sixty documents that are hostile or damaged, made here from one good one. Our own inventions, all of them."""

from __future__ import annotations

import io
import os
import stat
import zipfile

HEAD = '<?xml version="1.0" encoding="utf-8"?>\n'


def zipped(*entries, method=zipfile.ZIP_DEFLATED):
    stream = io.BytesIO()
    with zipfile.ZipFile(stream, "w", method) as archive:
        for name, content in entries:
            archive.writestr(name, content)
    return stream.getvalue()


def with_xml(good, change, name="Document.xml"):
    """The good document with the text of one entry changed."""
    with zipfile.ZipFile(io.BytesIO(good)) as archive:
        entries = [(one, archive.read(one)) for one in archive.namelist()]
    assert any(one == name for one, _ in entries)
    return zipped(*((one, change(data) if one == name else data) for one, data in entries))


def _without(good, part):
    with zipfile.ZipFile(io.BytesIO(good)) as archive:
        return zipped(*((one, archive.read(one)) for one in archive.namelist() if part not in one))


def _with(good, *more):
    with zipfile.ZipFile(io.BytesIO(good)) as archive:
        return zipped(*((one, archive.read(one)) for one in archive.namelist()), *more)


def _patched(good, mark, offset, value, last=False):
    """Bytes changed at an offset behind a heading of the archive."""
    at = (good.rindex(mark) if last else good.index(mark)) + offset
    return good[:at] + value + good[at + len(value) :]


def _declared(inside):
    return lambda data: data.replace(b"<Document", f"<!DOCTYPE Document [{inside}]>\n<Document".encode(), 1)


def _lol():
    entities = '<!ENTITY a0 "haha">' + "".join(f'<!ENTITY a{i} "{f"&a{i - 1};" * 10}">' for i in range(1, 9))
    return _declared(entities)


def _link(good):
    entry = zipfile.ZipInfo("GuiDocument.xml")
    entry.external_attr = (stat.S_IFLNK | 0o777) << 16
    return _with(good, (entry, "/etc/passwd"))


def _shape(good, content):
    """The good document with another shape."""
    with zipfile.ZipFile(io.BytesIO(good)) as archive:
        names = archive.namelist()
        shape = next(name for name in names if name.endswith(".brp"))
    return with_xml(good, lambda data: content(data), shape)


def _loop(good):
    """Two links that lead to each other, and nothing else."""
    one, other = (
        '<Object type="App::Link" name="One" id="1"/>',
        '<Object type="App::Link" name="Two" id="2"/>',
    )
    link = (
        '<Object name="{0}"><Properties Count="1"><Property name="LinkedObject" type="App::PropertyXLink">'
        '<XLink file="" stamp="" name="{1}"/></Property></Properties></Object>'
    )
    xml = (
        f'{HEAD}<Document SchemaVersion="4" FileVersion="1"><Objects Count="2">{one}{other}</Objects>'
        f'<ObjectData Count="2">{link.format("One", "Two")}{link.format("Two", "One")}</ObjectData></Document>'
    )
    return zipped(("Document.xml", xml))


def hostile(good: bytes) -> dict[str, bytes]:
    """What it is → bytes of the document."""
    cases: dict[str, bytes] = {"empty": b"", "four bytes": good[:4], "only the end": good[-22:]}
    for share in (5, 15, 30, 45, 60, 75, 85, 95, 99):
        cases[f"cut at {share} %"] = good[: len(good) * share // 100]
    cases["the end of the list gone"] = good[:-30]
    cases["garbage"] = bytes((i * 197 + i // 7) % 256 for i in range(5000))
    cases["garbage behind a good start"] = b"PK\3\4" + cases["garbage"]
    cases["text"] = b"solid cube\n" * 50
    cases["another archive in front"] = zipped(("x", b"y")) + good
    cases["something in front"] = b"#!/bin/sh\n" + good
    cases["zeros behind a hole"] = good[:200] + bytes(400) + good[600:]
    cases["no Document.xml"] = _without(good, "Document.xml")
    cases["an archive in an archive"] = zipped(("model.FCStd", good))
    for what, name in (
        ("one folder up", "../x.brp"), ("far up", "../" * 12 + "etc/x"),
        ("up from below", "a/../../x"), ("absolute", "/x"),
        ("a drive", "C:/x"), ("backslashes", "..\\x"), ("a line break", "a\nb"), ("deep folders", "a/" * 40 + "x"),
    ):  # fmt: skip
        cases[what] = _with(good, (name, b"x"))
    cases["NUL in a name"] = _with(good, ("a_b.brp", b"x")).replace(b"a_b.brp", b"a\0b.brp")
    cases["another name in the list"] = _with(good, ("honest", b"x")).replace(b"honest", b"devils", 1)
    cases["a link"] = _link(good)
    cases["encrypted"] = _patched(good, b"PK\1\2", 8, b"\1")
    cases["packed oddly"] = _patched(good, b"PK\1\2", 10, b"\x63")
    cases["bzip2"] = zipped(("Document.xml", HEAD + "<Document/>"), method=zipfile.ZIP_BZIP2)
    cases["lzma"] = zipped(("Document.xml", HEAD + "<Document/>"), method=zipfile.ZIP_LZMA)
    cases["wrong checksum"] = _patched(good, b"PK\1\2", 16, b"\1\2\3\4")
    cases["wrong checksum of the last"] = _patched(good, b"PK\1\2", 16, b"\1\2\3\4", last=True)
    cases["absurd size"] = _patched(good, b"PK\1\2", 24, b"\xfe\xff\xff\x7f")
    cases["absurd packed size"] = _patched(good, b"PK\1\2", 20, b"\xfe\xff\xff\x7f")
    cases["absurd place"] = _patched(good, b"PK\1\2", 42, b"\xfe\xff\xff\x7f")
    cases["absurd length of the list"] = _patched(good, b"PK\5\6", 12, b"\xff\xff\xff\x7f")
    cases["list far away"] = _patched(good, b"PK\5\6", 16, b"\xff\xff\xff\x7f")
    cases["an entry twice"] = _with(good, ("aa", b"1"), ("ab", b"2")).replace(b"ab", b"aa")
    cases["Document.xml twice"] = _with(good, ("Document.xmm", b"<x/>")).replace(
        b"Document.xmm", b"Document.xml"
    )
    cases["60,000 entries"] = _with(good, *((f"e{i}", b"") for i in range(60_000)))
    cases["entities that multiply"] = with_xml(good, _lol())
    cases["an entity from a file"] = with_xml(good, _declared('<!ENTITY a SYSTEM "file:///etc/passwd">'))
    cases["an entity from afar"] = with_xml(
        good, _declared('<!ENTITY % a SYSTEM "http://example.invalid/x"> %a;')
    )
    cases["a bare DOCTYPE"] = with_xml(
        good, lambda x: x.replace(b"<Document", b"<!DOCTYPE Document>\n<Document", 1)
    )
    wide = "<!DOCTYPE Document><Document/>"
    cases["DOCTYPE in UTF-16"] = zipped(("Document.xml", wide.encode("utf-16")))
    cases["DOCTYPE in UTF-7"] = zipped(
        ("Document.xml", b'<?xml version="1.0" encoding="utf-7"?>+ADw-Document/+AD4-')
    )
    cases["deep XML"] = with_xml(
        good, lambda x: x.replace(b"</Document>", b"<a>" * 5000 + b"</a>" * 5000 + b"</Document>")
    )
    cases["XML cut short"] = with_xml(good, lambda x: x[: len(x) // 2])
    cases["empty XML"] = with_xml(good, lambda x: b"")
    cases["NUL in the XML"] = with_xml(good, lambda x: x.replace(b"<Objects", b"\0<Objects", 1))
    cases["another root"] = with_xml(good, lambda x: b"<html><body/></html>")
    cases["no objects"] = zipped(("Document.xml", HEAD + '<Document SchemaVersion="4"/>'))
    cases["a file to be written elsewhere"] = with_xml(
        good,
        lambda x: x.replace(
            b"</Document>", b'<FileIncluded data="../../x.sh">QUJD</FileIncluded></Document>'
        ),
    )
    cases["missing shapes"] = _without(good, ".brp")
    cases["a shape cut short"] = _shape(good, lambda data: data[: len(data) // 2])
    cases["a shape with a huge count"] = _shape(
        good, lambda data: data.replace(b"Curves ", b"Curves 99999999", 1)
    )
    cases["a shape of garbage"] = _shape(good, lambda data: b"\x93garbage" * 40)
    cases["an empty shape"] = _shape(good, lambda data: b"")
    cases["links in a circle"] = _loop(good)
    return cases


def lying_bomb(good: bytes) -> bytes:
    """Unpacks to more than 4 GiB from a few MB; slow to make, so apart from the others."""
    content = bytes(1 << 30)
    return _with(good, *((f"e{i}", content) for i in range(5)))


def odd_places(folder, good: bytes) -> list:
    """Paths that are no readable files: a folder, a pipe, a device, a link to itself, one that is not there."""
    (folder / "folder.FCStd").mkdir()
    os.mkfifo(folder / "pipe.FCStd")
    os.symlink("/dev/zero", folder / "device.FCStd")
    os.symlink("round.FCStd", folder / "round.FCStd")
    return [folder / f"{name}.FCStd" for name in ("folder", "pipe", "device", "round", "none")]


__all__ = ["hostile", "lying_bomb", "odd_places", "with_xml", "zipped"]
