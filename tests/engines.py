"""Tests that hold whatever keeps the bar."""

from __future__ import annotations

import pytest

on_both = pytest.mark.parametrize("engine", ["sqlite", "postgresql"], indirect=True)
"""Runs a test that asks for `store` or `location` once over a file and once over a server."""
