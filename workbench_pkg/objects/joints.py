"""Joints that the maker confirmed: one property of the study, which stays in the file without the add-on.

HeartsideJoints  JSON: a list of [key of a part, key of the other, kind]
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any

from movement_core.errors import InputError
from movement_core.wording import say
from workbench_pkg.host.marks import add_property, explained
from workbench_pkg.objects.study import ensure_study, known_study

JOINTS = "HeartsideJoints"


def kept_joints(doc: Any) -> dict[tuple[str, str], str]:
    """Kinds by the keys of the two parts.

    Raises InputError where the property holds no such list, or the study is of a later release.
    """
    study = known_study(doc)
    if study is None or JOINTS not in study.PropertiesList:
        return {}
    try:
        rows = json.loads(getattr(study, JOINTS) or "[]")
        return {(str(one), str(other)): str(kind) for one, other, kind in rows}
    except (ValueError, TypeError, RecursionError) as error:
        raise InputError(
            say("{name} is not a list of joints ({error})", name=JOINTS, error=error),
            where=study.Label,
            allowed=say("JSON like {example}", example='[["Side/0", "Runner/0", "slides"]]'),
            todo=say("mend or remove the property"),
        ) from None


def keep_joints(doc: Any, kinds: Mapping[tuple[str, str], str]) -> None:
    """Note the kinds in the document's study, in place of what was there. The caller opens the transaction."""
    study = ensure_study(doc)
    if not kinds:
        if JOINTS in study.PropertiesList:
            study.removeProperty(JOINTS)
        return
    add_property(study, "App::PropertyString", JOINTS, explained("Joints that the maker confirmed"))
    rows = sorted([one, other, kind] for (one, other), kind in kinds.items())
    setattr(study, JOINTS, json.dumps(rows, ensure_ascii=False))
