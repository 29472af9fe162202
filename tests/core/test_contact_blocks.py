"""Systems of small blocks solved against the plain dense solution, of any shape and stiffness."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.piece.contact.blocks import BlockSystem


def springs(count, pairs, size, decades, rng):
    """Blocks of random springs between pairs, stiff and soft ones mixed, on a weak ground."""
    pairs = np.array(pairs, dtype=np.intp).reshape(-1, 2)
    each = rng.normal(size=(len(pairs), size, 2 * size))
    full = np.swapaxes(each, 1, 2) @ each * 10.0 ** rng.uniform(0, decades, (len(pairs), 1, 1))
    diagonal = np.tile(1e-2 * np.eye(size), (count, 1, 1))
    np.add.at(diagonal, pairs[:, 0], full[:, :size, :size])
    np.add.at(diagonal, pairs[:, 1], full[:, size:, size:])
    return diagonal, pairs, full[:, :size, size:]


def dense(diagonal, pairs, beside):
    count, size = diagonal.shape[:2]
    whole = np.zeros((count, size, count, size))
    for part, block in enumerate(diagonal):
        whole[part, :, part] += block
    for (one, other), block in zip(pairs, beside):
        whole[one, :, other] += block
        whole[other, :, one] += block.T
    return whole.reshape(count * size, count * size)


def same(count, pairs, size, decades=4, seed=0):
    rng = np.random.default_rng(seed)
    diagonal, pairs, beside = springs(count, pairs, size, decades, rng)
    load = rng.normal(size=(count, size, 3))
    plain = np.linalg.solve(dense(diagonal, pairs, beside), load.reshape(count * size, 3))
    found = BlockSystem(diagonal, pairs, beside).solve(load).reshape(count * size, 3)
    assert found == pytest.approx(plain, rel=1e-6, abs=1e-8 * float(np.abs(plain).max()))


@given(
    st.integers(1, 14).flatmap(
        lambda count: st.tuples(
            st.just(count),
            st.lists(
                st.tuples(st.integers(0, count - 1), st.integers(0, count - 1)).filter(
                    lambda p: p[0] != p[1]
                ),
                max_size=40 if count > 1 else 0,
            ),
        )
    ),
    st.integers(1, 6),
    st.integers(0, 1000),
)
@settings(max_examples=60, deadline=None, derandomize=True)
def test_any_network(net, size, seed):
    same(*net, size, seed=seed)


def test_a_hub_with_many_around_it_and_a_close_lattice():
    same(120, [(0, i) for i in range(1, 120)] + [(i, i + 1) for i in range(1, 119)], 3)
    index = np.arange(6 * 6 * 6).reshape(6, 6, 6)
    pairs = [
        pair
        for axis in range(3)
        for pair in zip(
            np.take(index, range(5), axis=axis).ravel(), np.take(index, range(1, 6), axis=axis).ravel()
        )
    ]
    same(216, pairs, 3)
    every = [(i, j) for i in range(15) for j in range(i)]
    same(15, every, 2)


@pytest.mark.parametrize("count", [1, 2, 40])
def test_no_load_at_all_has_an_answer_of_no_columns(count):
    pairs = [(one, one + 1) for one in range(count - 1)]
    diagonal, pairs, beside = springs(count, pairs, 3, 2, np.random.default_rng(1))
    assert BlockSystem(diagonal, pairs, beside).solve(np.zeros((count, 3, 0))).shape == (count, 3, 0)
