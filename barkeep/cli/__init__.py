"""The command line: a function a command, each a thin adapter over a use case."""

from __future__ import annotations

from collections.abc import Sequence

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
    arguments = parse(argv)
    if arguments.json:
        print_numbers_for_programs()
    else:
        print_numbers_as_the_user_does()
    if arguments.command is None:
        from barkeep.cli.start_desktop import start  # looks for Qt, which commands never need

        return start(arguments)
    print_answer(arguments.run(arguments), as_json=arguments.json)
    return 0
