"""The parts of the page Tonight."""

from __future__ import annotations

TONIGHT = (
    ("tonight", "What can be made", "Every drink, and what it lacks"),
    ("use-up", "Use up", "What goes off soon, and the drinks that use most of it in time"),
)
"""The parts of the page: key, word, explanation."""
