"""The parts of the page Tonight."""

from __future__ import annotations

from barkeep.translation import tr_noop

TONIGHT = (
    ("tonight", tr_noop("What can be made"), tr_noop("Every drink, and what it lacks")),
    (
        "use-up",
        tr_noop("Use up"),
        tr_noop("What goes off soon, and the drinks that use most of it in time"),
    ),
)
"""The parts of the page: key, word, explanation."""
