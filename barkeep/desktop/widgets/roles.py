"""The item roles by which a model hands a delegate more than words."""

from __future__ import annotations

from PySide6.QtCore import Qt

LEVEL_ROLE = Qt.ItemDataRole.UserRole + 1
"""A `LevelReading`; `DisplayRole` says the same in words."""
VERDICT_ROLE = Qt.ItemDataRole.UserRole + 2
"""A verdict: *ready*, *stand_in*, *one_short* or *short*."""
SUBTITLE_ROLE = Qt.ItemDataRole.UserRole + 3
"""A second, quieter line under the words."""
VALUE_ROLE = Qt.ItemDataRole.UserRole + 4
"""The domain value the row stands for."""
SORT_ROLE = Qt.ItemDataRole.UserRole + 5
"""What the column sorts by."""
ICONS_ROLE = Qt.ItemDataRole.UserRole + 6
"""A tuple of picture names drawn after the words: *house-made*, *allergen* …"""
