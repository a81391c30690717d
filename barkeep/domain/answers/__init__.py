"""The questions a bar is asked, one module each; every answer is a function of a snapshot."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Literal

Within = Literal["exact", "close", "loose"]

WITHIN: Mapping[Within, float] = {"exact": 1.0, "close": 0.8, "loose": 0.6}
"""The least closeness each word allows: a choice of barkeep, no published scale exists."""
