"""Tusks and wedges behind a part that shrinks away from them."""

from __future__ import annotations

from movement_core.air.daily import month_of_day
from movement_core.checks.finding import BREAKS, Finding
from movement_core.checks.remember import beyond, joints_of
from movement_core.checks.tenon_shape import ALONG, TenonShape, strain_along, tenons_of
from movement_core.checks.told import told
from movement_core.piece.contact.joints import OVERLAP
from movement_core.piece.limits import limit
from movement_core.piece.whole import WholePiece
from movement_core.wording import say


def tenon_wedges(whole: WholePiece) -> list[Finding]:
    """One finding for each tusk or wedge across a through tenon that comes loose in the dry season."""
    found = []
    for tenon in tenons_of(whole):
        if tenon.through and tenon.proud_mm > 0:
            found += [_judge(whole, tenon, wedge) for wedge in _wedges(whole, tenon)]
    return [finding for finding in found if finding is not None]


def _wedges(whole: WholePiece, tenon: TenonShape) -> list[int]:
    """Parts that touch the tenon and stand on the far face of the part that it goes through."""
    touching = {
        beyond(joint, tenon.inner)
        for joint in joints_of(whole, tenon.inner)
        if joint.meeting.contacts and joint.kind != OVERLAP
    } - {tenon.outer}
    found = []
    for joint in joints_of(whole, tenon.outer):
        other = beyond(joint, tenon.outer)
        if other not in touching:
            continue
        sense = 1.0 if joint.parts[0] == tenon.outer else -1.0
        if any(
            sense * float(contact.normal @ tenon.way) > ALONG
            and float(contact.centre @ tenon.way) > tenon.near + tenon.depth_mm / 2
            for contact in joint.meeting.contacts
        ):
            found.append(other)
    return found


def _judge(whole: WholePiece, tenon: TenonShape, wedge: int) -> Finding | None:
    strain = strain_along(whole, tenon.outer, tenon.way)
    if strain is None:
        return None
    slack = -tenon.depth_mm * strain.least
    most = float(slack.max())
    if most < limit("wedge slack"):
        return None
    return told(
        whole,
        "wedge-loosens",
        BREAKS,
        (wedge, tenon.inner, tenon.outer),
        say(
            "the {depth:.0f} mm of wood that it draws tight shrink, and leave it {slack:.1f} mm of slack: the "
            "joint works loose until it is driven home again",
            depth=tenon.depth_mm,
            slack=most,
        ),
        say(
            "begin its mortise {inside:.0f} mm inside the face, give it a slope of 1 in 8 to 1 in 10 so that it "
            "can be driven further, and drive it again in the dry season",
            inside=most + 1.5,
        ),
        int(month_of_day(int(slack.argmax()))),
        {"slack_mm": most, "depth_mm": tenon.depth_mm},
    )
