"""Checks a file before the host opens it: is it there, whole, what it says it is, and of a sane size?

The host reads an archive from front to back and trusts it, and an archive's own list of contents need not tell
the truth about what lies in it. So everything is unpacked here once, in memory and under a budget, and compared
with the list. Nothing is written to disk. No FreeCAD here.
"""

from __future__ import annotations

import os
import re
import stat
import struct
import zipfile
import zlib
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO, NoReturn
from xml.parsers import expat

from movement_core.errors import FileError
from movement_core.wording import phrase, say, word

KINDS = {".fcstd": "document", ".step": "step", ".stp": "step", ".brep": "brep", ".brp": "brep"}
ALLOWED = phrase("a FreeCAD document (.FCStd), STEP (.step, .stp) or BREP (.brep, .brp)")

_CHUNK = 1 << 16
_LOCAL_HEADER = struct.Struct("<4s2B4HL2L2H")
_ENCRYPTED, _HAS_DESCRIPTOR = 0x1, 0x8
_LARGEST_DESCRIPTOR = 24
_WANTED_XML = ("Document.xml", "GuiDocument.xml")  # what the host itself parses


@dataclass(frozen=True)
class Limits:
    """Sizes no furniture model comes near: bytes, counts, depth of XML elements, linked files followed."""

    file_bytes: int = 1 << 30
    unpacked_bytes: int = 4 << 30
    entries: int = 50_000
    path_depth: int = 8
    xml_bytes: int = 512 << 20
    xml_depth: int = 128
    xml_elements: int = 20_000_000
    linked_files: int = 200


LIMITS = Limits()


def check_file(path: str | os.PathLike[str], limits: Limits = LIMITS) -> str:
    """The kind of a file ("document", "step" or "brep") if the host may open it; else FileError says why not.

    A document's linked files are opened along with it by the host: those that exist are checked too.
    """
    return _checked(Path(path), limits)[0]


def files_opened(path: str | os.PathLike[str], limits: Limits = LIMITS) -> tuple[Path, ...]:
    """A file and those that it links to, which the host opens along with it; checked as by ``check_file``."""
    return _checked(Path(path), limits)[1]


def _checked(start: Path, limits: Limits) -> tuple[str, tuple[Path, ...]]:
    waiting, seen, kind = [start], dict[Path, None](), ""
    while waiting:
        file = waiting.pop()
        # The host opens what is linked to as a document, whatever it is called.
        this_kind = _kind_of(file, limits, "document" if seen else None)
        real = file.resolve()
        if real in seen:
            continue
        seen[real] = None
        if len(seen) > limits.linked_files + 1:
            raise FileError(
                say("it links to too many other files"), where=str(start), allowed=f"{limits.linked_files}"
            )
        kind = kind or this_kind
        with open(file, "rb") as stream:
            if this_kind == "step":
                _check_step(stream, str(file))
            elif this_kind == "brep":
                _check_brep(stream, str(file))
            else:
                linked = _check_document(stream, str(file), limits)
                found = ((real.parent / name) for name in sorted(linked))
                waiting += [other for other in found if os.path.exists(other)]
    return kind, tuple(seen)


def name_shown(path: str | os.PathLike[str]) -> str:
    """A path fit to be shown: bytes of its name that are no letters as codes. Equal to it where there are none."""
    return os.fspath(path).encode("utf-8", "surrogateescape").decode("utf-8", "backslashreplace")


def _kind_of(file: Path, limits: Limits, linked: str | None = None) -> str:
    where = name_shown(file)
    if where != str(file):  # the host takes names as UTF-8 and would look for another file
        raise FileError(
            say("its name holds bytes that are no letters"), where=where, todo=say("rename the file")
        )
    try:
        facts = os.stat(file)
    except FileNotFoundError:
        raise FileError(
            say("there is no such file"), where=where, todo=say("check the name and the folder")
        ) from None
    except (OSError, ValueError) as error:
        reason = word(str(error.strerror)) if isinstance(error, OSError) else str(error)
        raise FileError(
            say("it cannot be looked at ({reason})", reason=reason),
            where=where,
            todo=say("check the name and the folder"),
        ) from None
    if not stat.S_ISREG(facts.st_mode):
        what = say("a folder") if stat.S_ISDIR(facts.st_mode) else say("not an ordinary file")
        raise FileError(say("it is {what}", what=what), where=where, allowed=word(ALLOWED))
    kind = linked or KINDS.get(file.suffix.lower())
    if kind is None:
        raise FileError(
            say("files ending in '{suffix}' cannot be read", suffix=file.suffix),
            where=where,
            allowed=word(ALLOWED),
        )
    if facts.st_size == 0:
        raise FileError(say("the file is empty"), where=where)
    if facts.st_size > limits.file_bytes:
        raise FileError(
            say("the file has {size}", size=_size(facts.st_size)),
            where=where,
            allowed=say("up to {size}", size=_size(limits.file_bytes)),
        )
    if not os.access(file, os.R_OK):
        raise FileError(say("you may not read it"), where=where, todo=say("change its permissions"))
    return kind


# --- FreeCAD documents -------------------------------------------------------------------------------------


def _check_document(stream: BinaryIO, where: str, limits: Limits) -> set[str]:
    """Unpack a whole document once; returns the names of the files it links to."""
    if stream.read(4) != b"PK\x03\x04":
        raise FileError(say("it is not a FreeCAD document: not an archive"), where=where)
    try:
        with zipfile.ZipFile(stream) as archive:
            entries = archive.infolist()
    except (zipfile.BadZipFile, NotImplementedError, struct.error, ValueError, OverflowError) as error:
        raise FileError(
            say("the document is damaged or cut short ({error})", error=error),
            where=where,
            todo=say("take an older copy of it"),
        ) from None
    _check_list(entries, where, limits)
    budget, linked = limits.unpacked_bytes, set()
    end_before = 0
    for entry in sorted(entries, key=lambda e: e.header_offset):
        start, end = _data_range(stream, entry, where)
        # What lies between two listed entries the host would read as well; a trailer is all that may be there.
        if not 0 <= entry.header_offset - end_before <= _LARGEST_DESCRIPTOR:
            raise FileError(
                say("its entries overlap or leave gaps at '{shown}'", shown=_shown(entry.filename)),
                where=where,
            )
        end_before = end
        parser = _XmlCheck(entry.filename, where, limits) if entry.filename in _WANTED_XML else None
        for piece in _unpacked(stream, entry, start, end, budget, where, limits):
            budget -= len(piece)
            if parser:
                parser.feed(piece)
        if parser:
            linked |= parser.finish()
    return linked


def _check_list(entries: list[zipfile.ZipInfo], where: str, limits: Limits) -> None:
    if len(entries) > limits.entries:
        raise FileError(
            say("the document has {count} entries", count=len(entries)),
            where=where,
            allowed=say("up to {most}", most=limits.entries),
        )
    names = [entry.filename for entry in entries]
    first = min(entries, key=lambda e: e.header_offset, default=None)
    if "Document.xml" not in names:
        raise FileError(say("it is not a FreeCAD document: no Document.xml in it"), where=where)
    if first is None or first.filename != "Document.xml" or first.header_offset != 0:
        raise FileError(say("Document.xml does not come first, where the host reads it"), where=where)
    seen: set[str] = set()
    for entry in entries:
        name, shown = entry.orig_filename, _shown(entry.orig_filename)
        if name in seen:
            raise FileError(say("'{shown}' is in it twice", shown=shown), where=where)
        seen.add(name)
        parts = name.split("/")
        if (
            name.startswith("/")
            or "\\" in name
            or ":" in parts[0]
            or ".." in parts
            or any(ord(c) < 32 for c in name)
        ):
            raise FileError(
                say("the entry name '{shown}' leads outside the document", shown=shown), where=where
            )
        if len(parts) > limits.path_depth:
            raise FileError(
                say(
                    "'{shown}' lies more than {depth} folders deep",
                    shown=shown,
                    depth=limits.path_depth,
                ),
                where=where,
            )
        if stat.S_ISLNK(entry.external_attr >> 16):
            raise FileError(say("'{shown}' is a link to another file", shown=shown), where=where)
        if entry.flag_bits & _ENCRYPTED:
            raise FileError(say("'{shown}' is encrypted", shown=shown), where=where)
        if entry.compress_type not in (zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED):
            raise FileError(
                say("'{shown}' is packed in a way that the host does not know", shown=shown), where=where
            )


def _data_range(stream: BinaryIO, entry: zipfile.ZipInfo, where: str) -> tuple[int, int]:
    """First byte of an entry's packed data, and the one after its last; its own header must agree with the list."""
    stream.seek(entry.header_offset)
    raw = stream.read(_LOCAL_HEADER.size)
    shown = _shown(entry.filename)
    if len(raw) < _LOCAL_HEADER.size or raw[:4] != b"PK\x03\x04":
        raise FileError(say("the document is damaged at '{shown}'", shown=shown), where=where)
    header = _LOCAL_HEADER.unpack(raw)
    flags, method, packed, unpacked, name_length, extra_length = (header[i] for i in (3, 4, 8, 9, 10, 11))
    name = stream.read(name_length)
    encoding = "utf-8" if flags & 0x800 else "cp437"
    if name.decode(encoding, "replace") != entry.orig_filename or method != entry.compress_type:
        raise FileError(say("'{shown}' is not what the list of contents says", shown=shown), where=where)
    large = 0xFFFFFFFF
    stated = not flags & _HAS_DESCRIPTOR
    if stated and (packed not in (entry.compress_size, large) or unpacked not in (entry.file_size, large)):
        raise FileError(
            say("'{shown}' has another size than the list of contents says", shown=shown), where=where
        )
    start = entry.header_offset + _LOCAL_HEADER.size + name_length + extra_length
    return start, start + entry.compress_size


def _unpacked(
    stream: BinaryIO, entry: zipfile.ZipInfo, start: int, end: int, budget: int, where: str, limits: Limits
) -> Iterator[bytes]:
    """The entry's content piece by piece, to its true end or one byte past the budget."""
    shown = _shown(entry.filename)
    inflate = zlib.decompressobj(-15) if entry.compress_type == zipfile.ZIP_DEFLATED else None
    check, length = 0, 0
    stream.seek(start)
    left = end - start
    while left > 0:
        packed = stream.read(min(_CHUNK, left))
        if not packed:
            raise FileError(say("the document is cut short in '{shown}'", shown=shown), where=where)
        left -= len(packed)
        while packed:
            try:
                piece = inflate.decompress(packed, _CHUNK) if inflate else packed
            except zlib.error:
                raise FileError(
                    say("'{shown}' is damaged: it cannot be unpacked", shown=shown), where=where
                ) from None
            packed = inflate.unconsumed_tail if inflate else b""
            length += len(piece)
            check = zlib.crc32(piece, check)
            if length > budget:
                raise FileError(
                    say("unpacked, the document is larger than {size}", size=_size(limits.unpacked_bytes)),
                    where=where,
                )
            yield piece
            if inflate and inflate.eof and (packed or inflate.unused_data or left):
                raise FileError(say("'{shown}' goes on after its end", shown=shown), where=where)
    if inflate:
        rest = inflate.flush()
        length += len(rest)
        check = zlib.crc32(rest, check)
        yield rest
        if not inflate.eof:
            raise FileError(say("the document is cut short in '{shown}'", shown=shown), where=where)
    if length != entry.file_size or check != entry.CRC:
        raise FileError(say("'{shown}' is damaged: its checksum is wrong", shown=shown), where=where)


class _XmlCheck:
    """Reads XML only to see that it is well formed, sane, and free of declarations that could pull in more."""

    def __init__(self, name: str, where: str, limits: Limits) -> None:
        self.name, self.where, self.limits = name, where, limits
        self.depth = self.elements = self.length = 0
        self.linked: set[str] = set()
        self.parser = expat.ParserCreate()
        self.parser.StartElementHandler = self._start
        self.parser.EndElementHandler = self._end
        self.parser.StartDoctypeDeclHandler = self._declared
        self.parser.EntityDeclHandler = self._declared

    def feed(self, piece: bytes) -> None:
        self.length += len(piece)
        if self.length > self.limits.xml_bytes:
            raise self._error(
                say("{file} in it is larger than {size}", file=self.name, size=_size(self.limits.xml_bytes))
            )
        self._parse(piece, False)

    def finish(self) -> set[str]:
        self._parse(b"", True)
        return self.linked

    def _parse(self, piece: bytes, last: bool) -> None:
        try:
            self.parser.Parse(piece, last)
        except (expat.ExpatError, LookupError, ValueError) as error:
            raise self._error(say("{file} in it is damaged ({error})", file=self.name, error=error)) from None

    def _start(self, tag: str, attributes: dict[str, str]) -> None:
        if self.elements == 0 and tag != "Document":
            raise self._error(
                say("{file} in it starts with <{tag}> instead of <Document>", file=self.name, tag=_shown(tag))
            )
        self.depth += 1
        self.elements += 1
        if self.depth > self.limits.xml_depth:
            raise self._error(
                say(
                    "{file} in it is nested more than {depth} deep",
                    file=self.name,
                    depth=self.limits.xml_depth,
                )
            )
        if self.elements > self.limits.xml_elements:
            raise self._error(
                say(
                    "{file} in it has more than {most} elements",
                    file=self.name,
                    most=self.limits.xml_elements,
                )
            )
        if tag == "FileIncluded":  # the host writes it out into a folder of its own, under this name
            for name in (attributes.get("file", ""), attributes.get("data", "")):
                if name in (".", "..") or any(c in name for c in "/\\:\0"):
                    raise self._error(
                        say(
                            "{file} in it carries a file whose name '{name}' leads outside the document",
                            file=self.name,
                            name=_shown(name),
                        )
                    )
        if tag.startswith("XLink") and attributes.get("file"):
            self.linked.add(attributes["file"])

    def _end(self, tag: str) -> None:
        self.depth -= 1

    def _declared(self, *_: object) -> NoReturn:
        raise self._error(
            say("{file} in it carries a DOCTYPE or ENTITY, which no FreeCAD document does", file=self.name)
        )

    def _error(self, what: str) -> FileError:
        return FileError(what, where=self.where)


# --- STEP and BREP -----------------------------------------------------------------------------------------


def _check_step(stream: BinaryIO, where: str) -> None:
    head = stream.read(4096).lstrip(b"\xef\xbb\xbf \t\r\n")
    if not head.startswith(b"ISO-10303-21"):
        raise FileError(say("it is not a STEP file: ISO-10303-21 is not at its start"), where=where)
    if not _contains(stream, b"END-ISO-10303-21"):
        raise FileError(
            say("the STEP file is cut short: END-ISO-10303-21 is missing"),
            where=where,
            todo=say("export it again"),
        )


def _check_brep(stream: BinaryIO, where: str) -> None:
    head = stream.read(4096).lstrip()
    if not head.startswith((b"DBRep_DrawableShape", b"CASCADE Topology")):
        raise FileError(say("it is not a BREP file: DBRep_DrawableShape is not at its start"), where=where)
    # The host reads on for ever in a file that is cut short. A whole one ends with the reference to its shape.
    stream.seek(0, os.SEEK_END)
    stream.seek(max(0, stream.tell() - 4096))
    if not re.search(rb"\*\s+[-+ie]\d+ \d+\s*$", stream.read()):
        raise FileError(say("the BREP file is cut short"), where=where, todo=say("export it again"))


def _contains(stream: BinaryIO, mark: bytes) -> bool:
    stream.seek(0)
    before = b""
    while piece := stream.read(1 << 20):
        if mark in before + piece:
            return True
        before = piece[-len(mark) :]
    return False


def _shown(name: str) -> str:
    """A name from a file, fit for a message of one line."""
    plain = "".join(c if c.isprintable() else "?" for c in name)
    return plain if len(plain) <= 60 else plain[:57] + "…"


def _size(count: int) -> str:
    return f"{count / (1 << 20):.4g} MiB"
