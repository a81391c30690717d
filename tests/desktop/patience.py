"""How long a test waits for what must come, before it fails."""

from __future__ import annotations

WAIT_S = 120
"""Far beyond what a busy machine takes: only what never comes shall fail a test."""

WAIT_MS = WAIT_S * 1000
