"""The published tables in `data/`, kept as they were copied, and the units they use."""

from __future__ import annotations

import csv
import re
from dataclasses import dataclass
from pathlib import Path

DATA = Path(__file__).with_name("data")


US_FL_OZ_ML, US_CUP_ML, US_GAL_ML = 29.5735295625, 236.5882365, 3785.411784
LB_G = 453.59237
"""Exact: NIST Handbook 44, Appendix C."""


def rows(name: str) -> list[dict[str, str]]:
    """The rows of one table by its columns' names."""
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


@dataclass(frozen=True)
class Worked:
    """One worked example, as printed."""

    id: str
    source: str
    how_sure: str
    text: str

    @property
    def published(self) -> bool:
        """Whether the row was printed by its source, and not worked out beside it."""
        return self.how_sure.startswith("verified") and "numerically" not in self.how_sure

    def figure(self, printed: str) -> float:
        """A figure of the row, which must really be printed in it."""
        whole = rf"(?<![\d.,]){re.escape(printed)}(?!\d|[.,]\d)"
        assert re.search(whole, self.text), f"{self.id} does not print {printed}"
        return float(printed.replace(",", ""))


def worked_examples() -> dict[str, Worked]:
    """Every row of `worked_examples.csv` by its id."""
    return {
        row["id"]: Worked(
            row["id"],
            row["source"],
            row["confidence_and_address"],
            " | ".join((row["input"], row["step"], row["output"], row["note"])),
        )
        for row in rows("worked_examples")
    }


def fahrenheit(degrees: float) -> float:
    """In °C."""
    return (degrees - 32.0) / 1.8
