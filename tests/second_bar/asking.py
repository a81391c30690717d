"""The second bar as its owner meets it: built by commands, asked by commands, on a day."""

from __future__ import annotations

import contextlib
import csv
import io
import json
import math
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from functools import partial
from pathlib import Path
from types import SimpleNamespace
from typing import Any
from unittest.mock import patch

from barkeep.application.bar import Bar
from barkeep.cli import bar_source, main
from barkeep.domain.bottles.bottle import BottleFacts, Label

TODAY = date(2026, 11, 29)
HERE = Path(__file__).parent
Json = dict[str, Any]

NOT_SAFE = (
    *("Honey syrup", "Raspberry syrup", "Lemon juice", "Cold brew"),
    *("Pinder Gate Orange juice, carton", "Pinder Gate Double cream"),
)
"""What of the bar is poured away today, by the titles of the bottles."""


@dataclass
class SecondBar:
    """The bar in a file, and the day on which it is asked."""

    path: Path
    on: date = TODAY
    known: dict[tuple[str, ...], tuple[int, str, str]] = field(default_factory=dict, repr=False)

    # Commands

    def run(self, *argv: str) -> tuple[int, str, str]:
        """A command's status, and what it says and complains."""
        out, err = io.StringIO(), io.StringIO()
        words = ["--bar", str(self.path), *argv]
        with self._day(), contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
            try:
                status = main(words)
            except SystemExit as left:  # a command that is not understood
                status = int(left.code or 0)
        return status, out.getvalue(), err.getvalue()

    def tell(self, *argv: str) -> str:
        """Do a command that changes the bar, and say what it says."""
        status, out, err = self.run(*argv)
        assert status == 0, f"{' '.join(argv)}: {err}"
        self.known.clear()
        return out

    def ask(self, *argv: str) -> str:
        """What a command that changes nothing says."""
        if argv not in self.known:
            self.known[argv] = self.run(*argv)
        status, out, err = self.known[argv]
        assert status == 0, f"{' '.join(argv)}: {err}"
        return out

    def answer(self, *argv: str) -> Json:
        """The JSON of a command that changes nothing."""
        found = json.loads(self.ask(*argv, "--json"))
        assert isinstance(found, dict)
        return found

    def _day(self) -> contextlib.AbstractContextManager[object]:
        clock = _clock_on(self.on)
        dated = SimpleNamespace(open=partial(Bar.open, clock=clock))
        return patch.object(bar_source, "Bar", dated)

    # What stands there

    def bottles(self) -> list[Json]:
        """Everything on the shelf and in the pantry."""
        return [*self.answer("bottles")["bottles"], *self.answer("pantry")["pantry"]]

    def ids(self, title: str) -> list[int]:
        """The numbers of the bottles whose title has these words, as they stand."""
        found = [each["id"] for each in self.bottles() if title in each["product"]]
        assert found, f"there is no {title}"
        return found

    def empty(self, *titles: str) -> None:
        """Count things down to nothing."""
        for title in titles:
            for number in self.ids(title):
                self.tell("count", str(number), "0")

    def without_classics(self) -> None:
        """Leave the book aside, where a question is about own drinks alone: that is quicker."""
        self.tell("setting", "classics", "no")

    # Tonight

    def drinks(self, *argv: str) -> dict[str, Json]:
        """Tonight's answer for each drink by its name."""
        return {each["spec"]: each for each in self.answer("tonight", *argv)["drinks"]}

    def drink(self, name: str, *argv: str) -> Json:
        """Tonight's answer for one drink."""
        found = self.drinks(*argv)
        assert name in found, f"{name} is not in the answer"
        return found[name]

    def shown(self, name: str, *argv: str) -> str:
        """What `tonight` prints of one drink: its line and what is indented below it."""
        return "\n".join(_block(self.ask("tonight", *argv), name))

    def garnish(self, name: str) -> str:
        """All that is said of a drink's garnish tonight, in JSON and in words."""
        drink = self.drink(name)
        lines = [each for each in drink["lines"] if each["as_written"].startswith("Garnish")]
        said = [flat(each) for each in lines]
        said += [flat(each) for key, each in drink.items() if "garnish" in key]
        said.append(about(self.shown(name, "--all", "--full"), "garnish"))
        return "\n".join(said)

    # A shoot

    def shoot(self, serves: Mapping[str, int], on: date = TODAY) -> Shoot:
        """Plan a shoot with so many serves of each drink, and ask all there is to ask of it."""
        argv = ["shoot", "plan", "Second night", "--on", on.isoformat()]
        for name, count in serves.items():
            argv += ["--drink", f"{name}=0+{count}+0"]
        self.tell(*argv)
        return Shoot(self)


@dataclass
class Shoot:
    """The one shoot of a bar, asked for its sheet, its draws and its shopping."""

    bar: SecondBar

    @property
    def steps(self) -> list[str]:
        """The steps of the mise en place."""
        found = self.bar.answer("shoot", "show", "Second night")["mise_en_place"]
        return [each["text"] for each in found]

    @property
    def sheet(self) -> str:
        """The run sheet."""
        return self.bar.ask("shoot", "show", "Second night", "--run-sheet")

    @property
    def check(self) -> Json:
        """Whether it can be poured."""
        return self.bar.answer("shoot", "check", "Second night")

    @property
    def shown_check(self) -> str:
        """The same in words."""
        return self.bar.ask("shoot", "check", "Second night")

    @property
    def items(self) -> list[Json]:
        """What to buy for it."""
        items = self.bar.answer("buy", "--shoot", "Second night", "--no-pars")["items"]
        assert isinstance(items, list)
        return items

    def drawn(self, title: str) -> float:
        """How much is taken of all bottles whose title has these words; pieces are whole."""
        draws = [each for each in self.check["draws"] if title in each["product"]]
        taken = sum(float(each["amount"]) for each in draws)
        pieces = any(each["unit"] == "each" for each in draws)
        return float(math.ceil(taken - 1e-6)) if pieces else taken

    def drawn_from(self, number: int) -> float:
        """How much is taken of one bottle."""
        return sum(float(e["amount"]) for e in self.check["draws"] if e["bottle"] == number)


# Reading answers


def line_of(drink: Json, wanted: str) -> Json:
    """The line of a drink that asks for something, as it is written or by its kind."""
    for line in drink["lines"]:
        if wanted.casefold() in f"{line['wanted']} {line['as_written']}".casefold():
            assert isinstance(line, dict)
            return line
    raise AssertionError(f"{drink['spec']} has no line of {wanted}")


def is_exact(line: Json) -> bool:
    """Whether a line is met by just what it asks for."""
    return float(line["closeness"]) > 1.0 - 1e-9


@dataclass(frozen=True)
class Next:
    """What follows the bottle that is shown: all that is said of it, and its serves."""

    said: str
    serves: int | None
    stand_in: bool


def then(drink: Json) -> list[Next]:
    """What is poured after the bottles shown, in order."""
    return [
        Next(flat(each), each.get("serves"), _is_stand_in(each)) for each in drink.get("then", [])
    ]


def _is_stand_in(following: Any) -> bool:
    if isinstance(following, Mapping):
        for key, each in following.items():
            if "stand_in" in key and each:
                return True
            if key == "closeness" and float(each) < 1.0 - 1e-9:
                return True
            if _is_stand_in(each):
                return True
    if isinstance(following, list):
        return any(map(_is_stand_in, following))
    return isinstance(following, str) and "stand-in" in following


def flat(answer: object) -> str:
    """Everything an answer says, keys and values, a line each."""
    return "\n".join(_flat(answer))


def _flat(answer: object) -> Iterator[str]:
    if isinstance(answer, Mapping):
        for key, each in answer.items():
            yield f"{key}: {' '.join(_flat(each))}".replace("_", " ")
    elif isinstance(answer, list):
        for each in answer:
            yield from _flat(each)
    else:
        yield str(answer)


def about(said: str | Iterable[str], *words: str) -> str:
    """The lines or sentences that have all of these words, one after another."""
    lines = said.splitlines() if isinstance(said, str) else list(said)
    found = [each for each in lines if all(word.casefold() in each.casefold() for word in words)]
    return "\n".join(found)


def has(said: str, pattern: str) -> bool:
    """Whether a pattern stands in what is said, whatever the case."""
    return re.search(pattern, said, re.IGNORECASE | re.DOTALL) is not None


def fruit_counts(said: str, fruit: str) -> list[int]:
    """Every number of whole fruit that is said: *2 lemons*, *2 × lemon*."""
    pieces = rf"\b(\d+)\s*(?:×|x)?\s*(?:whole |fresh )?{fruit}s?\b(?!\s+(?:juice|peel|wedge|twist))"
    return [int(each) for each in re.findall(pieces, said, re.IGNORECASE)]


def names_listed(shown: str) -> list[str]:
    """The drinks of a printed list in their order."""
    return re.findall(r"^  (\S[^:\n]*): ", shown, re.MULTILINE)


def _block(shown: str, name: str) -> Iterator[str]:
    inside = False
    for line in shown.splitlines():
        if line.startswith(f"  {name}:"):
            inside = True
            yield line
        elif inside and line.startswith("   "):
            yield line
        else:
            inside = False


# Building it


def build(path: Path) -> SecondBar:
    """A new bar with all of it: what was bought from a list, what was made here, the own specs."""
    bar = SecondBar(path)
    bar.tell("--new", "import", str(HERE / "bottles.csv"), "--again")
    with Bar.open(path, clock=_clock_on(TODAY)) as opened:
        for row in _rows("made_here.csv"):
            size, unit = row["size"].split()
            label = Label(row["product"], "", row["ingredient"], float(size), unit, house_made=True)
            facts = BottleFacts(made=date.fromisoformat(row["made"]))
            opened.inventory.receive_new(label, float(row["left"].split()[0]), facts)
    bar.tell("spec", "add", str(HERE / "specs.txt"))
    return bar


def _rows(name: str) -> list[dict[str, str]]:
    with (HERE / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def _clock_on(day: date) -> Any:
    noon = datetime.combine(day, time(12))
    return lambda: noon
