"""How fast holding a panel is, against a finite-element solve of equal accuracy in the same run.

    python -m tests.benchmarks.bench_holding [--quick]

One trial of the reference top (two load cases, crown and hollow) against the same trial with Morley plate
elements as a user of the library would write it, and against the same elements factored once with the core's
own contact search; whole plans against one such trial. Ratios of one run on one core are judged, milliseconds
only printed beside their targets. How a trial grows with the number of fasteners is a curve. Exit 1 when a ratio is
missed.
"""

from __future__ import annotations

import os

for _name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")  # one core: before numpy is imported

import numpy as np  # noqa: E402

from movement_core.holding.anchor_plan import plan_anchors  # noqa: E402
from movement_core.holding.free_curvature import FreeCurvature  # noqa: E402
from movement_core.holding.model import Anchor, Bearing, Elastic, LoadCase, Plate  # noqa: E402
from movement_core.holding.plan_model import Top, Wish  # noqa: E402
from movement_core.holding.plate import hold, prepare  # noqa: E402
from movement_core.holding.rails import Rail  # noqa: E402
from movement_core.holding.travel import WidthStrain  # noqa: E402
from tests.benchmarks.rows import Curve, Measured, Row, finish, shortest  # noqa: E402

TRIAL_MS, PLAN_S = 30.0, 2.0
FE_OVER_TRIAL = 50.0
FACTORED_OVER_TRIAL = 4.0
FE_OVER_PLAN = 1.0  # one plan, some forty trials, in no more than the time of one finite-element trial
FE_OVER_PLANS = 0.3  # four kinds compared, some 150 trials, in no more than that of three


def reference():
    plate = Plate(1000, 500, 20, Elastic(10300, 600, 700, 0.4), 700)
    a, b = 490, 240
    lines = (((-a, -b), (a, -b)), ((a, -b), (a, b)), ((a, b), (-a, b)), ((-a, b), (-a, -b)))
    anchors = [Anchor(-a, 0), Anchor(a, 0), Anchor(0, -b), Anchor(0, b)]
    cases = [
        LoadCase("crown", FreeCurvature.even(500, 1.6e-4)),
        LoadCase("hollow", FreeCurvature.even(500, -1.6e-4)),
    ]
    return plate, lines, anchors, cases


def dining_top():
    """A six-board oak top on four aprons, twelve months: our own example."""
    length, width, boards = 1400.0, 800.0, 6
    plate = Plate(length, width, 20, Elastic(13500, 1080, 1090, 0.42), 750)
    a, b = length / 2 - 50, width / 2 - 50
    rails = (
        Rail("front apron", (-a, -b), (a, -b), 20),
        Rail("back apron", (-a, b), (a, b), 20),
        Rail("left apron", (-a, -b), (-a, b), 20),
        Rail("right apron", (a, -b), (a, b), 20),
    )
    lines = tuple(np.linspace(-width / 2, width / 2, boards + 1))
    cases = []
    for month in range(12):
        share = (1 + np.cos(2 * np.pi * month / 12)) / 2
        crown = -2e-4 + 6e-4 * share
        kinks = (-0.75 * crown * width / boards,) * (boards - 1)
        cases.append(LoadCase(f"month {month + 1}", FreeCurvature(lines, (crown,) * boards, kinks)))
    return Top(plate, rails, WidthStrain.even(width, -0.008, 0.0, 0.006), tuple(cases), 0.63)


class FactoredElements:
    """The same elements made as fast as they can be: factored once, contact by the core's own search.

    Pinned at three points, which carry nothing once the forces balance; the three rigid motions are unknowns.
    """

    def __init__(self, elements):
        from scipy.sparse.linalg import splu

        self.elements = elements
        pins = elements._rows(np.array([(-300.0, -150.0), (300.0, -150.0), (0.0, 150.0)]))
        self.factors = splu((elements.stiffness + 1e3 * pins.T @ pins).tocsc())
        self.rows = elements.contact_rows
        self.moved = self.factors.solve(self.rows.T.toarray())
        self.compliance = self.rows @ self.moved
        self.points = np.array([place for place, _ in elements.contact])

    def solve(self, cases, anchors):
        from movement_core.holding.springs import Body, Springs, equilibrium, push_only

        places = np.array([(a.along_mm, a.across_mm) for a in anchors])
        rows = self.elements._rows(places)
        side = self.rows @ self.factors.solve(rows.T.toarray())
        here = rows @ self.factors.solve(rows.T.toarray())
        compliance = np.block([[self.compliance, side], [side.T, here]])
        points = np.vstack([self.points, places])
        rigid = np.column_stack([np.ones(len(points)), points])
        grip = np.array([a.stiffness_n_mm for a in anchors])
        none = np.zeros(len(grip))
        springs = push_only(self.elements.contact_k).joined(Springs(none, none, grip, none, none + np.inf))
        weight = np.array([-self.elements.plate.weight_n, 0.0, 0.0])
        pulls = []
        for case in cases:
            bent = self.factors.solve(self.elements.load(case.free))
            unloaded = np.concatenate([self.rows @ bent, rows @ bent])
            start = np.zeros(len(points), dtype=np.int8)
            start[len(self.points) :] = 1
            start[: len(self.points)] = -1
            found = equilibrium(Body(compliance, unloaded, rigid, weight, 1e-6), springs, start)
            pulls.append(found.force_n[len(self.points) :])
        return pulls


def by_fasteners(trial, cases):
    """Seconds of a trial with 4 to 64 fasteners along the reference top's rails, in pairs."""
    points = []
    for count in (4, 8, 16, 32, 64):
        places = np.linspace(-450, 450, count // 2)
        anchors = [Anchor(float(along), across) for along in places for across in (-240, 240)]
        points.append((count, shortest(5, lambda a=anchors: hold(trial, a, cases))[0]))
    return Curve("holding: a trial of two load cases", "fasteners", "s", tuple(points))


def measure(asked) -> Measured:
    from tests.validation.holding_fe import MorleyPlate

    few = 1 if asked.quick else 3
    plate, lines, anchors, cases = reference()
    prepare_s, trial = shortest(5, lambda: prepare(plate, [Bearing(line) for line in lines]))
    trial_s, ours = shortest(15, lambda: hold(trial, anchors, cases))
    elements = MorleyPlate(plate, lines, (), (64, 40))
    fe_s, theirs = shortest(few, lambda: [elements.solve(c.free, anchors, [(0, 0)]) for c in cases])
    pulls = [max(abs(a.worst_anchor_n / np.max(b.anchor_n) - 1), 0) for a, b in zip(ours, theirs)]
    print(
        f"worst anchor pull apart by {100 * max(pulls):.2f} % (64 × 40 Morley mesh, {theirs[0].unknowns} unknowns)"
    )

    factored = FactoredElements(elements)
    fast_s, fast = shortest(few, lambda: factored.solve(cases, anchors))
    apart = max(abs(a.worst_anchor_n / np.max(b) - 1) for a, b in zip(ours, fast))
    print(
        f"the same elements factored once, with our contact search: {1e3 * fast_s:.0f} ms a trial, "
        f"{fast_s / trial_s:.0f} times ours, pull apart by {100 * apart:.2f} %"
    )

    top = dining_top()
    plan_s, plans = shortest(few, lambda: plan_anchors(top, Wish(3.0)))
    hard_s, hard = shortest(few, lambda: plan_anchors(top, Wish(1.0)))
    one_s, one = shortest(few, lambda: plan_anchors(top, Wish(3.0, kinds=("clip",))))
    print(
        f"plans found within 3 mm: {[(p.kind, len(p.placed)) for p in plans if p.found]}, within 1 mm: "
        f"{[p.kind for p in hard if p.found] or 'none, with ways out'}; one kind alone: {one[0].found}"
    )
    print(
        f"prepare {1e3 * prepare_s:.1f} ms, trial of two load cases {1e3 * trial_s:.1f} ms (target {TRIAL_MS:g}), "
        f"finite-element trial {1e3 * fe_s:.0f} ms\none plan {one_s:.2f} s (target {PLAN_S:g}), four compared "
        f"{plan_s:.2f} s, four not found and ways out {hard_s:.2f} s"
    )
    elements_trial = "a finite-element trial"
    rows = [
        Row("a trial: times as fast", elements_trial, fe_s / trial_s, FE_OVER_TRIAL),
        Row(
            "a trial: times as fast", "the same elements factored once", fast_s / trial_s, FACTORED_OVER_TRIAL
        ),
        Row("one plan: times as fast", elements_trial, fe_s / one_s, FE_OVER_PLAN),
        Row("four plans compared: times as fast", elements_trial, fe_s / plan_s, FE_OVER_PLANS),
        Row("four plans and ways out: times as fast", elements_trial, fe_s / hard_s, FE_OVER_PLANS),
        Row("worst pull of a fastener, apart", "finite elements", 100 * max(pulls), most=5.0, unit="%"),
    ]
    return Measured(rows, [by_fasteners(trial, cases)])


if __name__ == "__main__":
    finish(measure, __doc__)
