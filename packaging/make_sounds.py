"""Make the chime: two soft bell tones, a fifth apart, that fade away.

Run it from anywhere: ``python packaging/make_sounds.py [folder]``. The same file comes
out each time, so that it can be checked against the one in ``resources/sounds``.
"""

from __future__ import annotations

import math
import sys
import wave
from array import array
from pathlib import Path

RATE_HZ = 22_050
LENGTH_S = 1.6
PEAK = 0.35  # of full scale: gentle beside anything else the loudspeaker plays
ATTACK_S = 0.012  # without it the tone begins with a click
# Begin [s], pitch [Hz], strength. 587.33 Hz is D5, 880 Hz the A above, in equal temperament.
TONES = ((0.0, 587.33, 0.8), (0.22, 880.0, 1.0))
# Overtones of a soft bell: ratio of the pitch, strength, time to fade to 1/e [s].
PARTIALS = ((1.0, 1.0, 0.45), (2.0, 0.25, 0.25), (3.0, 0.08, 0.12))


def sample(at_s: float) -> float:
    """Return the air's swing at a moment, before it is scaled."""
    total = 0.0
    for begin_s, pitch_hz, strength in TONES:
        since_s = at_s - begin_s
        if since_s < 0:
            continue
        rise = min(1.0, since_s / ATTACK_S)
        for ratio, share, fade_s in PARTIALS:
            swing = math.sin(2 * math.pi * pitch_hz * ratio * since_s)
            total += rise * strength * share * math.exp(-since_s / fade_s) * swing
    return total


def chime() -> array[int]:
    """Return the chime as 16-bit samples, ending in silence."""
    count = round(RATE_HZ * LENGTH_S)
    swings = [sample(i / RATE_HZ) * (1 - (i / count) ** 4) for i in range(count)]
    loudest = max(abs(swing) for swing in swings)
    return array("h", (round(swing / loudest * PEAK * 32_767) for swing in swings))


def write(path: Path) -> None:
    """Write the chime as a mono WAV file."""
    samples = chime()
    if sys.byteorder == "big":
        samples.byteswap()
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(RATE_HZ)
        file.writeframes(samples.tobytes())


if __name__ == "__main__":
    here = Path(__file__).resolve().parent.parent / "resources" / "sounds"
    write((Path(sys.argv[1]) if len(sys.argv) > 1 else here) / "chime.wav")
