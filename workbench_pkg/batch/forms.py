"""The forms that a check of many models can be written in, one model after another. Standard library only."""

from __future__ import annotations

import csv
import io
import json
from typing import IO, Any

from workbench_pkg.batch.html_index import HtmlForm
from workbench_pkg.batch.output import REPORTS

Entry = dict[str, Any]
Answer = dict[str, Any]


class TextForm:
    """For a terminal."""

    name, needs = "text", ("text",)
    whole = False  # may be written as it comes

    def __init__(self, out: IO[str]) -> None:
        self.out, self.long_before = out, False

    def add(self, entry: Entry, answer: Answer) -> None:
        text = answer.get("text")
        if self.long_before:
            self.out.write("\n\n" if text else "\n")
        self.long_before = bool(text)
        self.out.write((text or "\n".join(error["message"] for error in entry["errors"])) + "\n")

    def end(self, summary: str) -> None:
        if summary:
            self.out.write(f"\n{summary}\n")


class CsvForm:
    """One line a part."""

    name, needs = "csv", ("csv",)
    whole = False

    def __init__(self, out: IO[str]) -> None:
        self.out, self.heading_shown = out, False

    def add(self, entry: Entry, answer: Answer) -> None:
        heading, _, body = answer.get("csv", "").partition("\n")
        if body and not self.heading_shown:
            self.out.write(heading + "\n")
            self.heading_shown = True
        self.out.write(body)

    def end(self, summary: str) -> None:
        pass


class FindingsForm:
    """One line a finding, as CSV."""

    name, needs = "findings-csv", ()
    whole = False
    COLUMNS = ("path", "id", "check", "severity", "known", "month", "parts", "message", "remedy")

    def __init__(self, out: IO[str]) -> None:
        self.out = out
        self._write(self.COLUMNS)

    def add(self, entry: Entry, answer: Answer) -> None:
        for finding in entry["findings"]:
            known = {True: "known", False: "new", None: ""}[finding.get("known")]
            row = {**finding, "path": entry["path"], "known": known, "parts": " + ".join(finding["parts"])}
            self._write([_plain(row[column]) for column in self.COLUMNS])

    def end(self, summary: str) -> None:
        pass

    def _write(self, row: Any) -> None:
        line = io.StringIO(newline="")
        csv.writer(line, lineterminator="\n").writerow(row)
        self.out.write(line.getvalue())


class JsonForm:
    """One document with every model in it."""

    name, needs = "json", ()
    whole = True  # half of it is of no use: it is written when all is there

    def __init__(self, out: IO[str]) -> None:
        self.out, self.count = out, 0
        head = json.dumps({**REPORTS["check"], "files": [], "errors": []}, indent=1)
        self.before, self.after = head.split('"files": []')
        out.write(self.before + '"files": [')

    def add(self, entry: Entry, answer: Answer) -> None:
        text = as_json(entry, self.out, 1).replace("\n", "\n  ")
        self.out.write((",\n  " if self.count else "\n  ") + text)
        self.count += 1

    def end(self, summary: str) -> None:
        self.out.write(("\n ]" if self.count else "]") + self.after + "\n")


class JsonLinesForm:
    """One line of JSON a model, each by itself."""

    name, needs = "jsonl", ()
    whole = False

    def __init__(self, out: IO[str]) -> None:
        self.out = out

    def add(self, entry: Entry, answer: Answer) -> None:
        line = {"schema": "heartside-check-line-1", **entry}
        self.out.write(as_json(line, self.out) + "\n")

    def end(self, summary: str) -> None:
        pass


FORMS = {form.name: form for form in (TextForm, JsonForm, JsonLinesForm, CsvForm, FindingsForm, HtmlForm)}


def as_json(value: Any, out: IO[str], indent: int | None = None) -> str:
    """A value as JSON, in plain ASCII where the stream cannot take all its letters."""
    text = json.dumps(value, indent=indent, ensure_ascii=False)
    try:
        text.encode(getattr(out, "encoding", None) or "ascii")
    except UnicodeEncodeError:
        return json.dumps(value, indent=indent)
    return text


def _plain(value: Any) -> str:
    """A cell that no spreadsheet takes for a formula."""
    text = "" if value is None else str(value)
    return f"'{text}" if text[:1] in ("=", "+", "-", "@", "\t") else text
