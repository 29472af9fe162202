"""What is written as JSON holds to the published schemas; JSON and CSV come back as they went, and say the same.

The schemas are held against JSON Schema, draft 2020-12, by the library jsonschema.
"""

from __future__ import annotations

import copy
import csv
import io
import json
from dataclasses import asdict
from pathlib import Path

import pytest

import movement_core
from movement_core.air.presets import find_year
from movement_core.errors import UnknownName
from movement_core.moisture.learned import LearnedLot
from movement_core.piece.top_plan import plan_top
from movement_core.piece.tops import find_tops
from movement_core.piece.warp import WarpCase, diagnose
from movement_core.section.arrangement import arrangement_study
from movement_core.section.board import Board
from movement_core.section.lays import Candidate
from movement_core.sheet.arrangements import study_entry
from movement_core.sheet.holding import plans_entry, untold_entry
from movement_core.sheet.schemas import schema, schema_names
from movement_core.sheet.stock import judge_stock
from movement_core.sheet.table import COLUMNS, as_csv
from movement_core.wood import find_species
from tests.core import sheet_pieces
from tests.core.tables import BOTH, UP, frame, solved, top
from tests.core.test_drilling_template import made
from workbench_pkg.batch.comparing import Tolerance, compare
from workbench_pkg.batch.forms import FORMS, FindingsForm
from workbench_pkg.batch.output import REPORTS

jsonschema = pytest.importorskip("jsonschema", reason="the schemas are held against the library jsonschema")

FOLDER = Path(movement_core.__file__).parent / "data" / "schema"
PIECES = sorted(sheet_pieces.ALL)
UNITS = ("mm", "mm2", "mm3", "mpa", "n", "deg", "percent", "mc", "c", "days")
UNITLESS = {
    "shares", "axes", "width", "thickness", "grain", "direction", "number", "count", "kinds_used", "safety",
    "drawn_fasteners", "gaps", "board", "looks", "tried", "factor", "sd", "prior_sd", "used", "outliers", "suits",
    "left_after_wait", "left_when_freed", "share",
}  # fmt: skip
DAYS_INSIDE = {"usual", "quickest", "slowest"}  # of days_to_wait, whose name carries the unit


def judge(name, value):
    jsonschema.Draft202012Validator(schema(name)).validate(value)


def entry(piece):
    return sheet_pieces.ALL[piece]().report


def report(*entries):
    return {**REPORTS["check"], "files": list(entries), "errors": []}


def written(form, *entries):
    out = io.StringIO(newline="")
    one = FORMS[form](out)
    for each in entries:
        one.add(each, {"csv": as_csv(each)})
    one.end("")
    return out.getvalue()


def subschemas(node, name=""):
    """Every schema of a property within a schema, with the name of the property."""
    for key, each in node.get("properties", {}).items():
        yield key, each
        yield from subschemas(each, key)
    for each in node.get("$defs", {}).values():
        yield from subschemas(each)
    for key in ("items", "additionalProperties"):
        if isinstance(node.get(key), dict):
            yield from subschemas(node[key], name)
    for each in node.get("patternProperties", {}).values():
        yield from subschemas(each, name)


def holds_numbers(node):
    kinds = node.get("type", ())
    kinds = {kinds} if isinstance(kinds, str) else set(kinds)
    inner = [node[key] for key in ("items", "additionalProperties") if isinstance(node.get(key), dict)]
    return bool(kinds & {"number", "integer"}) or any(holds_numbers(one) for one in inner)


# ---- the schemas themselves ---------------------------------------------------------------------------------


def test_every_form_that_is_written_has_a_schema_and_every_file_is_named():
    assert {path.stem for path in FOLDER.iterdir()} == set(schema_names())
    assert {one["schema"] for one in REPORTS.values()} <= set(schema_names())
    with pytest.raises(UnknownName, match="heartside-check-1"):
        schema("heartside-check-0")


@pytest.mark.parametrize("name", schema_names())
def test_a_schema_is_valid_closed_described_and_tells_its_units(name):
    whole = json.loads((FOLDER / f"{name}.json").read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(whole)
    jsonschema.Draft202012Validator.check_schema(schema(name))
    assert whole["properties"]["schema"]["const"] == name and whole["additionalProperties"] is False
    for key, each in subschemas(whole):
        assert len(each.get("description", "")) > 2 or key == "schema", key
        if "object" in each.get("type", ()):
            assert "additionalProperties" in each, key
        if holds_numbers(each) and key not in DAYS_INSIDE and key != "lots":
            assert key.rpartition("_")[2] in UNITS or key in UNITLESS, key
        if key in UNITLESS and holds_numbers(each) and key != "gaps":
            told = each["description"]
            assert "without unit" in told or "counted from 0" in told, key


# ---- real output holds to them ------------------------------------------------------------------------------


@pytest.mark.parametrize("piece", PIECES)
def test_a_sheet_and_its_report_hold_and_come_back_equal(piece):
    sheet = sheet_pieces.ALL[piece]().data
    judge("heartside-sheet-1", sheet)
    judge("heartside-check-1", report(sheet["report"]))
    assert json.loads(json.dumps(sheet, allow_nan=False)) == sheet


def test_the_forms_of_a_check_hold_and_come_back_equal():
    entries = [entry(piece) for piece in PIECES]
    assert any(each["findings"] for each in entries) and any(each["gaps"] for each in entries)
    told = json.loads(written("json", *entries))
    judge("heartside-check-1", told)
    assert told["files"] == entries
    lines = [json.loads(line) for line in written("jsonl", *entries).splitlines()]
    for line, each in zip(lines, entries, strict=True):
        judge("heartside-check-line-1", line)
        assert line == {"schema": "heartside-check-line-1", **each}


def test_a_model_that_could_not_be_opened_has_its_path_and_errors_alone():
    bare = {"path": "a.step", "parts": [], "findings": [], "errors": [{"message": "no", "part": ""}]}
    judge("heartside-check-1", report(bare))
    with pytest.raises(jsonschema.ValidationError, match="dependency"):
        judge("heartside-check-1", report({**bare, "year": entry("one")["year"]}))


def holders(value):
    """Ways to every object in a value."""
    if isinstance(value, dict):
        yield ()
    pairs = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for key, each in pairs:
        yield from ((key, *way) for way in holders(each))


def test_a_foreign_key_is_refused_wherever_it_is_planted():
    whole = report(entry("table"))
    refused = jsonschema.Draft202012Validator(schema("heartside-check-1"))
    kinds = {}
    for way in holders(whole):
        kinds.setdefault(tuple(key for key in way if isinstance(key, str)), way)
    assert len(kinds) > 30
    for way in kinds.values():
        planted = copy.deepcopy(whole)
        here = planted
        for key in way:
            here = here[key]
        here["foreign"] = "planted"
        assert not refused.is_valid(planted), way


def test_a_missing_key_a_text_for_a_figure_and_another_version_are_refused():
    whole = report(entry("table"))
    for change in (
        lambda one: one["files"][0]["parts"][0].pop("width_mm"),
        lambda one: one["files"][0]["parts"][0].update(width_mm="148"),
        lambda one: one["files"][0].pop("gaps"),
        lambda one: one.update(schema="heartside-check-2"),
    ):
        spoiled = copy.deepcopy(whole)
        change(spoiled)
        with pytest.raises(jsonschema.ValidationError):
            judge("heartside-check-1", spoiled)


def test_plans_for_tops_hold():
    (found,) = find_tops(solved(top(UP) + frame(), BOTH))
    tops = [plans_entry(plan_top(found, flatness_mm=1.0))]
    tops += [each for piece in PIECES for each in sheet_pieces.ALL[piece]().data["tops"]]
    (unsaid,) = find_tops(solved(top(("grain x",) * 4) + frame(), BOTH))
    tops.append(plans_entry(plan_top(unsaid)) if unsaid.top else untold_entry(unsaid))
    assert any(each["missing"] for each in tops) and any(each["recipes"] for each in tops if each["plans"])
    told = {**REPORTS["hold"], "path": "table.FCStd", "tops": tops, "errors": []}
    judge("heartside-hold-1", told)
    assert json.loads(json.dumps(told, allow_nan=False)) == told
    spoiled = copy.deepcopy(told)
    spoiled["tops"][0]["plans"][0]["fasteners"][0]["foreign"] = 1
    with pytest.raises(jsonschema.ValidationError):
        judge("heartside-hold-1", spoiled)


@pytest.mark.parametrize("kind", ["slotted screw", "button", "clip", "figure-eight"])
def test_a_template_holds(kind):
    template, _ = made(kind)
    judge("heartside-template-1", template.data)
    assert json.loads(json.dumps(template.data, allow_nan=False)) == template.data


def test_a_comparison_holds():
    old = [entry("table"), entry("door")]
    new = copy.deepcopy(old)
    changed = next(one for each in new for one in each["findings"] if one["figures"])
    changed["severity"] = "seen" if changed["severity"] != "seen" else "jams"
    changed["figures"] = {name: value + 5 for name, value in changed["figures"].items()}
    new[0]["parts"][0]["driest_mm"] += 3
    new[0]["parts"].pop()
    new[0]["year"]["name"] = "museum"
    models = compare({"files": old}, {"files": [*new, entry("one")]}, Tolerance(1.0))
    assert any(model["changed"] for model in models) and any(model["parts"] for model in models)
    told = {**REPORTS["compare"], "old": "a.json", "new": "b.json", "models": models, "errors": []}
    judge("heartside-compare-1", json.loads(json.dumps(told)))


def test_the_other_reports_hold():
    oak = find_species("white oak")
    boards = [Candidate(Board(oak, 120.0, 25.0, (x, -60.0), name)) for name, x in zip("ABC", (10, -20, 30))]
    study = study_entry("Top", list("ABC"), arrangement_study(boards, -4.0, 3.0), list("abc"))
    stock = judge_stock(oak, 27.0, [9.0, 10.5], find_year("heated cold-winter home"), (20.0, 50.0))
    lot = asdict(LearnedLot(1.1, 0.05, 0.15, (0, 1), ()))
    case = WarpCase(species=oak, width_mm=400, thickness_mm=20, cup_mm=3.0)
    for name, found in (
        ("arrange", {"path": "a.step", "studies": [study]}),
        ("stock", {"stock": stock}),
        ("measured", {"path": "a.step", "lots": {"white oak": lot}}),
        ("measured", {"path": "a.step", "lots": None}),
        ("diagnose", {"path": None, "diagnosis": asdict(diagnose(case))}),
    ):
        told = json.loads(json.dumps({**REPORTS[name], **found, "errors": []}, allow_nan=False))
        judge(told["schema"], told)
    for name, empty in REPORTS.items():
        judge(empty["schema"], {**empty, "errors": [{"message": name, "part": ""}]})


# ---- CSV ----------------------------------------------------------------------------------------------------


def plain(cell):
    """A cell without the mark that keeps a spreadsheet from taking it for a formula."""
    return cell[1:] if cell[:1] == "'" and cell[1:2] in ("=", "+", "-", "@", "\t") else cell


def figures_of(part, column):
    """What JSON says of a column of the CSV: one figure, or the ends of a range."""
    group, name = part, column
    for inner in ("thickness", "cup"):
        if column.startswith(f"{inner}_") and column != "thickness_mm":
            group, name = part[inner] or {}, column.removeprefix(f"{inner}_")
    if column.endswith("_percent"):
        group = part["moisture"]
    spread = group.get(name.replace("_mm", "_range_mm")) if name.endswith("_mm") else None
    return list(spread) if spread else [] if group.get(name) is None else [group[name]]


@pytest.mark.parametrize("piece", PIECES)
def test_the_csv_of_parts_says_what_json_says(piece):
    each = entry(piece)
    rows = list(csv.DictReader(io.StringIO(as_csv(each), newline="")))
    assert len(rows) == len(each["parts"])
    numbers = 0
    for row, part in zip(rows, each["parts"], strict=True):
        assert tuple(row) == COLUMNS and plain(row["path"]) == each["path"]
        assert row["missing"].split() == part["missing"]
        for column in ("name", "key", "species", "kind", "cut", "driest_month", "wettest_month"):
            assert plain(row[column]) == (part[column] or ""), column
        for column in COLUMNS:
            if column.rpartition("_")[2] in UNITS:
                told = [float(cell) for cell in row[column].split("..") if cell]
                assert told == figures_of(part, column), column
                numbers += len(told)
    assert numbers > len(rows)


def test_the_csv_of_findings_says_what_json_says():
    entries = [entry(piece) for piece in PIECES]
    rows = list(csv.DictReader(io.StringIO(written("findings-csv", *entries), newline="")))
    told = [(each["path"], finding) for each in entries for finding in each["findings"]]
    assert len(rows) == len(told) > 3
    for row, (path, finding) in zip(rows, told, strict=True):
        assert tuple(row) == FindingsForm.COLUMNS
        assert plain(row["path"]) == path and plain(row["parts"]) == " + ".join(finding["parts"])
        for column in ("id", "check", "severity", "month", "message", "remedy"):
            assert plain(row[column]) == (finding[column] or ""), column
        assert row["known"] == ""


def test_the_readme_names_every_schema_and_column():
    readme = (Path(__file__).parents[2] / "README.md").read_text(encoding="utf-8")
    data = readme.partition("\n## Data\n")[2].partition("\n## ")[0]
    for name in (*schema_names(), *COLUMNS, *FindingsForm.COLUMNS):
        assert f"`{name}`" in data, name
