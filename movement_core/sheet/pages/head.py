"""The head of a sheet: the job, where it will stand, the wood today, and lines for what is not known."""

from __future__ import annotations

import datetime
from collections.abc import Mapping
from typing import Any

from movement_core.air.year import told_date
from movement_core.sheet.pages.lengths import percent
from movement_core.sheet.pages.material import Material
from movement_core.sheet.pages.model import Block, Field, Form, Text, tell
from movement_core.sheet.pages.names import whole
from movement_core.sheet.pages.wish import SheetWish
from movement_core.wording import say, word


def head_form(material: Material, wish: SheetWish) -> Block:
    """What the bench must know before it reads on."""
    report = material.data["report"]
    today = report["today"]
    shop = Text(whole(wish.shop)) if wish.shop else None
    return Form(
        (
            Field(say("Job"), Text(whole(wish.job)) if wish.job else None),
            Field(say("Model"), Text(whole(report["path"]))),
            Field(say("Date"), Text(day(today["date"]))),
            Field(say("Where it will stand"), Text(whole(wish.place)) if wish.place else None),
            Field(say("Its air"), air(material)),
            Field(say("Known from"), Text(whole(report["year"]["basis"]))),
            Field(say("Shop today, °C and % RH"), shop),
            Field(say("Wood today"), _wood(today)),
            Field(say("Meter, its species setting"), None),
            Field(say("Wood's temperature at the meter"), None),
            Field(say("Read at"), None),
            Field(say("Made by"), None),
        ),
        columns=3,
    )


def day(date: str) -> str:
    """A date of the report as people write it."""
    return told_date(datetime.date.fromisoformat(date))


def air(material: Material) -> Text:
    """The year of the place: humidity, and the moisture that it brings wood to."""
    data, year = material.data, material.data["report"]["year"]
    return tell(
        "{name}: {least} to {most} % RH; brings wood to {dry} % in {driest} and {wet} % in {wettest}",
        name=whole(word(year["name"])),
        least=percent(data["air"]["rh_least_percent"], ("air", "rh_least_percent"), 0),
        most=percent(data["air"]["rh_most_percent"], ("air", "rh_most_percent"), 0),
        dry=percent(data["air"]["moisture_least_percent"], ("air", "moisture_least_percent")),
        wet=percent(data["air"]["moisture_most_percent"], ("air", "moisture_most_percent")),
        driest=say(year["driest_month"]),
        wettest=say(year["wettest_month"]),
    )


def _wood(today: Mapping[str, Any]) -> Text:
    figure = percent(today["moisture_percent"], ("report", "today", "moisture_percent"))
    if today["metered"]:
        return tell("{mc} % by meter", mc=figure)
    return tell("not metered; the air of the place brings wood to {mc} % today, boards lag", mc=figure)
