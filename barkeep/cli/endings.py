"""What becomes of an error: one sentence on stderr and a status, never a traceback."""

from __future__ import annotations

import os
import sys
import traceback
from collections.abc import Callable
from contextlib import closing, suppress

from barkeep.cli.output import only_shown
from barkeep.errors import BarkeepError, CannotUse, NotPrinted, UnusableFile
from barkeep.store.address import without_secrets

CANNOT_BE_USED, NOT_PRINTED, FAULT, INTERRUPTED = 1, 4, 70, 130


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
    except NotPrinted as error:
        _print_no_more()
        complain(str(error))
        return NOT_PRINTED
    except BarkeepError as error:
        complain(str(error))
        return CANNOT_BE_USED
    except BrokenPipeError:
        _print_no_more()  # whoever read our output has enough
        return 0
    except OSError as error:  # of the machine: a folder that cannot be, a name that is too long
        named = str(error.filename or "what the command needs")
        complain(str(CannotUse(named, (error.strerror or str(error)).rstrip("."))))
        return CANNOT_BE_USED
    except KeyboardInterrupt:
        return INTERRUPTED
    except Exception as error:
        complain(_written_down(error))
        return FAULT


def complain(sentence: str) -> None:
    """Say a sentence on stderr; where that cannot be written the status must do."""
    with suppress(OSError):
        print(f"barkeep: {only_shown(sentence)}", file=sys.stderr, flush=True)


def _print_no_more() -> None:
    """Keep the interpreter from trying again at its end."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _written_down(error: Exception) -> str:
    import logging

    from barkeep.application.fault_log import rotating
    from barkeep.application.paths import log_file

    fault = f"this is a fault of the program ({type(error).__name__})"
    try:
        typed = " ".join(map(without_secrets, sys.argv))
        said = f"{typed}\n{''.join(traceback.format_exception(error))}"
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
