"""Parts that cannot be worked out until something more is said about them."""

from __future__ import annotations

from movement_core.checks.finding import UNKNOWN, Finding
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def missing_facts(whole: WholePiece) -> list[Finding]:
    """One finding for each part with a missing fact, naming all that is missing and what to say."""
    found = []
    for solved in whole.solved.parts:
        part = solved.part
        if not part.missing:
            continue
        found.append(
            Finding(
                check="missing-facts",
                severity=UNKNOWN,
                parts=(part.name,),
                keys=(part.key,),
                message=say("not said: {facts}", facts=", ".join(say(word) for word in part.missing)),
                remedy="; ".join(f"{say(word)}: {reason}" for word, reason in part.missing.items()),
            )
        )
    return found
