"""Boards laid otherwise: one laying judged at once, and its woods said of the places they are laid into."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from movement_core.errors import InputError
from movement_core.piece.arrange import arrange_panel, panel_candidates
from movement_core.piece.panels import board_as_laid, glued_panels
from movement_core.piece.relaid import OF_THE_WOOD, words_of_places
from movement_core.section.laying import Laying, best_looking, judged
from tests.core.solids import box
from tests.core.test_piece_panels import piece

N = 4
OAK = "white oak; grain x; built 8"


def said_of(tag):
    """Word → value of a tag, as the properties would hold it."""
    from movement_core.piece.tag_sources import tags_from_text, values_by_word

    return values_by_word(tags_from_text("board", f"wood{{{tag}}}", "label"))


def panel_of(tags, widths=None):
    widths = widths or [120.0] * len(tags)
    at = np.cumsum([0.0, *widths])
    outlines = [box((1000, w, 25), (0.0, a + w / 2, 0.0)) for w, a in zip(widths, at)]
    return glued_panels(piece(*zip(outlines, tags)))[0]


def as_it_lies(panel, each):
    """What was listed from one side of the panel, in the order in which the panel counts its boards."""
    return [each[int(board.part.key)] for board in panel.boards]


def tag_of(words):
    """The words of a place as a tag again."""

    def text(value):
        return " ".join(f"{v!r}" for v in value) if isinstance(value, list) else str(value)

    first = [str(words["species"])] if "species" in words else []
    rest = [
        f"{word} {text(value)}" for word, value in words.items() if word != "species" and value is not None
    ]
    return "; ".join(first + rest)


layings = st.builds(
    lambda order, over, turned: Laying(tuple(order), tuple(over), tuple(turned)),
    st.permutations(range(N)),
    st.lists(st.booleans(), min_size=N, max_size=N),
    st.lists(st.booleans(), min_size=N, max_size=N),
)
piths = st.lists(
    st.tuples(st.floats(-80, 80), st.floats(20, 200), st.sampled_from([-1, 1])), min_size=N, max_size=N
)
shows = st.lists(st.sampled_from(["z", "-z"]), min_size=N, max_size=N)
grains = st.lists(st.sampled_from(["x", "-x"]), min_size=N, max_size=N)


@settings(max_examples=40, deadline=None)
@given(
    laying=layings,
    pith=piths,
    show=shows,
    grain=grains,
    looks=st.lists(st.integers(-3, 3), min_size=N, max_size=N),
)
def test_a_panel_whose_woods_are_said_anew_is_the_laid_one(laying, pith, show, grain, looks):
    """However the places' own frames lie: piths, heart sides and looks come out as the boards lie."""
    places = [f"{OAK[: OAK.index('grain')]}grain {g}; show {s}; built 8" for g, s in zip(grain, show)]
    tags = [
        f"{place}; pith {x:.3f} {side * y:.3f}; heart {'show' if side > 0 else 'back'}; looks {look}"
        for place, (x, y, side), look in zip(places, pith, looks)
    ]
    panel = panel_of(tags)
    candidates, changes = panel_candidates(panel)
    new = words_of_places(panel, as_it_lies(panel, [said_of(tag) for tag in tags]), laying)
    by_key = {board.part.key: words for board, words in zip(panel.boards, new)}
    again = panel_of([tag_of({**said_of(place), **by_key[str(i)]}) for i, place in enumerate(places)])
    assert not any(board.part.problems for board in again.boards)
    wanted = judged(candidates, changes, laying)
    for board, laid in zip(again.boards, wanted.boards):
        assert board_as_laid(board, again.axes).pith_mm == pytest.approx(laid.pith_mm, abs=1e-6)
    anew, _ = panel_candidates(again)
    better = sum(c.looks_show - c.looks_back for c in anew)
    before = sum(
        (candidates[i].looks_show - candidates[i].looks_back) * (-1 if over else 1)
        for i, over in zip(laying.order, laying.over)
    )
    assert better == pytest.approx(before)


@settings(max_examples=30, deadline=None)
@given(laying=layings)
def test_doing_a_step_twice_or_back_changes_nothing(laying):
    for place in range(N):
        assert laying.flipped(place).flipped(place) == laying
        assert laying.turned_round(place).turned_round(place) == laying
        for to in range(N):
            assert laying.moved(place, to).moved(to, place) == laying


def test_the_judgement_is_that_of_the_study_but_for_settling():
    panel = panel_of([f"{OAK}; show z; pith 0 {60 if i % 2 else -45}; looks {i}" for i in range(N)])
    candidates, changes = panel_candidates(panel)
    study = arrange_panel(panel, may_turn=True, may_reorder=True)
    for each in study.listed:
        laid = judged(candidates, changes, Laying(each.order, each.over, each.turned))
        assert laid.looks == pytest.approx(each.looks)
        assert laid.departure_mm == pytest.approx(each.departure_mm, rel=0.05, abs=0.02)
    own = Laying.as_drawn(N)
    assert judged(candidates, changes, best_looking(candidates, own)).looks == study.best_looks.looks


def test_a_board_that_does_not_fit_is_refused_by_name():
    tags = [f"{OAK}; show z; pith 0 60" for _ in range(2)]
    panel = panel_of(tags, [120.0, 160.0])
    said = [said_of(tag) for tag in tags]
    with pytest.raises(InputError, match="does not fit the place"):
        words_of_places(panel, said, Laying((1, 0), (False, False), (False, False)))
    assert words_of_places(panel, said, Laying((0, 1), (True, False), (False, False)))[0]["pith"] == [
        0.0,
        -60.0,
    ]


def test_what_belongs_to_the_place_stays():
    tags = [f"{OAK}; show z; pith 0 60; finish varnish 2", f"{OAK}; show z; pith 0 -40; looks 2"]
    panel = panel_of(tags)
    said = as_it_lies(panel, [said_of(t) for t in tags])
    new = words_of_places(panel, said, Laying((1, 0), (False,) * 2, (False,) * 2))
    first, second = as_it_lies(panel, new)
    assert set(first) | set(second) <= set(OF_THE_WOOD)
    assert first["looks"] == 2 and second["looks"] is None
    assert first["pith"] == [0.0, -40.0] and second["pith"] == [0.0, 60.0]


@pytest.mark.parametrize("bad", [((0, 0), (True, True), (True, True)), ((0, 1), (True,), (True, False))])
def test_a_laying_that_is_none(bad):
    with pytest.raises(InputError, match="each board once"):
        Laying(*bad)


def test_looks_that_the_maker_gives_count_instead():
    tags = [f"{OAK}; show -z; pith 0 60", f"{OAK}; show z; pith 0 60"]
    panel = panel_of(tags)
    words = words_of_places(panel, [said_of(t) for t in tags], Laying.as_drawn(2), [1.0, 1.0])
    ups = [float(np.sign(b.part.frame.axes[1] @ panel.axes[1])) for b in panel.boards]
    assert [word["looks"] for word in words] == ups
