"""A print queue of our own: cupsd in a throw-away folder, printers that keep what it is sent.

Nothing of the machine's own printing is touched: the daemon listens on a socket in its folder
alone, and only programs that are given `PrintQueue.variables` find it. The printers
take PDF as most do today, so a job goes the whole way: the program's print dialog, the queue,
CUPS's filter for pages (`pdftopdf`, which scales and turns pages if it is told to), the device.
"""

from __future__ import annotations

import contextlib
import os
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest

QUEUE = "invented_printer"
NO_ROLLS = "invented_office_printer"  # takes its two papers and no other
_ROOT = Path(__file__).parents[2]
_SOCKET = "socket"
_LOOKS, _MOMENT_S = 400, 0.05  # twenty seconds in all
_DAEMON = """Listen {folder}/socket
LogLevel debug
MaxLogSize 0
Browsing Off
WebInterface No
DefaultAuthType None
<Location />
  Order allow,deny
  Allow all
</Location>
<Policy default>
  JobPrivateAccess all
  JobPrivateValues none
  SubscriptionPrivateAccess all
  SubscriptionPrivateValues none
  <Limit All>
    Order allow,deny
    Allow all
  </Limit>
</Policy>
"""
_FILES = """FileDevice Yes
ServerRoot {folder}
RequestRoot {folder}/spool
CacheDir {folder}/cache
StateDir {folder}/run
TempDir {folder}/spool
ErrorLog {folder}/errors
AccessLog {folder}/accesses
PageLog {folder}/pages
"""
# An invented printer with the two common papers, paper of any length, and the margin that most
# have. Points are 1/72 inch.
_PRINTER = """*PPD-Adobe: "4.3"
*FormatVersion: "4.3"
*FileVersion: "1.0"
*LanguageVersion: English
*LanguageEncoding: ISOLatin1
*PCFileName: "INVENTED.PPD"
*Manufacturer: "Invented"
*Product: "(Invented PDF printer)"
*ModelName: "Invented PDF printer"
*ShortNickName: "Invented PDF printer"
*NickName: "Invented PDF printer"
*PSVersion: "(3010.000) 0"
*LanguageLevel: "3"
*ColorDevice: True
*DefaultColorSpace: RGB
*cupsVersion: 2.4
*cupsFilter: "application/vnd.cups-pdf 0 -"
*OpenUI *PageSize/Media Size: PickOne
*OrderDependency: 10 AnySetup *PageSize
*DefaultPageSize: A4
*PageSize A4/A4: "<</PageSize[595 842]>>setpagedevice"
*PageSize Letter/US Letter: "<</PageSize[612 792]>>setpagedevice"
*CloseUI: *PageSize
*OpenUI *PageRegion/Media Size: PickOne
*OrderDependency: 10 AnySetup *PageRegion
*DefaultPageRegion: A4
*PageRegion A4/A4: "<</PageSize[595 842]>>setpagedevice"
*PageRegion Letter/US Letter: "<</PageSize[612 792]>>setpagedevice"
*CloseUI: *PageRegion
*DefaultImageableArea: A4
*ImageableArea A4/A4: "12 12 583 830"
*ImageableArea Letter/US Letter: "12 12 600 780"
*DefaultPaperDimension: A4
*PaperDimension A4/A4: "595 842"
*PaperDimension Letter/US Letter: "612 792"
{any_length}*DefaultFont: Courier
"""
_ANY_LENGTH = """*VariablePaperSize: True
*HWMargins: 12 12 12 12
*CustomPageSize True: "pop pop pop <</PageSize[5 -2 roll]>>setpagedevice"
*ParamCustomPageSize Width: 1 points 36 1300
*ParamCustomPageSize Height: 2 points 36 3400
*ParamCustomPageSize WidthOffset: 3 points 0 0
*ParamCustomPageSize HeightOffset: 4 points 0 0
*ParamCustomPageSize Orientation: 5 int 0 3
"""


def system_program(name: str) -> str:
    """Return where a program of the system is; those for keepers of printers are off PATH."""
    path = os.pathsep.join((os.environ.get("PATH", ""), "/usr/sbin", "/sbin"))
    found = shutil.which(name, path=path)
    if found is None:
        pytest.fail(f"{name} is missing: install CUPS (cups-daemon, cups-client, cups-filters)")
    return found


@dataclass(frozen=True)
class PrintQueue:
    """A running queue; ``landed`` is the file that the newest job arrived in."""

    folder: Path
    landed: Path
    daemon: subprocess.Popen[bytes]

    @property
    def variables(self) -> dict[str, str]:
        """What a program's environment must hold to find the queue, and ours its source."""
        source = os.pathsep.join((str(_ROOT), str(_ROOT / "shared")))
        return {
            **os.environ,
            "CUPS_SERVER": str(self.folder / _SOCKET),
            "PYTHONPATH": source,
        }

    def wait_until_printed(self) -> Path:
        """Wait until no job is left, and return the file that arrived."""
        lpstat = [system_program("lpstat"), "-W", "not-completed", "-o"]
        for _look in range(_LOOKS):
            waiting = self.run(lpstat)
            if waiting.returncode == 0 and not waiting.stdout.strip():
                break
            self.pass_a_moment()
        else:
            pytest.fail(f"the job was not printed: {waiting.stdout}\n{self.errors()}")
        if not self.landed.exists():
            pytest.fail(f"nothing arrived at the printer\n{self.errors()}")
        return self.landed

    def run(self, command: list[str]) -> subprocess.CompletedProcess[str]:
        """Run a program that finds the queue."""
        return subprocess.run(
            command,
            env=self.variables,
            cwd=_ROOT,
            capture_output=True,
            text=True,
            check=False,
        )

    def pass_a_moment(self) -> None:
        """Give the daemon time to go on; fail if it has ended instead."""
        with contextlib.suppress(subprocess.TimeoutExpired):
            self.daemon.wait(_MOMENT_S)
            pytest.fail(f"cupsd ended by itself\n{self.errors()}")

    def errors(self) -> str:
        """Return the end of what the daemon said."""
        path = self.folder / "errors"
        return path.read_text(errors="replace")[-4000:] if path.exists() else "no log"


@contextlib.contextmanager
def print_queue() -> Iterator[PrintQueue]:
    """Start a daemon with two printers; it is ended, and its folder removed, with the block."""
    # Not below pytest's own folder: that is closed to the account under which filters run, and
    # the path of a socket must be short.
    folder = Path(tempfile.mkdtemp(prefix="bd-cups-"))
    folder.chmod(0o755)
    for name in ("spool", "cache", "run"):
        (folder / name).mkdir()
    (folder / "daemon.conf").write_text(_DAEMON.format(folder=folder))
    (folder / "files.conf").write_text(_FILES.format(folder=folder))
    command = [system_program("cupsd"), "-f", "-c", str(folder / "daemon.conf")]
    daemon = subprocess.Popen(
        [*command, "-s", str(folder / "files.conf")],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    queue = PrintQueue(folder, folder / "landed.pdf", daemon)
    try:
        _add_printer(queue, QUEUE, _ANY_LENGTH)
        _add_printer(queue, NO_ROLLS, "")
        yield queue
    finally:
        daemon.terminate()
        daemon.wait(20)
        shutil.rmtree(folder, ignore_errors=True)


def _add_printer(queue: PrintQueue, name: str, any_length: str) -> None:
    """Name a printer to the daemon as soon as that answers."""
    description = queue.folder / f"{name}.ppd"
    description.write_text(_PRINTER.replace("{any_length}", any_length))
    lpadmin = [system_program("lpadmin"), "-p", name, "-E", "-v", queue.landed.as_uri()]
    lpadmin += ["-P", str(description)]
    said = "its socket was not there"
    for _look in range(_LOOKS):
        if (queue.folder / _SOCKET).exists():
            done = queue.run(lpadmin)
            if done.returncode == 0:
                return
            said = done.stderr
        queue.pass_a_moment()
    pytest.fail(f"cupsd took no printer: {said}\n{queue.errors()}")
