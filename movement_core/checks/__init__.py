"""One file a check: each reads the whole piece and returns findings. A new check is listed in ``CHECKS``."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from movement_core.checks.back_panels import back_panels
from movement_core.checks.breadboards import breadboards
from movement_core.checks.crossing_grain import crossing_grain
from movement_core.checks.drawer_bottoms import drawer_bottoms
from movement_core.checks.drawer_heights import drawer_heights
from movement_core.checks.ends_in_posts import ends_in_posts
from movement_core.checks.face_frames import face_frames
from movement_core.checks.finding import SEVERITIES, Finding
from movement_core.checks.fitting_lines import fitting_lines
from movement_core.checks.free_boards import free_boards
from movement_core.checks.held_tops import held_tops
from movement_core.checks.kept_leaves import kept_leaves
from movement_core.checks.lock_lines import lock_lines
from movement_core.checks.loose_panels import loose_panels
from movement_core.checks.missing_facts import missing_facts
from movement_core.checks.mitres import mitres
from movement_core.checks.overlaps import overlaps
from movement_core.checks.ring_trouble import ring_trouble
from movement_core.checks.round_tenons import round_tenons
from movement_core.checks.shelves_across import shelves_across
from movement_core.checks.shoulder_lines import shoulder_lines
from movement_core.checks.slide_lines import slide_lines
from movement_core.checks.stable_cores import stable_cores
from movement_core.checks.strips_across import strips_across
from movement_core.checks.tenon_wedges import tenon_wedges
from movement_core.checks.through_tenons import through_tenons
from movement_core.checks.trapped_panels import trapped_panels
from movement_core.checks.twisted_parts import twisted_parts
from movement_core.checks.two_fixed_lines import two_fixed_lines
from movement_core.checks.unequal_finish import unequal_finish
from movement_core.checks.web_frames import web_frames
from movement_core.checks.wide_tenons import wide_tenons
from movement_core.checks.working_gaps import working_gaps
from movement_core.piece.whole import WholePiece

CHECKS: tuple[Callable[[WholePiece], list[Finding]], ...] = (
    ring_trouble,
    trapped_panels,
    drawer_bottoms,
    loose_panels,
    strips_across,
    ends_in_posts,
    shelves_across,
    web_frames,
    face_frames,
    back_panels,
    breadboards,
    stable_cores,
    crossing_grain,
    two_fixed_lines,
    wide_tenons,
    through_tenons,
    tenon_wedges,
    round_tenons,
    shoulder_lines,
    mitres,
    working_gaps,
    drawer_heights,
    unequal_finish,
    free_boards,
    twisted_parts,
    held_tops,
    fitting_lines,
    lock_lines,
    slide_lines,
    kept_leaves,
    overlaps,
    missing_facts,
)


def all_findings(whole: WholePiece) -> tuple[Finding, ...]:
    """Findings of every check, the gravest first."""
    return by_gravity([finding for check in CHECKS for finding in check(whole)])


def by_gravity(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings in the order in which they are told, the gravest first."""
    return tuple(sorted(findings, key=lambda finding: SEVERITIES.index(finding.severity)))


__all__ = ["CHECKS", "Finding", "all_findings", "by_gravity"]
