"""A gentle chime, by whatever the system plays sounds with. No sound is ever the only sign."""

from __future__ import annotations

import logging
import shutil
import sys
from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QProcess

_log = logging.getLogger(__name__)

CHIME_FILE = "chime.wav"
# Each plays a WAV file named as its last argument and ends by itself.
_LINUX_PLAYERS = (("pw-play",), ("paplay",), ("aplay", "-q"))
_MAC_PLAYERS = (("afplay",),)


class Sound:
    """Plays the chime, if the maker wants sound and the system can play it.

    ``is_on`` is the maker's setting, asked each time; ``folder`` holds the WAV files.
    Nothing is waited for and nothing is raised.
    """

    def __init__(self, folder: Path, *, is_on: Callable[[], bool]) -> None:
        self._file = folder / CHIME_FILE
        self._is_on = is_on
        self._player = _find_player()

    def can_play(self) -> bool:
        """Whether a chime would be heard, the setting aside."""
        return self._file.is_file() and (sys.platform == "win32" or self._player is not None)

    def chime(self) -> None:
        """Play the chime and return at once."""
        if not self._is_on() or not self.can_play():
            return
        if sys.platform == "win32":
            self._chime_on_windows()
        elif self._player is not None:
            program, *options = self._player
            process = QProcess()
            process.setProgram(program)
            process.setArguments([*options, str(self._file)])
            process.setStandardOutputFile(QProcess.nullDevice())
            process.setStandardErrorFile(QProcess.nullDevice())
            process.startDetached()  # if it cannot be started, there is silence

    def _chime_on_windows(self) -> None:
        if sys.platform == "win32":
            import winsound

            flags = winsound.SND_FILENAME | winsound.SND_ASYNC | winsound.SND_NODEFAULT
            try:
                winsound.PlaySound(str(self._file), flags)
            except RuntimeError:  # no sound device
                _log.info("the chime could not be played")


def _find_player() -> tuple[str, ...] | None:
    players = _MAC_PLAYERS if sys.platform == "darwin" else _LINUX_PLAYERS
    for program, *options in players:
        found = shutil.which(program)
        if found is not None:
            return (found, *options)
    return None
