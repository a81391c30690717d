"""What may be written after `barkeep`, and which module answers it."""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from importlib import import_module

from barkeep import __version__
from barkeep.domain.phrases import capitalised


@dataclass(frozen=True, slots=True)
class Command:
    """A command's name, what tells it its arguments (`module:function`), and what it is for."""

    name: str
    configure: str
    help: str


COMMANDS = (
    Command("tonight", "tonight:configure", "what can be made tonight, and what is missing"),
    Command("next-bottle", "buying:configure_next_bottle", "which one bottle to buy next"),
    Command("stand-in", "stand_in:configure", "what may replace an ingredient, and how close"),
    Command("bottles", "shelf:configure_bottles", "every bottle with its level"),
    Command("pantry", "shelf:configure_pantry", "what is counted by the piece or weighed"),
    Command("count", "counting:configure_count", "write down a measured level"),
    Command("tare", "counting:configure_tare", "write down what an empty or full bottle weighs"),
    Command("dasher", "counting:configure_dasher", "say what one dash from a bottle comes to"),
    Command("receive", "shelf:configure_receive", "put a bottle of a known product on the shelf"),
    Command("buy", "buying:configure_buy", "what to buy for shoots and pars, and what was bought"),
    Command("history", "shelf:configure_history", "what happened to a bottle"),
    Command("spec", "spec:configure", "read, add, show, find, analyse, riff on and compare specs"),
    Command("trial", "trial:configure", "how the versions of a drink tasted, and which one won"),
    Command("shoot", "shoot:configure", "plan, check and log what is filmed, and list the shoots"),
    Command("batch", "batch:configure", "make one serve many, or all there is of one thing"),
    Command("make", "make:configure", "make a syrup, juice, cordial or infusion here"),
    Command("import", "files:configure_import", "take in bottles from CSV, specs from documents"),
    Command("setting", "setting:configure", "list the bar's settings, or change one"),
    Command("publish", "publish:configure", "describe a drink for others, or give it as data"),
    Command("export", "files:configure_export", "write specs to a file"),
    Command("sample", "files:configure_sample", "write the sample bar to a file"),
    Command("undo", "last_change:configure_undo", "take the last change back"),
    Command("redo", "last_change:configure_redo", "do again what was undone last"),
)


EXAMPLES = """\
Without a command the desktop opens.

examples:
  barkeep --sample tonight
  barkeep --bar home.barkeep count "Lamp Room dry gin" 0.4
  barkeep --bar home.barkeep import bottles.csv
"""


class Arguments(argparse.Namespace):
    """What was written, checked. Commands add their own names."""

    command: str | None
    bar: str | None
    sample: bool
    json: bool


def parse(argv: Sequence[str] | None = None) -> Arguments:
    """Read the arguments; leaves with status 2 where they cannot be understood."""
    written = list(sys.argv[1:] if argv is None else argv)
    parser = argparse.ArgumentParser(
        prog="barkeep",
        description="Know what is in a home bar, what it can make, what stands in, "
        "and what to buy next.",
        epilog=EXAMPLES,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        parents=[common_options()],
    )
    parser.add_argument("--version", action="version", version=f"barkeep {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", title="commands")
    for command in COMMANDS:
        described = f"{capitalised(command.help)}."
        own = commands.add_parser(
            command.name, help=command.help, description=described, parents=[common_options()]
        )
        if command.name in written:  # the other modules need not be imported
            module, _, configure = command.configure.partition(":")
            getattr(import_module(f"barkeep.cli.{module}"), configure)(own)
    arguments = parser.parse_args(written, Arguments(bar=None, sample=False, json=False))
    if arguments.bar is not None and arguments.sample:
        parser.error("--bar and --sample name two different bars")
    return arguments


def whole_number(text: str) -> int:
    """A whole number from 1, for argparse."""
    if not re.fullmatch(r"0*[1-9][0-9]{0,8}", text):
        raise argparse.ArgumentTypeError(f"“{text}” is not a whole number from 1")
    return int(text)


def add_within(parser: argparse.ArgumentParser) -> None:
    """The least closeness a stand-in may have."""
    parser.add_argument(
        "--within",
        choices=("exact", "close", "loose"),
        default="close",
        help="the least closeness of a stand-in: exact (1), close (0.8, the default), loose (0.6)",
    )


def common_options() -> argparse.ArgumentParser:
    """The options that may stand before or after the command.

    Left out they set nothing, so that the command's parser does not undo what
    was written before it.
    """
    common = argparse.ArgumentParser(add_help=False, argument_default=argparse.SUPPRESS)
    which = common.add_argument_group("which bar")
    which.add_argument(
        "--bar",
        metavar="FILE-or-URL",
        help="the bar to use (default: the one in your data folder); a new file is a new bar",
    )
    which.add_argument(
        "--sample", action="store_true", help="use a throw-away copy of the sample bar"
    )
    common.add_argument("--json", action="store_true", help="print one JSON object")
    return common
