"""The forms of a check of many models, written from made-up reports."""

from __future__ import annotations

import csv
import io
import json
from html.parser import HTMLParser

import pytest

from movement_core.checks.finding import SEVERITIES
from workbench_pkg.batch import html_index
from workbench_pkg.batch.forms import FORMS
from workbench_pkg.batch.tally import Tally

NASTY = '<script>alert("&")</script>\x1b[2J\u202e=1+1'
VOID = {"meta", "br", "link"}


def finding(severity="seen", **more):
    return {
        "id": f"gap-closes-{severity}", "check": "gap-closes", "severity": severity, "parts": ["Door", NASTY],
        "keys": ["a", "b"], "message": NASTY, "remedy": "plane it", "month": "March", "figures": {"least_mm": 0.1},
        **more,
    }  # fmt: skip


def entry(path="a.FCStd", findings=(), errors=()):
    return {
        "path": path, "year": {"name": "museum"}, "today": {"date": "2026-01-01"}, "parts": [{}],
        "findings": list(findings), "errors": [{"message": one, "part": ""} for one in errors],
    }  # fmt: skip


ENTRIES = [
    entry(),
    entry("ä <b>.FCStd", [finding("seen"), finding("breaks", known=False), finding("jams", known=True)]),
    entry("bad.FCStd", errors=["bad.FCStd: it is <empty>"]),
]


class Bytes(io.TextIOWrapper):
    """Text written in an encoding, as a terminal or a file takes it."""

    def __init__(self, encoding="utf-8"):
        self.kept = io.BytesIO()
        super().__init__(self.kept, encoding=encoding, newline="")

    def text(self):
        self.flush()
        return self.kept.getvalue().decode(self.encoding)


def written(name, entries=ENTRIES, encoding="utf-8"):
    out = Bytes(encoding)
    form = FORMS[name](out)
    for one in entries:
        form.add(one, {"text": f"Report of {one['path']}", "csv": f"path\n{one['path']}\n"})
    form.end("3 models.")
    return out.text()


def test_json_is_what_the_library_would_write():
    for entries in ([], ENTRIES[:1], ENTRIES):
        report = {"schema": "heartside-check-1", "files": entries, "errors": []}
        assert written("json", entries) == json.dumps(report, indent=1, ensure_ascii=False) + "\n"


@pytest.mark.parametrize("encoding", ["ascii", "latin-1", "utf-8"])
@pytest.mark.parametrize("name", ["json", "jsonl"])
def test_json_goes_through_any_stream(name, encoding):
    odd = [*ENTRIES, entry("odd\udcff.FCStd")]
    text = written(name, odd, encoding)
    files = json.loads(text)["files"] if name == "json" else [json.loads(line) for line in text.splitlines()]
    assert [one["path"] for one in files] == [one["path"] for one in odd]


def test_json_lines_are_one_a_model():
    lines = written("jsonl").splitlines()
    assert len(lines) == 3 and all(json.loads(line)["schema"] == "heartside-check-line-1" for line in lines)


def test_csv_has_one_heading():
    assert written("csv").splitlines() == ["path", "a.FCStd", "ä <b>.FCStd", "bad.FCStd"]


def test_findings_as_csv_are_no_formulas():
    rows = list(
        csv.DictReader(io.StringIO(written("findings-csv", [entry("=x", [finding(message="=1+1")])])))
    )
    assert rows[0]["path"] == "'=x" and rows[0]["message"] == "'=1+1" and rows[0]["severity"] == "seen"
    assert [row["known"] for row in csv.DictReader(io.StringIO(written("findings-csv")))] == [
        "",
        "new",
        "known",
    ]


class Reader(HTMLParser):
    """Holds a page to be well formed: every tag closed in its order, ids once, links that lead somewhere."""

    def __init__(self):
        super().__init__(convert_charrefs=True)
        self.open, self.ids, self.links, self.words, self.tags = [], [], [], [], set()

    def handle_starttag(self, tag, attrs):
        facts = dict(attrs)
        self.tags.add(tag)
        self.ids += [facts["id"]] if "id" in facts else []
        self.links += [facts["href"]] if "href" in facts else []
        assert not any(name.startswith("on") or name in ("src", "style") for name in facts)
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        self.words.append(data)


def read(page):
    reader = Reader()
    reader.feed(page)
    reader.close()
    assert reader.open == [] and len(set(reader.ids)) == len(reader.ids)
    assert all(link[1:] in reader.ids and link[0] == "#" for link in reader.links)
    return reader


def test_the_page_is_well_formed_and_every_word_escaped():
    page = written("html")
    reader = read(page)
    assert page.startswith("<!DOCTYPE html>") and "http" not in page
    assert reader.tags.isdisjoint({"script", "b><", "iframe", "img", "object", "form"})
    words = "".join(reader.words)
    assert '<script>alert("&")</script>\\x1b[2J\\x202e=1+1' in words and "ä <b>.FCStd" in words
    assert "\x1b" not in page and "\u202e" not in page
    assert "it is <empty>" in words and "local codes" in words
    read(written("html", []))


def test_the_page_puts_the_gravest_first():
    page = written("html")
    order = [page.index(f">{name}</a>") for name in ("bad.FCStd", "ä &lt;b&gt;.FCStd", "a.FCStd")]
    assert order == sorted(order)


def test_severities_are_those_of_the_checks():
    assert html_index.SEVERITIES == SEVERITIES and set(html_index.MEANING) == set(SEVERITIES)


# ---- what a run comes to ------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("fail_on", "severities", "failing"),
    [
        ("unknown", ["unknown"], True),
        ("jams", ["seen", "unknown"], False),
        ("jams", ["seen", "breaks"], True),
        ("breaks", ["jams"], False),
        ("never", ["breaks"], False),
        ("unknown", [], False),
    ],
)
def test_what_counts_as_failing(fail_on, severities, failing):
    tally = Tally(fail_on)
    tally.add(entry(findings=[finding(one) for one in severities]), {})
    assert tally.failing is failing


def test_known_findings_do_not_count():
    tally = Tally("unknown")
    for one in ENTRIES:
        tally.add(one, {"found": one is ENTRIES[0]}, gone=1)
    assert (tally.hold, tally.with_findings, tally.not_checked, tally.known) == (1, 1, 1, 1)
    assert tally.summary() == (
        "3 models: 1 holds, 1 with findings, 1 could not be checked, 1 as kept from before. "
        "Known findings: 1 accepted, 2 no longer there."
    )
    only_known = Tally("unknown")
    only_known.add(entry(findings=[finding("breaks", known=True)]), {})
    assert not only_known.failing and only_known.hold == 1
