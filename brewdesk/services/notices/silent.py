"""The notifier for a desktop without notices: the due list in the window is all there is."""

from __future__ import annotations

from brewdesk.services.notices.port import Notifier


class SilentNotifier(Notifier):
    """Show nothing anywhere; `is_available` says so."""
