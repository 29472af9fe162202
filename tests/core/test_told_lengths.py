"""Lengths in sentences: in the unit of the sheet, rounded to the safe side, and nothing else touched."""

from __future__ import annotations

import ast
import re
import string
from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

import movement_core
from movement_core.errors import UnknownName
from movement_core.sheet.pages.lengths import INCH_MM, MINUS
from movement_core.sheet.pages.model import Paragraph
from movement_core.sheet.pages.sheet import movement_sheet
from movement_core.sheet.pages.told_lengths import inches, lengths_told
from movement_core.sheet.pages.wish import SheetWish
from movement_core.wording import AtLeast, AtMost, later, say, speaking
from tests.core import sheet_pieces
from workbench_pkg.translations.files import catalogue

CORE = Path(movement_core.__file__).parent
LEFT_IN_MM = re.compile(r"(?<![\w.])\d[\d./]* mm\b")


def told(template, **values):
    with lengths_told("inch"):
        return say(template, **values)


def value_of(text):
    """Inches as a number."""
    sign = -1 if text.startswith(MINUS) else 1
    return sign * float(sum(Fraction(part) for part in text.lstrip(MINUS + "+").split(" ")))


@given(
    mm=st.floats(-3000, 3000),
    spec=st.sampled_from([".0f", ".1f", "+.1f", ".2f", "g"]),
    toward=st.sampled_from([-1, 0, 1]),
)
def test_no_figure_is_rounded_to_the_wrong_side_or_by_more_than_a_step(mm, spec, toward):
    shown = value_of(inches(mm, spec, toward)) * INCH_MM
    step = INCH_MM / (16 if spec == ".0f" else 1000 if spec == ".2f" else 64)
    slip = step * 1e-5
    if toward == 0:
        assert abs(shown - mm) <= step / 2 + slip
    else:
        assert -slip <= toward * (shown - mm) <= step + slip


def test_what_must_be_reached_is_rounded_up_and_what_is_left_down():
    assert told("leave {gap:.1f} mm", gap=AtLeast(2.5)) == "leave 7/64 inch"
    assert told("leave {gap:.1f} mm", gap=AtMost(2.5)) == "leave 3/32 inch"
    assert told("{least:+.1f} to {most:+.1f} mm", least=-2.6, most=2.1) == f"{MINUS}7/64 to +3/32 inch"
    assert f"{AtLeast(2.54):.1f}" == "2.5"


def test_small_lengths_are_not_rounded_away():
    assert (
        told("{a:.1f} mm and {b:.1f} mm, {c:.2f} mm", a=0.1, b=0.0, c=0.05)
        == "0.004 inch and 0 inch, 0.002 inch"
    )


def test_names_other_units_and_millimetres_already_written_stay():
    name = 'board 12 mm {x} "24 mm"'
    template = "{part}: {n:.0f} N on {a:.0f} mm², {w:.1f} % of {way} mm, {wide:.1f} mm"
    said = told(template, part=name, n=5.0, a=4.0, w=1.0, way="30", wide=25.4)
    assert said == f"{name}: 5 N on 4 mm², 1.0 % of 30 mm, 1 inch"
    assert told("of {a:.0f} × {b:.0f} × {c:.0f} mm", a=25.4, b=50.8, c=12.7) == "of 1 × 2 × 1/2 inch"
    assert (
        told("(75 mm most often; 6 to 10 mm; 3 mmol)") == "(2 15/16 inch most often; 1/4 to 3/8 inch; 3 mmol)"
    )


def test_what_is_said_later_is_told_as_it_is_then():
    kept = later("{mm:.1f} mm", mm=25.4)
    with lengths_told("inch"):
        assert str(kept) == "1 inch"
    assert str(kept) == "25.4 mm"
    with pytest.raises(UnknownName, match="mm, inch"), lengths_told("cubit"):
        pass


def templates():
    """Every template of the core with a number before mm, and where it stands."""
    for path in sorted(CORE.rglob("*.py")):
        for call in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(call, ast.Call) and getattr(call.func, "id", "") in ("say", "later") and call.args:
                text = call.args[0]
                if isinstance(text, ast.Constant) and isinstance(text.value, str) and "} mm" in text.value:
                    yield f"{path.name}:{call.lineno}", text.value


FOUND = dict(templates())


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_length_that_follows_on_another_is_told_in_the_same_unit(language):
    spoken = {} if language == "en" else catalogue(language)
    assert len(FOUND) > 100
    for where, template in FOUND.items():
        names = {name: spec for _, name, spec, _ in string.Formatter().parse(template) if name}
        values = {name: 12345.6789 if spec or name.endswith("mm") else "word" for name, spec in names.items()}
        with speaking(spoken), lengths_told("inch"):
            said = say(template, **values)
        assert not LEFT_IN_MM.search(said), (where, said)
        for ways in (" to ", " bis ", " × ", " x "):  # no range whose ends are in two units
            assert not re.search(rf"1234\d[\d.]*{ways}(?:\d+ )?\d+/\d+ inch", said), (where, said)


def test_a_sheet_tells_in_a_note_where_its_sentences_have_another_unit():
    material = sheet_pieces.ALL["lid"]()
    notes = {}
    for units in ("mm", "inch"):
        for said in ("mm", "inch"):
            sheet = movement_sheet(replace(material, units=said), SheetWish(units=units))
            words = [one.text.words for one in sheet.blocks if isinstance(one, Paragraph)]
            notes[units, said] = [one for one in words if "1 inch is 25.4 mm" in one]
    assert notes["mm", "mm"] == notes["inch", "inch"] == []
    assert "give millimetres" in notes["inch", "mm"][0] and "give inches" in notes["mm", "inch"][0]


def test_notes_of_ours_follow_the_unit_and_a_users_words_do_not():
    from movement_core.piece.solve import RADIUS_NOTE
    from movement_core.sheet.entry import _noted

    with lengths_told("inch"):
        assert "at least 1 9/16 inch, to 9 13/16 inch or the width" in _noted(RADIUS_NOTE)
        assert _noted("sawn at 40 mm {by hand}") == "sawn at 40 mm {by hand}"
    assert _noted(RADIUS_NOTE) == RADIUS_NOTE
