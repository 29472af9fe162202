"""One file a check: each reads a solved piece and returns findings. A new check is listed in ``CHECKS``."""

from __future__ import annotations

from collections.abc import Callable

from movement_core.checks.finding import SEVERITIES, Finding
from movement_core.checks.held_tops import held_tops
from movement_core.checks.missing_facts import missing_facts
from movement_core.checks.ring_trouble import ring_trouble
from movement_core.piece.solve import SolvedPiece

CHECKS: tuple[Callable[[SolvedPiece], list[Finding]], ...] = (ring_trouble, held_tops, missing_facts)


def all_findings(piece: SolvedPiece) -> tuple[Finding, ...]:
    """Findings of every check, the gravest first."""
    found = [finding for check in CHECKS for finding in check(piece)]
    return tuple(sorted(found, key=lambda finding: SEVERITIES.index(finding.severity)))


__all__ = ["CHECKS", "Finding", "all_findings"]
