"""Bytes of a bar at random gone wrong: right as before, or one sentence; never a fault.

Some of them in the ordinary run; `ENDURANCE=full python -m pytest
tests/store/test_corruption.py -s` tries 500 and prints what became of them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable
from random import Random

import pytest

from barkeep.application.bar import Bar
from barkeep.application.checking import check
from barkeep.errors import UserError
from tests.how_much import EVERYTHING

pytestmark = pytest.mark.endurance

TRIED = 500 if EVERYTHING else 24
PAGE = 4096

Harm = Callable[[bytearray, Random], None]


def a_bit(content: bytearray, random: Random) -> None:
    content[random.randrange(len(content))] ^= 1 << random.randrange(8)


def a_byte(content: bytearray, random: Random) -> None:
    content[random.randrange(len(content))] = random.randrange(256)


def a_stretch(content: bytearray, random: Random) -> None:
    start, length = random.randrange(len(content)), random.randrange(1, 200)
    content[start : start + length] = random.randbytes(len(content[start : start + length]))


def a_sector(content: bytearray, random: Random) -> None:
    start = random.randrange(len(content) // 512) * 512
    content[start : start + 512] = bytes(512)


def a_page(content: bytearray, random: Random) -> None:
    pages = len(content) // PAGE
    one, other = random.randrange(pages) * PAGE, random.randrange(pages) * PAGE
    content[one : one + PAGE] = content[other : other + PAGE]


def the_end(content: bytearray, random: Random) -> None:
    del content[random.randrange(len(content)) :]


HARMS: tuple[Harm, ...] = (a_bit, a_byte, a_stretch, a_sector, a_page, the_end)


def answers(path, knowledge, clock):
    """All that every answer starts from."""
    with Bar.open(path, knowledge, clock, new=False) as bar:
        kept = bar.snapshot
        said = (kept.products, kept.bottles, kept.specs, kept.trials, kept.shoots, kept.settings)
        return (*said, kept.knowledge.stand_ins, bar.undo_label, bar.redo_label)


def test_a_harmed_bar_is_right_or_says_so(_sample_file, tmp_path, knowledge, clock):
    whole = _sample_file.read_bytes()
    path = tmp_path / "harmed.bar"
    path.write_bytes(whole)
    right = answers(path, knowledge, clock)
    became: Counter[str] = Counter()
    for number in range(TRIED):
        random, content = Random(number), bytearray(whole)
        harm = HARMS[number % len(HARMS)]
        harm(content, random)
        path.write_bytes(content)
        try:
            found = "right" if answers(path, knowledge, clock) == right else "other answers"
        except UserError as error:
            assert str(path) in str(error) and "\n" not in str(error)
            found = "refused"
        became[f"{found} ({harm.__name__})"] += 1
        if found == "refused":
            _can_be_checked(path, knowledge)
    assert not [each for each in became if each.startswith("other")], became
    print(f"\n{TRIED} harmed: {dict(sorted(became.items()))}")


def _can_be_checked(path, knowledge):
    """A bar that is refused is looked over without a fault, if it still says that it is one."""
    try:
        assert check(path, knowledge).findings
    except UserError as error:
        assert str(path) in str(error)
