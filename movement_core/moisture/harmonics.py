"""The exact answer of boards to a year of air, harmonic by harmonic.

M″ = (iω/D) M through the thickness, with a flux proportional to surface minus air at each face: two
exponentials, and a 2 × 2 system for them, solved by hand for every board and harmonic at once.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
Complex = NDArray[np.complex128]


def solve_harmonics(fields: list[Array], show_air: Array, back_air: Array) -> tuple[Array, Array]:
    """Mean, show, back, face difference of N boards on each day, (4, N, days), and (N,) lag of the slowest wave.

    ``fields`` : four (N, 1) transport figures. ``show_air``, ``back_air`` : (days,) air that repeats after them, 365
    for a year of rooms.
    """
    thickness, rate, h_show, h_back = fields
    show_wave, back_wave = np.fft.rfft(show_air), np.fft.rfft(back_air)
    omega = 2 * np.pi / show_air.size * np.arange(1, show_wave.size)
    # x = q t with q = √(iω/D) = (1 + i) √(ω/2D); real functions of its real part are much cheaper than
    # complex ones
    depth = np.sqrt(omega / 2) * (thickness / np.sqrt(rate))
    fade = np.exp(-depth)
    decay = np.empty(depth.shape, dtype=np.complex128)
    decay.real, decay.imag = fade * np.cos(depth), -fade * np.sin(depth)
    inverse: Complex = np.asarray((0.5 - 0.5j) / depth, dtype=np.complex128)  # 1/x
    flux = np.sqrt(rate) * np.sqrt(1j * omega)  # D q
    # M(z) = A exp(−q z) + B exp(−q (t − z)), z from the back face; a 2 × 2 system, solved by hand.
    own_back, own_show = h_back + flux, h_show + flux
    across_back, across_show = decay * (h_back - flux), decay * (h_show - flux)
    scale = 1 / (own_back * own_show - across_back * across_show)
    spread: Complex = np.asarray((1 - decay) * inverse, dtype=np.complex128)

    def profile(drive_back: Array | Complex, drive_show: Array | Complex) -> tuple[Complex, Complex]:
        A = (drive_back * own_show - drive_show * across_back) * scale
        B = (drive_show * own_back - drive_back * across_show) * scale
        return A, B

    if back_air is show_air:
        A, B = profile(h_back, h_show)
        yearly = ((A + B) * spread)[:, 0]
        A, B = A * show_wave[1:], B * show_wave[1:]
    else:
        A, B = profile(h_back[:, :1], h_show[:, :1])
        yearly = ((A + B) * spread)[:, 0]
        A, B = profile(h_back * back_wave[1:], h_show * show_wave[1:])
    back_level, show_level = _steady(thickness, rate, h_back, h_show, back_air.mean(), show_air.mean())
    waves = np.empty((4, thickness.shape[0], show_wave.size), dtype=np.complex128)
    waves[0, :, 1:] = (A + B) * spread
    waves[1, :, 1:] = A * decay + B
    waves[2, :, 1:] = A + B * decay
    waves[3, :, 1:] = _twelve_moments(depth, decay, inverse, spread) * (A - B)
    levels = ((show_level + back_level) / 2, show_level, back_level, show_level - back_level)
    waves[:, :, 0] = [level[:, 0] * show_air.size for level in levels]
    return np.fft.irfft(waves, show_air.size, axis=-1), -np.angle(yearly) / omega[0]


def _twelve_moments(depth: Array, decay: Complex, inverse: Complex, spread: Complex) -> Complex:
    """12 ∫₀ᵗ exp(−q z)(z − t/2) dz / t², x = q t; by its series where the closed form would cancel."""
    closed = 12 * (spread - decay) * inverse - 6 * spread
    if depth.min() > 0.02:
        return np.asarray(closed)
    x = (1 + 1j) * depth
    series = x * (-1 + x * (1 / 2 - x * (3 / 20 - x / 30)))
    return np.asarray(np.where(depth < 0.02, series, closed))


def _steady(
    thickness: Array, rate: Array, h_back: Array, h_show: Array, back_air: float, show_air: float
) -> tuple[Array, Array]:
    """Moisture at the back and show face when nothing changes any more, each (…, 1)."""
    with np.errstate(divide="ignore"):
        film_back, film_show = 1 / h_back, 1 / h_show  # inf for a blocked face: no steady flow
    flow = (show_air - back_air) / (film_back + film_show + thickness / rate)
    with np.errstate(invalid="ignore"):
        back = np.where(h_back > 0, back_air + flow * film_back, show_air)
        show = np.where(h_show > 0, show_air - flow * film_show, back_air)
    return back, show
