"""Lengths in every unit schema of the host: written its way, and never so coarse that the movement is lost."""

from __future__ import annotations

import re
from fractions import Fraction

import FreeCAD
import pytest

from workbench_pkg.host.units import INCH_MM, length_text, lengths_in, reads_millimetres, short_length

SCHEMAS = range(9)
MM_OF = {
    "mm": 1,
    "cm": 10,
    "dm": 100,
    "m": 1000,
    "in": 25.4,
    '"': 25.4,
    "ft": 304.8,
    "yd": 914.4,
    "thou": 0.0254,
}


@pytest.fixture
def schema():
    before = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/Units").GetInt("UserSchema", 0)
    yield FreeCAD.Units.setSchema
    FreeCAD.Units.setSchema(before)


def read_back(text):
    """Millimetres of a length as a maker reads it, without the code under test."""
    sign = -1 if text.startswith("-") else 1
    text = text.lstrip("-")
    feet = re.fullmatch(r"(?:(\d+)' ?)?(?:(?:(\d+(?:\.\d+)?)(?: |$|\+|\"))?(\d+/\d+)?\"?)?", text)
    if feet and ("'" in text or ('"' in text and not re.fullmatch(r'[\d.]+ "', text))):
        inches = float(feet[2] or 0) + float(Fraction(feet[3] or "0"))
        return sign * (int(feet[1] or 0) * 12 + inches) * INCH_MM
    number, unit = re.fullmatch(r"([\d.]+) ?(\S+)", text).groups()
    return sign * float(number) * MM_OF[unit]


@pytest.mark.parametrize("number", SCHEMAS)
@pytest.mark.parametrize("mm", [0.0, 0.3, 0.75, 1.2, 3.2, 12.7, 119.6, 130.0, 609.6, 1500.0, -0.4, -119.6])
def test_what_is_shown_is_what_is_meant(schema, number, mm):
    schema(number)
    shown = read_back(length_text(mm))
    assert abs(shown - mm) <= INCH_MM / 128 + 0.002
    if abs(mm) < 3:
        assert abs(shown - mm) <= max(0.1 * abs(mm), 0.013)


@pytest.mark.parametrize(
    ("number", "mm", "text"),
    [
        (0, 119.6, "119.60 mm"),
        (5, 119.6, '4 45/64"'),
        (5, 12.7, '1/2"'),
        (5, 609.6, "2' 0\""),
        (5, 0.3, '0.012"'),
        (5, -12.7, '-1/2"'),
        (3, 119.6, "4.71 in"),
        (7, 119.6, "0.3924 ft"),
    ],
)
def test_examples(schema, number, mm, text):
    schema(number)
    assert length_text(mm) == text


def test_sentences_are_put_in_the_units_of_the_user(schema):
    words = "moves -0.4 to +1.2 mm across 120 mm, 20 × 40 mm; an M6 bolt, 12 mmol"
    assert reads_millimetres() and lengths_in(words) == words
    schema(5)
    assert not reads_millimetres()
    assert lengths_in(words) == (
        'moves -0.016" to +0.047" across 4 23/32", 25/32" × 1 37/64"; an M6 bolt, 12 mmol'
    )


def test_a_board_keeps_no_hundredths(schema):
    assert short_length(119.6) == "119.6 mm"
    schema(5)
    assert short_length(119.6) == '4 45/64"'
