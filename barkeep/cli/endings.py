"""What becomes of an error: one sentence on stderr and a status, never a traceback."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Callable
from contextlib import closing

from barkeep.cli.output import only_shown
from barkeep.errors import BarkeepError, UnusableFile

CANNOT_BE_USED, FAULT, INTERRUPTED = 1, 70, 130


def run_guarded(run: Callable[[], int]) -> int:
    """Run a command and turn what it raises into a status."""
    _print_what_the_terminal_can()
    try:
        status = run()
        if sys.stdout is not None:  # None where the program has no console
            sys.stdout.flush()  # a closed pipe shows itself here, not at the very end
        return status
    except UnusableFile as error:
        for problem in error.problems:
            complain(f"{error.file}, {problem}")
        if error.way_out:
            complain(f"{error.file}: {error.way_out.rstrip('.')}.")
        return CANNOT_BE_USED
    except BarkeepError as error:
        complain(str(error))
        return CANNOT_BE_USED
    except BrokenPipeError:
        # Whoever read our output has enough; keep the interpreter from complaining at its end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return INTERRUPTED
    except Exception as error:
        complain(_written_down(error))
        return FAULT


def complain(sentence: str) -> None:
    """Say a sentence on stderr."""
    print(f"barkeep: {only_shown(sentence)}", file=sys.stderr)


def _written_down(error: Exception) -> str:
    import logging

    from barkeep.application.fault_log import rotating
    from barkeep.application.paths import log_file

    fault = f"this is a fault of the program ({type(error).__name__})"
    try:
        said = f"{' '.join(sys.argv)}\n{''.join(traceback.format_exception(error))}"
        with closing(rotating(log_file())) as log:
            log.handle(logging.makeLogRecord({"msg": "%s", "args": (said,)}))
    except OSError:
        return f"{fault}: {error}."
    return f"{fault}; what happened is written in {log_file()}."


def _print_what_the_terminal_can() -> None:
    """A terminal without ½ or “ shows a question mark; the command still runs."""
    for stream in (sys.stdout, sys.stderr):
        reconfigure = getattr(stream, "reconfigure", None)
        if reconfigure is not None:
            reconfigure(errors="replace")
