"""The only Qt: the shell, what screens are made of, and then a package a subject."""

from __future__ import annotations

import builtins

import PySide6.QtCore  # noqa: F401 (it does what is said below)

# PySide puts an `__import__` of its own in the place of Python's, for a way to write Qt's names
# that nothing here uses (`__feature__`), and reads the source of each module that is imported
# from then on. That took a tenth of a start. It leaves Python's own beside it.
builtins.__import__ = getattr(builtins, "__orig_import__", builtins.__import__)
