"""The spectral year and the marched board against scipy and against Crank's exact solutions.

Sources: scipy's stiff integrator; Crank, The Mathematics of Diffusion (1975): half-time of a slab,
short-time uptake.
"""

from __future__ import annotations

import numpy as np
import pytest

from movement_core.air.year import Year
from movement_core.moisture.block import block_year
from movement_core.moisture.finish import as_face
from movement_core.moisture.marching import Spell, march
from movement_core.moisture.response import SlabTransport, mean_air, slab_year
from movement_core.moisture.slab import biot_roots, half_time_days, uptake
from movement_core.moisture.transport import diffusivity, exchange
from movement_core.sources import DERIVED, RECALLED
from tests.validation.record import compared

CRANK = "Crank, The Mathematics of Diffusion (1975)"

scipy_integrate = pytest.importorskip(
    "scipy.integrate", reason="scipy is what the spectral year is compared with"
)
scipy_linalg = pytest.importorskip("scipy.linalg", reason="scipy is what the spectral year is compared with")
scipy_sparse = pytest.importorskip("scipy.sparse", reason="scipy solves a leg's section independently")
scipy_sparse_linalg = pytest.importorskip(
    "scipy.sparse.linalg", reason="scipy solves a leg's section independently"
)
scipy_optimize = pytest.importorskip("scipy.optimize", reason="scipy finds the roots independently")

CELLS = 90
DAY = np.arange(365)


def _lines_matrix(thickness: float, rate: float, h_back: float, h_show: float):
    """Method of lines, written apart from the core: dM/dt = A M + b_back E_back + b_show E_show."""
    edges = thickness * (1 - np.cos(np.pi * np.linspace(0, 1, CELLS + 1))) / 2
    widths = np.diff(edges)
    A = np.zeros((CELLS, CELLS))
    for i in range(CELLS - 1):
        g = rate / (0.5 * (widths[i] + widths[i + 1]))
        A[i, i] -= g / widths[i]
        A[i, i + 1] += g / widths[i]
        A[i + 1, i + 1] -= g / widths[i + 1]
        A[i + 1, i] += g / widths[i + 1]
    b_back, b_show = np.zeros(CELLS), np.zeros(CELLS)
    for b, i, h in ((b_back, 0, h_back), (b_show, CELLS - 1, h_show)):
        if h > 0:
            g = 1 / (1 / h + widths[i] / 2 / rate)
            A[i, i] -= g / widths[i]
            b[i] = g / widths[i]
    return A, b_back, b_show, widths


def _march_scipy(thickness, rate, h_back, h_show, back_wave, show_wave):
    """(mean, show surface, back surface, face difference) on each day of a year that repeats the one
    before.
    """
    A, b_back, b_show, widths = _lines_matrix(thickness, rate, h_back, h_show)
    slowest = float(np.max(scipy_linalg.eigvals(A).real))
    years = int(np.ceil(8.0 / -slowest / 365)) + 1  # the start fades to e⁻⁸
    start = -np.linalg.solve(
        A, b_back * back_wave(np.arange(3650) / 10).mean() + b_show * show_wave(np.arange(3650) / 10).mean()
    )
    solution = scipy_integrate.solve_ivp(
        lambda t, m: A @ m + b_back * back_wave(t) + b_show * show_wave(t),
        (0, 365 * years), start, method="BDF", jac=lambda t, m: A,
        t_eval=365 * (years - 1) + DAY, rtol=1e-6, atol=1e-6, max_step=10,
    )  # fmt: skip
    assert solution.success
    m = solution.y
    middle = np.cumsum(widths) - widths / 2 - thickness / 2
    moment = (m * (widths * middle)[:, None]).sum(0) + (
        np.gradient(m, middle, axis=0) * (widths**3 / 12)[:, None]
    ).sum(0)
    surfaces = []
    for i, h, wave in ((CELLS - 1, h_show, show_wave), (0, h_back, back_wave)):
        air = wave(solution.t)
        g = 0 if h == 0 else 1 / (1 / h + widths[i] / 2 / rate)
        surfaces.append(m[i] if h == 0 else air + g * (m[i] - air) / h)
    return (m * widths[:, None]).sum(0) / thickness, *surfaces, 12 * moment / thickness**2


@pytest.mark.parametrize("seed", range(20))
def test_twenty_random_boards_within_a_thousandth_of_the_amplitude(seed: int) -> None:
    """Equal and unequal faces, blocked faces, another air behind: all four answers, to 0.1 % of the air's
    amplitude.
    """
    rng = np.random.default_rng(seed)
    thickness = float(rng.uniform(4, 45))
    rate = float(np.exp(rng.uniform(np.log(1.0), np.log(20.0))))
    h_back, h_show = np.exp(rng.uniform(np.log(0.2), np.log(30.0), 2))
    if seed % 5 == 3:
        h_back = 0.0
    if seed % 5 == 4:
        h_back = h_show
    amplitude, phase = rng.uniform(0.3, 3, (2, 3)), rng.uniform(0, 2 * np.pi, (2, 3))
    if seed % 2:
        amplitude[1], phase[1] = amplitude[0], phase[0]

    def wave(which: int):
        return lambda t: (
            10
            + sum(
                amplitude[which, k]
                / (k + 1)
                * np.cos(2 * np.pi * (k + 1) * np.asarray(t) / 365 + phase[which, k])
                for k in range(3)
            )
        )

    show_wave, back_wave = wave(0), wave(1)
    slab = SlabTransport(np.array(thickness), np.array(rate), np.array(h_show), np.array(h_back), "test")
    year = slab_year(show_wave(DAY), slab, back_wave(DAY))
    mean, show, back, difference = _march_scipy(thickness, rate, h_back, h_show, back_wave, show_wave)
    swing = max(np.ptp(show_wave(DAY)), np.ptp(back_wave(DAY))) / 2
    answers = {
        "mean moisture": (mean, year.mean_mc),
        "show surface": (show, year.show_mc),
        "back surface": (back, year.back_mc),
        "face difference": (difference, year.face_difference_mc),
    }
    if h_back == 0:
        del answers["back surface"]
    for name, both in answers.items():
        room = 1e-3 * swing
        compared(
            f"the year of random boards: {name}",
            "scipy, stiff integrator",
            DERIVED,
            *both,
            "% MC",
            within=room,
        )


LEGS = {  # width, thickness, show face and edges, back
    "square leg, bare": (45, 45, "bare", "bare"),
    "square leg, varnished": (60, 60, "varnish 2", "varnish 2"),
    "rail, bare": (90, 30, "bare", "bare"),
    "rail, one face varnished": (90, 30, "varnish 3", "bare"),
    "post, back blocked": (70, 50, "varnish 1", "blocked"),
    "wide board": (400, 25, "varnish 2", "bare"),
}


@pytest.mark.parametrize("name", LEGS)
def test_the_year_of_a_leg_in_two_directions(name: str) -> None:
    """A leg's section as one sparse system in both directions, solved for each wave of the year by itself: no product
    of slabs in it. Within 0.5 % of the air's swing.
    """
    width, thickness, finish, back = LEGS[name]
    air = Year(
        "invented", (21,) * 12, (25, 25, 30, 35, 45, 55, 60, 60, 50, 40, 30, 25), "invented for a test"
    )
    block = block_year(air, width, thickness, 0.65, finish, back)
    temperature, daily, rh = mean_air(air)
    rate = float(diffusivity(temperature, daily.mean(), 0.65))
    show, other = (
        float(exchange(as_face(face).permeance_ng(), temperature, rh, 0.65)) for face in (finish, back)
    )
    through, *flux_t, wide_t = _lines_matrix(thickness, rate, other, show)
    across, *flux_w, wide_w = _lines_matrix(width, rate, show, show)
    section = scipy_sparse.kronsum(scipy_sparse.csc_matrix(across), scipy_sparse.csc_matrix(through)).tocsc()
    drive = np.kron(sum(flux_t), np.ones(CELLS)) + np.kron(np.ones(CELLS), sum(flux_w))
    weight = np.kron(wide_t / thickness, wide_w / width)
    waves = np.fft.rfft(daily)
    for k in range(1, 13):  # the others are less than a thousandth of the swing
        shifted = 2j * np.pi * k / 365 * scipy_sparse.identity(CELLS**2) - section
        waves[k] *= weight @ scipy_sparse_linalg.spsolve(shifted.tocsc(), drive.astype(complex))
    waves[13:] = 0
    expected = np.fft.irfft(waves, 365)
    compared(
        "the year of legs and rails, both directions",
        "scipy, sparse system of the section",
        DERIVED,
        expected,
        block.mean_mc,
        "% MC",
        within=5e-3 * float(np.ptp(daily)),
    )


def test_half_time_of_a_slab() -> None:
    """Crank: t50 = 0.0492 t²/D with both faces open and no surface resistance; four times that with one."""
    exact = 0.0492 * 20**2 / 2.5 * np.array([1, 4])
    ours = [float(half_time_days(20, 2.5)), float(half_time_days(20, 2.5, faces=1))]
    compared("half-time of a slab", CRANK, RECALLED, exact, ours, "d", share=1e-3)
    marched = march(20, 12.0, [Spell(60, 6, 6, 1e9, 1e9)], 2.5)
    crossing = float(np.interp(9.0, marched.mean_mc[::-1], marched.time_days[::-1]))
    compared("half-time of a slab, marched", CRANK, RECALLED, exact[0], crossing, "d", share=2e-3)


def test_short_time_uptake() -> None:
    """Crank: E = (4/√π) √(D t / L²), good to 1 % of E up to one half."""
    time = np.array([0.1, 0.5, 2.0, 5.0])
    expected = 4 / np.sqrt(np.pi) * np.sqrt(2.5 * time / 20**2)
    ours = uptake(2.5 * time / 10**2, np.inf)
    compared("short-time uptake", CRANK, RECALLED, expected, ours, "", share=0.01)
    marched = march(20, 6.0, [Spell(5, 12, 12, 1e9, 1e9)], 2.5, cells=80)
    ours = (marched.at(time) - 6) / 6
    compared("short-time uptake, marched", CRANK, RECALLED, expected, ours, "", share=0.015)


def test_roots_against_scipy() -> None:
    for biot in (0.01, 1.0, 37.0):
        for n, root in enumerate(biot_roots(np.array(biot))[:6]):
            found = scipy_optimize.brentq(
                lambda b, biot=biot: b * np.sin(b) - biot * np.cos(b), n * np.pi + 1e-9, n * np.pi + np.pi / 2
            )
            compared(
                "roots of β tan β = Bi", "scipy, bracketed root finder", DERIVED, found, root, "", within=1e-9
            )


@pytest.mark.parametrize("exchange", [0.3, 5.0, 1e9])
def test_marching_against_crank_to_a_thousandth_of_the_step(exchange: float) -> None:
    """Crank §4.3.6, surface evaporation."""
    course = march(20, 12.0, [Spell(100, 6, 6, exchange, exchange)], 2.0)
    exact = 12 - 6 * uptake(2.0 * course.time_days / 100, exchange * 10 / 2.0)
    compared(
        "marching with surface evaporation", CRANK, RECALLED, exact, course.mean_mc, "% MC", within=1e-3 * 6
    )


def test_marching_with_moisture_dependence_against_scipy() -> None:
    """D(M) = 2 exp(0.1 (M − 10)), a drop from 18 to 6 %: the marched mean within 0.2 % of the step."""

    def rate(m):
        return 2 * np.exp(0.1 * (m - 10))

    cells = 200
    widths = np.diff(20 * (1 - np.cos(np.pi * np.linspace(0, 1, cells + 1))) / 2)
    gaps = (widths[1:] + widths[:-1]) / 2

    def slope(_, m):
        flow = (rate(m)[1:] + rate(m)[:-1]) / 2 * np.diff(m) / gaps
        faces = [(m[i] - 6) / (1 / 4.0 + widths[i] / 2 / rate(m[i])) for i in (0, -1)]
        return (np.append(flow, -faces[1]) - np.append(faces[0], flow)) / widths

    band = np.array([0.5, 2, 8, 20, 40.0])
    solution = scipy_integrate.solve_ivp(
        slope,
        (0, 40),
        np.full(cells, 18.0),
        method="LSODA",
        lband=1,
        uband=1,
        t_eval=band,
        rtol=1e-7,
        atol=1e-7,
    )
    course = march(20, 18.0, [Spell(40, 6, 6, 4.0, 4.0)], rate)
    expected = (solution.y * widths[:, None]).sum(0) / 20
    source = "scipy, method of lines"
    compared(
        "diffusivity that rises with moisture",
        source,
        DERIVED,
        expected,
        course.at(band),
        "% MC",
        within=2e-3 * 12,
    )
