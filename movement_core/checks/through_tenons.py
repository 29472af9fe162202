"""Through tenons that stand proud or sink in: long grain that does not move, through wood that does."""

from __future__ import annotations

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import SHOWS, Finding
from movement_core.checks.tenon_shape import PROUD_MM, TenonShape, strain_along, tenons_of
from movement_core.checks.told import told
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import AtLeast, say


def through_tenons(whole: WholePiece) -> list[Finding]:
    """One finding for each tenon that is drawn flush with the far face and does not stay so, or falls short of it."""
    found = (_judge(whole, tenon) for tenon in tenons_of(whole) if tenon.through)
    return [finding for finding in found if finding is not None]


def _judge(whole: WholePiece, tenon: TenonShape) -> Finding | None:
    strain = strain_along(whole, tenon.outer, tenon.way)
    if strain is None:
        return None
    # The part around it grows past the end of the tenon, and shrinks back from it.
    proud, sunk = -tenon.depth_mm * strain.least, -tenon.depth_mm * strain.most
    most, least = tenon.proud_mm + float(proud.max()), tenon.proud_mm + float(sunk.min())
    flush = abs(tenon.proud_mm) <= PROUD_MM
    leaves = max(float(proud.max()), -float(sunk.min()))
    if leaves < limit("tenon proud") or not (flush or (tenon.proud_mm > 0 and least < 0)):
        return None
    out = float(proud.max()) >= -float(sunk.min())
    month = int(month_of_day(int(proud.argmax() if out else sunk.argmin())))
    message = say(
        "the end of its tenon, {drawn:+.1f} mm from the far face as drawn, stands {least:+.1f} to {most:+.1f} mm "
        "from it through the year (+ proud, - sunk in), since the {depth:.0f} mm of wood around it move and its own "
        "length does not; wedged at that end, the shoulder opens by as much instead",
        drawn=tenon.proud_mm,
        least=least,
        most=most,
        depth=tenon.depth_mm,
    )
    remedy = say(
        "let it stand proud by {proud:.1f} mm or more and ease its edges, or stop the tenon inside; do not plane it "
        "flush in the dry season; or turn the rings so that the part around it moves less along the tenon",
        proud=AtLeast(max(PROUD_MM + 0.5, -float(sunk.min()) + 1.0)),
    )
    figures = {
        "drawn_mm": tenon.proud_mm,
        "least_mm": least,
        "most_mm": most,
        "depth_mm": tenon.depth_mm,
    }
    return told(whole, "through-tenon", SHOWS, (tenon.inner, tenon.outer), message, remedy, month, figures)
