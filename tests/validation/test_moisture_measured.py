"""The wood's answer against measured cases and the published trends of its coefficients.

Where the agreement is rough it is stated as it is: the published diffusivities themselves differ by a
factor of ten.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from movement_core.air.emc import equilibrium_moisture
from movement_core.air.indoor import Rooms, indoor_air
from movement_core.moisture.consequence import crown_mm, gradient_curvature
from movement_core.moisture.events import BoardInAir, lying_on_bench
from movement_core.moisture.exclusion import fit_film
from movement_core.moisture.finish import find_finish
from movement_core.moisture.marching import Spell, march
from movement_core.moisture.transport import diffusivity, still_air_permeance, transport_methods
from movement_core.sources import READ, RECALLED
from movement_core.tables import number, rows
from tests.validation.record import compared, within_range


def _exclusion_rows(provenance: str):
    for row in rows("finish_films"):
        figures = [number(row[f"mee_{day}_day"]) for day in (1, 7, 14)]
        if row["provenance"] == provenance and None not in figures:
            yield row, figures


@pytest.mark.parametrize(("provenance", "rms", "worst"), [("read", 1.4, 4.6), ("recalled", 1.4, 4.0)])
def test_one_permeance_reproduces_the_exclusion_table(provenance: str, rms: float, worst: float) -> None:
    """Wood Handbook FPL-GTR-190 Table 16-3 (p. 16-4): one permeance a row gives 1, 7 and 14 days.

    The table's own scatter: three coats of nitrocellulose lacquer stand with 10 % and with 19 % at 14 days.
    """
    misfits = np.array([fit_film(figures).misfit_points for _, figures in _exclusion_rows(provenance)])
    assert misfits.shape[0] >= 12
    assert np.sqrt((misfits**2).mean()) < rms
    assert np.abs(misfits).max() < worst
    for day in range(3):
        assert np.sqrt((misfits[:, day] ** 2).mean()) < 1.7
    compared(
        f"moisture excluded by finishes, rows {provenance}", "Wood Handbook FPL-GTR-190, Table 16-3, p. 16-4",
        READ if provenance == "read" else RECALLED, np.zeros_like(misfits), misfits, "points", within=worst,
        note="difference to the table; its own scatter: three coats of one lacquer stand with 10 and with 19 %",
    )  # fmt: skip
    for day in range(3):
        assert abs(misfits[:, day].mean()) < 1.1  # hardly any bias on any day


def test_shipped_permeances_are_those_of_the_fit() -> None:
    for row in rows("finish_films"):
        fitted = fit_film([number(row[f"mee_{day}_day"]) for day in (1, 7, 14)]).permeance_ng
        shipped = number(row["permeance_ng"])
        assert (np.isinf(fitted) and shipped is None) or fitted == pytest.approx(shipped, rel=2e-3), row


def test_permeances_are_of_the_published_size() -> None:
    """ASHRAE Handbook Fundamentals, permeance of building materials (recalled): exterior acrylic house
    paint about 313 ng/(Pa s m²), enamel on plaster 28 to 86 for two coats."""
    ours, source = find_finish("latex paint", 3).film_ng, "ASHRAE Handbook Fundamentals, permeances"
    compared("exterior acrylic paint", source, RECALLED, 313, ours, "ng/(Pa s m²)", share=0.35)
    enamel = find_finish("enamel", 2).film_ng
    within_range("two coats of enamel", source, RECALLED, 28, 86, enamel, "ng/(Pa s m²)")


def test_diffusivity_rises_with_moisture() -> None:
    """Simpson, Wood and Fiber Science (read): aspen, eightfold from 2.5 to 18 % MC at 43 °C. The cell-wall
    model gives 4, the timber models 2: the moisture dependence is understated by the models at hand."""
    ratio = float(diffusivity(43, 18, 0.38) / diffusivity(43, 2.5, 0.38))
    within_range(
        "diffusivity at 18 % ÷ 2.5 % MC, 43 °C", "Simpson, Wood and Fiber Science: eightfold", READ, 3.5, 8, ratio, "",
        published=8, note="disagrees: the cell-wall model gives 4, the timber models 2: understated",
    )  # fmt: skip
    assert (
        1.5
        < float(diffusivity(43, 18, 0.38, "timber model") / diffusivity(43, 2.5, 0.38, "timber model"))
        < 8
    )


def test_diffusivity_with_density_and_temperature() -> None:
    """Sonderegger et al. 2011, Holzforschung 65:819, abstract (read): spruce ÷ beech 2 to 3. Getty,
    Structural Conservation of Panel Paintings (read): about twice as fast at 24 °C as at 12 °C."""
    woods = float(diffusivity(20, 10, 0.43) / diffusivity(20, 10, 0.68))
    source = "Sonderegger et al. 2011, Holzforschung 65:819, abstract: 2 to 3"
    within_range("diffusivity, spruce ÷ beech", source, READ, 2, 3.2, woods, "")
    warm = float(diffusivity(24, 10, 0.5) / diffusivity(12, 10, 0.5))
    source = "Getty, Structural Conservation of Panel Paintings"
    compared("diffusivity, 24 °C ÷ 12 °C", source, READ, 2, warm, "", share=0.15)


def test_methods_spread_over_the_stated_range() -> None:
    """Most sources within 1/3 to 3 times the default for a softwood at 20 °C; the two outside are named,
    not hidden.
    """
    default = float(diffusivity(20, 12, 0.42))
    ratios = {
        name: float(diffusivity(20, 12, 0.42, name)) / default for name in transport_methods("diffusivity")
    }
    assert 1 / 3 < ratios["timber model"] < 3
    assert 3 < ratios["fast timber model"] < 6.5
    assert 0.03 < ratios["panel painting"] < 1 / 3
    assert 8 < still_air_permeance("boundary layer") / still_air_permeance("timber model") < 12


def _altar_half_time(gravity: float, temperature: float, factor: float) -> float:
    """Days to half the change of the mean: 10 mm, one face open, RH 80 → 50 %, still air."""
    board = BoardInAir(10, gravity, temperature, 50, "bare", "blocked", diffusivity_factor=factor)
    course = march(10, float(equilibrium_moisture(temperature, 80)), [board.spell(500)], board.rate(12))
    half = (course.mean_mc[0] + board.air_mc) / 2
    return float(np.interp(half, course.mean_mc[::-1], course.time_days[::-1]))


def test_painted_altar_panel() -> None:
    """Conservation physics publication (read): a 10 mm panel painted on one side, RH 80 → 50 %, changes by
    half in about 50 days. Wood and temperature are not given. Ours: 4 to 8 days for pine between 20 and 10
    °C, 12 to 19 for oak; the slow end of the range for oak in a cool church reaches the published figure.
    So the default is two to ten times faster than that panel."""
    source = "conservation physics publication: about 50 d; wood and temperature not given"
    for name, gravity, temperature, low, high in (
        ("pine at 20 °C", 0.42, 20, 3.5, 5.5), ("pine at 10 °C", 0.42, 10, 6, 9.5), ("oak at 10 °C", 0.68, 10, 16, 23)
    ):  # fmt: skip
        within_range(
            f"half-time of a painted panel, {name}", source, READ, low, high,
            _altar_half_time(gravity, temperature, 1), "d", published=50,
            note="disagrees: the default is two to ten times faster than that panel",
        )  # fmt: skip
    within_range(
        "half-time of a painted panel, slow end", source, READ, 40, 60, _altar_half_time(0.68, 10, 1 / 3), "d",
        published=50, note="oak in a cool church at a third of the default diffusivity",
    )  # fmt: skip


def test_crack_that_lags_the_humidity() -> None:
    """Conservation physics publication (read): the width of a crack in historic furniture lags the humidity
    of the room by about 41 h (cross-correlation). Thickness and weather not given. Ours, 10 mm, varnished
    on one face, in the hourly weather of Greensboro taken indoors: 29 h, hardly depending on the
    thickness."""
    pvlib = pytest.importorskip("pvlib", reason="pvlib ships the weather year")
    table, _ = pvlib.iotools.read_tmy3(
        Path(pvlib.__file__).parent / "data" / "723170TYA.CSV", map_variables=True
    )
    hours = 150 * 24
    weather = (
        table["temp_air"].to_numpy()[:hours],
        table["relative_humidity"].to_numpy().astype(float)[:hours],
    )
    room = indoor_air(*weather, Rooms(heating_c=18))
    air = equilibrium_moisture(room.temperature_c, room.rh_percent)
    board = BoardInAir(10, 0.65, 19, 50, "varnish 2", "bare", depends_on_moisture=False)
    show, back = board.exchanges()
    spell = Spell(150.0, air, air, show, back)
    course = march(10, float(air.mean()), [spell], board.rate(9.0), cells=16, longest_step_days=1 / 8)
    wood = course.at(np.arange(hours) / 24)

    def quick(values):
        month = 30 * 24
        return (
            values
            - np.convolve(np.pad(values, month // 2, mode="edge"), np.ones(month) / month, "same")[
                month // 2 : -month // 2
            ]
        )[1440:]

    x, y = quick(room.rh_percent), quick(wood)
    lag = int(np.argmax([np.corrcoef(x[: x.size - h], y[h:])[0, 1] for h in range(200)]))
    within_range(
        "crack in furniture behind the humidity", "conservation physics publication: about 41 h", READ, 20, 60, lag,
        "h", published=41, note="thickness and weather are not given; ours hardly depends on the thickness",
    )  # fmt: skip


def test_time_goes_with_the_square_of_the_thickness() -> None:
    """Conservation physics publication (read): oak boards sealed on one side bend as a linear system whose
    time scales with thickness squared."""
    thin, thick = (march(t, 12.0, [Spell(t**2 / 4, 8, 8, 1e9, 0.0)], 1.5, cells=60) for t in (10.0, 20.0))
    assert np.allclose(
        thin.at(thick.time_days / 4, "face_difference_mc"), thick.face_difference_mc, atol=0.01
    )


def test_poplar_panel_and_maple_top() -> None:
    """Trade magazine reports (read). Poplar, 19 mm, 1.07 m wide: 32 mm hollow after two years with unequal
    finish; 1.5 % between the faces explains it. Maple, 19 × 600 mm: about 25 mm after days in 90 % RH with
    one face open: ours is twice that after four days from 7 %, the free elastic bend, half of it after one
    day."""
    poplar = crown_mm(1070, gradient_curvature(0.00289, 1.5, 19))
    compared("hollow of a poplar panel", "trade magazine report", READ, 32, float(poplar), "mm", within=2)
    room = BoardInAir(19, 0.63, 21, 90)
    four, one = (lying_on_bench(room, 7.0, days, follow_days=40) for days in (4.0, 1.0))
    crowns = [
        float(crown_mm(600, gradient_curvature(0.00353, event.worst_face_difference_mc, 19)))
        for event in (one, four)
    ]
    assert crowns[0] < 35 < crowns[1]
    within_range(
        "maple top in damp air, one and four days", "trade magazine report: about 25 mm after days", READ, [15, 35],
        [35, 65], crowns, "mm", published=25, note="twice the report after four days (free elastic bend)",
    )  # fmt: skip


def test_common_practice_of_finishes() -> None:
    """Common practice, no source: oil hardly slows, shellac and varnish do, epoxy most; each coat helps."""
    films = [find_finish(name, 3).film_ng for name in ("oil", "lacquer", "shellac", "epoxy")]
    assert films == sorted(films, reverse=True)
    varnish = [find_finish("varnish", coats).film_ng for coats in range(1, 10)]
    assert varnish == sorted(varnish, reverse=True)
