"""The command line: a function a command, each a thin adapter over a use case."""

from __future__ import annotations

import gc
from collections.abc import Iterator, Sequence
from contextlib import contextmanager

from barkeep.application.own_locale import (
    print_numbers_as_the_user_does,
    print_numbers_for_programs,
)
from barkeep.cli.arguments import parse
from barkeep.cli.endings import run_guarded
from barkeep.cli.output import print_answer

__all__ = ["main"]


def main(argv: Sequence[str] | None = None) -> int:
    """Run one command, or the desktop where none is named; the process's exit status.

    0 done, 1 the input cannot be used, 2 the command cannot be understood,
    3 the desktop cannot start here, 4 done, but the answer could not be printed,
    70 a fault of the program.
    """
    return run_guarded(lambda: _run(argv))


def _run(argv: Sequence[str] | None) -> int:
    with _seldom_collecting():
        arguments = parse(argv)
    if arguments.json:
        print_numbers_for_programs()
    else:
        print_numbers_as_the_user_does()
    if arguments.command is None:
        from barkeep.cli.start_desktop import start  # looks for Qt, which commands never need

        return start(arguments)
    with _seldom_collecting():
        print_answer(arguments.run(arguments), as_json=arguments.json)
    return 0


@contextmanager
def _seldom_collecting() -> Iterator[None]:
    """Look for garbage a hundred times less often: most of what a command loads lives to its end.

    Looking through it again and again would take a tenth of a short command.
    """
    before = gc.get_threshold()
    gc.set_threshold(100 * before[0], *before[1:])
    try:
        yield
    finally:
        gc.set_threshold(*before)
