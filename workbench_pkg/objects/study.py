"""The study: one object a document, holding what the piece is studied with.

It is a plain feature with plain properties:

HeartsideYear           name of the year of air, or the path of a CSV file of twelve months; "" is the usual one
HeartsideDate           day of the check, YYYY-MM-DD; "" is the day on which it is asked
HeartsideTodayMoisture  moisture content of the wood on that day, percent; absent where nobody measured it
HeartsideAsked          what else the air was asked with, as JSON: rooms, shop, day it was built; absent where nothing
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

import FreeCAD as App

from workbench_pkg.host.marks import (
    CURRENT_SCHEMA,
    add_property,
    kind_of,
    mark,
    objects_of_kind,
    schema_of,
)
from workbench_pkg.objects.proxies import Study, StudyView

KIND = "study"
YEAR, DATE, TODAY, ASKED = "HeartsideYear", "HeartsideDate", "HeartsideTodayMoisture", "HeartsideAsked"
_TEXTS = {
    YEAR: "Year of air that the piece lives in",
    DATE: "Day of the check, YYYY-MM-DD; empty: the day on which it is asked",
}


def find_study(doc: Any) -> Any | None:
    """The study of a document, or None."""
    found = objects_of_kind(doc, KIND)
    return found[0] if found else None


def ensure_study(doc: Any) -> Any:
    """The study of a document, made where there is none. The caller opens the transaction."""
    obj = find_study(doc)
    if obj is None:
        obj = doc.addObject("App::FeaturePython", "HeartsideStudy")
        obj.Label = "Heartside study"
        mark(obj, KIND)
        _complete(obj)
        attach(obj)
        obj.purgeTouched()  # it has nothing to compute
    return obj


def attach(obj: Any) -> None:
    """Give a study its Python side again where a host without the add-on has dropped it."""
    if not isinstance(obj.Proxy, Study):
        touched = "Touched" in obj.State
        Study(obj)
        if not touched:
            obj.purgeTouched()
    if App.GuiUp and obj.ViewObject is not None and not isinstance(obj.ViewObject.Proxy, StudyView):
        StudyView(obj.ViewObject)


def migrate(obj: Any) -> None:
    """Bring a study of an older release up to the form of this one; a newer one is left as it is."""
    if kind_of(obj) != KIND or schema_of(obj) > CURRENT_SCHEMA:
        return
    _complete(obj)
    if schema_of(obj) < CURRENT_SCHEMA:
        mark(obj, KIND)


def get_text(doc: Any, name: str) -> str:
    """Text of a property of the document's study; "" where there is no study."""
    obj = find_study(doc)
    return str(getattr(obj, name)) if obj is not None and name in obj.PropertiesList else ""


def today_moisture(doc: Any) -> float | None:
    """Moisture content of the wood on the day of the check, percent, or None."""
    obj = find_study(doc)
    return float(getattr(obj, TODAY)) if obj is not None and TODAY in obj.PropertiesList else None


def asked_of(doc: Any) -> dict[str, Any]:
    """What else the study was asked with: rooms, shop, day it was built."""
    try:
        return dict(json.loads(get_text(doc, ASKED) or "{}"))
    except ValueError:
        return {}


def set_asked(obj: Any, asked: Mapping[str, Any]) -> None:
    """Note what else the study was asked with; nothing takes it away."""
    if not asked:
        if ASKED in obj.PropertiesList:
            obj.removeProperty(ASKED)
        return
    add_property(
        obj, "App::PropertyString", ASKED, "What else the air was asked with: rooms, shop, day built"
    )
    setattr(obj, ASKED, json.dumps(asked, ensure_ascii=False))


def set_today_moisture(obj: Any, percent: float | None) -> None:
    """Note the moisture of the day; None takes it away."""
    if percent is None:
        if TODAY in obj.PropertiesList:
            obj.removeProperty(TODAY)
        return
    add_property(obj, "App::PropertyFloat", TODAY, "Moisture content of the wood on that day, percent")
    setattr(obj, TODAY, float(percent))


def _complete(obj: Any) -> None:
    for name, explanation in _TEXTS.items():
        add_property(obj, "App::PropertyString", name, explanation)
