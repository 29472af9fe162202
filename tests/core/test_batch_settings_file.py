"""The settings beside the models: found, read, and wrong ones refused with the line. Files are made up."""

from __future__ import annotations

import json

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from movement_core.errors import FileError
from workbench_pkg.batch.inside.settings_file import NAME, WORDS, nearest_settings, read_settings


@pytest.fixture
def write(tmp_path):
    def put(text):
        path = tmp_path / NAME
        path.write_bytes(text.encode("utf-8", "surrogateescape"))
        return path

    return put


def test_every_word(write, tmp_path):
    said = {
        "year": "Oslo", "heating": 21, "cooling": 26.5, "humidify": 40, "dehumidify": 60, "moisture": 9,
        "shop": "shop.csv", "built-on": "2025-11-03", "date-order": "dmy", "temperature-unit": "F",
        "columns": {"temperature": 3, "humidity": "RH %"}, "complete-with": "museum",
        "limits": {"gap most": 5, "free cup": 1.5},
    }  # fmt: skip
    assert set(said) == {*WORDS, "limits"}
    read = read_settings(write(json.dumps(said)))
    assert read.words["year"] == "Oslo" and read.words["heating"] == 21.0
    assert read.words["shop"] == str(tmp_path / "shop.csv"), "files are named from where the settings lie"
    assert read.words["columns"] == {"temperature": 3, "humidity": "RH %"}
    assert read.limits.values == (("free cup", 1.5), ("gap most", 5.0))
    assert read_settings(write("\ufeff{}")).words == {}


@pytest.mark.parametrize(
    ("text", "line", "said"),
    [
        ('{\n "year": "museum",\n "yaer": 3\n}', 3, "did you mean 'year'"),
        ('{\n "year": 3}', 2, "write it in quotes"),
        ('{"heating": "warm"}', 1, "without quotes"),
        ('{"heating": true}', 1, "no number"),
        ('{"heating": NaN}', 1, "no number"),
        ('{"heating": 1e400}', 1, "no figure"),
        ('{\n\n"moisture": 85}', 3, "0 to 30"),
        ('{"built-on": "tomorrow"}', 1, "YYYY-MM-DD"),
        ('{"date-order": "ymdd"}', 1, "none of ymd"),
        ('{"columns": {"wind": 3}}', 1, "names no column"),
        ('{"columns": 3}', 1, "write an object"),
        ('{"limits": 3}', 1, "object of names"),
        ('{\n"limits": {\n"gap most": 5,\n"gap mosst": 5}}', 4, "gap most"),
        ('{\n"limits": {\n"gap most": 500}}', 3, "Allowed: 1 to 15 mm"),
        ('{\n"limits": {\n"gap most": "5"}}', 3, "is to be a number"),
        ('{"year": "museum",\n "year": "Oslo"}', 2, "said twice"),
        ('{\n"year": "museum",\nyes}', 3, "not JSON"),
        ('{\n"year": "a\udcff"}', 2, "UTF-8"),
        ("", 1, "not JSON"),
    ],
)
def test_what_is_wrong_is_named_with_its_line(write, text, line, said):
    with pytest.raises(FileError) as error:
        read_settings(write(text))
    assert f"{NAME}, line {line}: " in str(error.value) and said in str(error.value)


@pytest.mark.parametrize(
    "text", ["[]", "3", "null", "[" * 100_000, '{"heating": ' + "9" * 9000 + "}", " " * (1 << 21)]
)
def test_odd_files_get_one_sentence(write, text):
    with pytest.raises(FileError) as error:
        read_settings(write(text))
    assert NAME in str(error.value) and "\n" not in str(error.value) and len(str(error.value)) < 600


def test_a_folder_of_that_name_and_none_at_all(tmp_path):
    (tmp_path / NAME).mkdir()
    assert nearest_settings(tmp_path / "a.FCStd") == tmp_path / NAME
    with pytest.raises(FileError):
        read_settings(tmp_path / NAME)


def test_the_nearest_one_up_the_folders_counts(tmp_path):
    deep = tmp_path / "shop" / "old"
    deep.mkdir(parents=True)
    (tmp_path / NAME).write_text("{}", encoding="utf-8")
    assert nearest_settings(deep / "a.FCStd") == tmp_path / NAME
    (tmp_path / "shop" / NAME).write_text("{}", encoding="utf-8")
    assert nearest_settings(deep / "a.FCStd") == tmp_path / "shop" / NAME


json_values = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3),
    max_leaves=6,
)


@settings(max_examples=200, deadline=None, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(st.dictionaries(st.sampled_from([*WORDS, "limits"]), json_values, max_size=4) | json_values)
def test_any_json_is_read_or_refused(write, value):
    try:
        read_settings(write(json.dumps(value)))
    except FileError as error:
        assert "\n" not in str(error)
