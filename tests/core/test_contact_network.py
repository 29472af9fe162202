"""Any network of elastic parts keeps the laws of statics: balance, linearity, symmetry, no force without restraint."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.piece.contact.network import ElasticParts, Network, Stops, Ties
from movement_core.piece.contact.pressing import pressing_forces

seeds = st.integers(0, 10_000)
QUICK = settings(max_examples=40, deadline=None, derandomize=True)


def network(seed, tree=False, count=8):
    """Turned parts with springs at random points; a tree, or with loops."""
    rng = np.random.default_rng(seed)
    axes = np.linalg.qr(rng.normal(size=(count, 3, 3)))[0]
    centre = rng.uniform(0, 800, (count, 3))
    low, high = rng.uniform(-300, -10, (count, 3)), rng.uniform(10, 300, (count, 3))
    parts = ElasticParts(axes, centre, 10 ** rng.uniform(5, 7, (count, 3)), low, high)
    pairs = [(int(rng.integers(n)), n) for n in range(1, count)]
    if not tree:
        pairs += [tuple(rng.choice(count, 2, replace=False)) for _ in range(6)]
    points = rng.uniform(-200, 1000, (len(pairs), 3))
    half = rng.normal(size=(len(pairs), 3, 3))
    stiffness = (half @ np.swapaxes(half, 1, 2) + 0.1 * np.eye(3)) * 10 ** rng.uniform(
        1, 4, (len(pairs), 1, 1)
    )
    free = rng.uniform(-0.02, 0.02, (count, 3, 2))
    return parts, Ties(np.array(pairs, dtype=np.intp), points, stiffness), free, rng


def stops_for(parts, rng, count=5):
    pairs = np.array([rng.choice(len(parts.centre), 2, replace=False) for _ in range(count)], dtype=np.intp)
    normals = rng.normal(size=(count, 3))
    normals /= np.linalg.norm(normals, axis=1)[:, None]
    points = rng.uniform(0, 800, (count, 2, 3))
    return Stops(pairs, points, normals, rng.uniform(0, 2, count), np.full(count, 1e-6))


def on_parts(net, found, stops=None):
    """(N, 3, states) sum of all forces on each part."""
    total = np.zeros((len(net.parts.centre), 3, found.strain.shape[2]))
    forces = net.tie_force_n(found)
    np.add.at(total, net.ties.pairs[:, 0], forces)
    np.add.at(total, net.ties.pairs[:, 1], -forces)
    if stops is not None:
        pressed = stops.normals[:, :, None] * found.stop_force_n[:, None, :]
        np.add.at(total, stops.pairs[:, 0], -pressed)
        np.add.at(total, stops.pairs[:, 1], pressed)
    return total


@given(seeds)
@QUICK
def test_every_part_is_in_balance_with_stops_and_without(seed):
    parts, ties, free, rng = network(seed)
    stops = stops_for(parts, rng)
    net = Network(parts, ties)
    for chosen in (None, stops):
        found = net.solve(free, chosen)
        scale = max(1.0, float(np.abs(net.tie_force_n(found)).max()))
        assert np.abs(on_parts(net, found, chosen)).max() < 1e-4 * scale
    assert found.stop_force_n.min() >= 0
    room = net.room_mm(stops, found)
    assert room.min() > -1e-6 * found.stop_force_n.max() - 1e-6
    assert np.abs(np.where(found.stop_force_n > 1e-3, room, 0)).max() < 1e-6 * found.stop_force_n.max() + 1e-6


@given(seeds)
@QUICK
def test_nothing_bears_a_force_where_nothing_is_restrained(seed):
    parts, ties, free, _ = network(seed, tree=True)
    net = Network(parts, ties)
    found = net.solve(free)
    assert np.abs(net.tie_force_n(found)).max() < 0.05  # the weak ground pulls a little
    assert np.abs(found.kept).max() < 1e-6


@given(seeds, st.floats(-3, 3))
@QUICK
def test_force_follows_the_change_of_moisture_in_proportion(seed, factor):
    parts, ties, free, _ = network(seed)
    net = Network(parts, ties)
    one, other = (net.tie_force_n(net.solve(strains)) for strains in (free, factor * free))
    assert other == pytest.approx(factor * one, rel=1e-6, abs=1e-3)


@given(seeds)
@QUICK
def test_forces_of_ties_of_one_pair_and_of_sums_of_states_are_those_of_all(seed):
    parts, ties, free, rng = network(seed)
    pairs = np.concatenate([ties.pairs, ties.pairs[[2, 2]]])
    points = np.concatenate([ties.points, rng.uniform(-200, 1000, (2, 3))])
    net = Network(parts, Ties(pairs, points, np.concatenate([ties.stiffness, ties.stiffness[[0, 1]]])))
    found, course = net.solve(free), rng.uniform(-1, 1, (2, 5))
    forces, alike = net.tie_force_n(found), [2, len(pairs) - 2, len(pairs) - 1]
    scale = float(np.abs(forces).max())
    assert net.tie_force_n(found, alike) == pytest.approx(forces[alike], rel=1e-9, abs=1e-9 * scale)
    assert net.tie_force_n(found.at(course)) == pytest.approx(
        forces @ course, rel=1e-9, abs=1e-9 * scale + 1e-6
    )


@given(seeds)
@QUICK
def test_what_a_stop_does_to_another_the_other_does_to_it(seed):
    """Reciprocity of Betti and Maxwell."""
    parts, ties, _, rng = network(seed)
    stops = stops_for(parts, rng)
    net = Network(parts, ties)
    opened = net.room_mm(stops, net.pushed(stops)) - stops.room_mm[:, None]
    assert opened == pytest.approx(opened.T, rel=1e-5, abs=1e-9 * float(np.abs(opened).max()))


@given(seeds)
@QUICK
def test_the_order_of_parts_and_ties_does_not_matter(seed):
    parts, ties, free, rng = network(seed)
    order, other = rng.permutation(len(parts.centre)), rng.permutation(len(ties.pairs))
    place = np.argsort(order)
    turned = ElasticParts(
        *(getattr(parts, name)[order] for name in ("axes", "centre", "stiffness_n", "low_mm", "high_mm"))
    )
    swapped = Ties(place[ties.pairs[other]][:, ::-1], ties.points[other], ties.stiffness[other])
    net, turned_net = Network(parts, ties), Network(turned, swapped, ground=int(place[0]))
    one, two = net.solve(free), turned_net.solve(free[order])
    forces = net.tie_force_n(one)
    scale = float(np.abs(forces).max())
    assert turned_net.tie_force_n(two) == pytest.approx(-forces[other], rel=1e-5, abs=1e-6 * scale + 1e-3)
    assert two.strain == pytest.approx(one.strain[order], rel=1e-5, abs=1e-8)


@given(seeds, st.integers(1, 9), st.integers(1, 6))
@QUICK
def test_stops_are_open_or_pressed(seed, count, states):
    rng = np.random.default_rng(seed)
    half = rng.normal(size=(count, count))
    give, room = half @ half.T + 1e-3 * np.eye(count), rng.normal(size=(count, states))
    force = pressing_forces(room, give)
    left = room + give @ force
    assert force.min() >= 0
    assert left.min() > -1e-6
    assert np.abs(left * force).max() < 1e-5 * max(1.0, force.max())


def test_a_bar_needs_length_and_stiffness():
    one = np.ones((1, 3))
    with pytest.raises(InputError):
        ElasticParts(np.eye(3)[None], 0 * one, one, one, one)
    with pytest.raises(InputError):
        ElasticParts(np.eye(3)[None], 0 * one, 0 * one, -one, one)
