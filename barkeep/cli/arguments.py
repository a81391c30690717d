"""What may be written after `barkeep`, and which function does it."""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Callable, Collection, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cache
from importlib import import_module
from typing import Any, cast

from barkeep import __version__
from barkeep.cli.output import Answer, only_shown
from barkeep.domain.phrases import capitalised
from barkeep.errors import NotText


@dataclass(frozen=True, slots=True)
class Command:
    """A command's name, what it is for, and what does it: `module:function`, or its `parts`."""

    name: str
    help: str
    does: str = ""
    parts: tuple[Command, ...] = ()


COMMANDS = (
    Command("tonight", "what can be made tonight, and what is missing", "tonight:run"),
    Command("next-bottle", "which bottle to buy next, or which set of them", "buying:next_bottles"),
    Command("pairs", "which two purchases turn drinks together", "carrying:paired"),
    Command("carries", "what each bottle carries, and what is lost without it", "carrying:carries"),
    Command("use-up", "what to drink before it goes off", "carrying:used_up"),
    Command("stand-in", "what may replace an ingredient, and how close", "stand_in:run"),
    Command("add", "put bottles on the shelf, each in your own words", "bottle_import:add"),
    Command("pour", "pour a drink, with stand-ins for the lines you name", "pour:run"),
    Command("bottles", "every bottle with its level", "shelf:bottles"),
    Command("pantry", "what is counted by the piece or weighed", "shelf:pantry"),
    Command("count", "write down a measured level", "counting:count"),
    Command("tare", "write down what an empty or full bottle weighs", "counting:tare"),
    Command("dasher", "say what one dash from a bottle comes to", "counting:dasher"),
    Command("receive", "put a bottle of a known product on the shelf", "receiving:receive"),
    Command("move", "put a bottle at another place along the shelf", "shelf:move"),
    Command(
        "product",
        "the labels the bar knows, and a bottle's dates",
        parts=(
            Command("list", "list the products and how many bottles each has", "product:listed"),
            Command("add", "take in a product without a bottle of it", "product:add"),
            Command("show", "show one with what was paid for it", "prices:show"),
            Command("paid", "note what was paid for a product some day", "prices:note"),
            Command("forget", "take away what was noted as paid", "prices:forget"),
            Command("remove", "take a product away that has no bottles", "product:remove"),
            Command(
                "redate", "correct when a bottle was made, and its use-by day", "product:redate"
            ),
        ),
    ),
    Command(
        "ingredient",
        "the kinds of things there are, and your own",
        parts=(
            Command("add", "add a kind that barkeep does not know", "ingredient:add"),
            Command("change", "change one of the owner's own", "ingredient:change"),
            Command("show", "show one with all that is known of it", "ingredient:show"),
            Command("list", "list all of them, or those below one kind", "ingredient:listed"),
            Command("alias", "give one another name it answers to", "ingredient:name_too"),
            Command("remove", "take one of the owner's own away", "ingredient:remove"),
        ),
    ),
    Command("buy", "what to buy for shoots and pars, and what was bought", "buying:buy"),
    Command("history", "what happened to a bottle", "history:history"),
    Command("evening", "what was poured on a day, and what it cost", "prices:evening"),
    Command(
        "spec",
        "read, add, show, find, analyse, riff on and compare specs",
        parts=(
            Command("read", "read specs and say what is wrong", "spec:read"),
            Command("add", "add the specs of a file, all or none", "spec:add"),
            Command("show", "show one spec as text", "spec:show"),
            Command(
                "list", "list your specs and the classics, or those that a query finds", "spec:find"
            ),
            Command(
                "riff", "copy a spec under a new name, as text to be changed", "spec_analyse:riff"
            ),
            Command(
                "compare",
                "set a riff beside its parent, or beside another spec",
                "spec_analyse:side_by_side",
            ),
            Command(
                "settle",
                "read again what was not understood of a spec that was kept with its questions",
                "spec:settle",
            ),
            Command(
                "analyse",
                "what a drink comes to: volume, strength, sugar, acid, energy, cost",
                "spec_analyse:figures",
            ),
        ),
    ),
    Command(
        "trial",
        "how the versions of a drink tasted, and which one won",
        parts=(
            Command("add", "write a trial of one of your specs down", "trial:add"),
            Command("list", "list the trials, newest first", "trial:listed"),
            Command("won", "say which trial settled on its version", "trial:won"),
            Command("remove", "take a trial away", "trial:remove"),
        ),
    ),
    Command(
        "shoot",
        "plan, check and log what is filmed, and list the shoots",
        parts=(
            Command(
                "list",
                "list the shoots, the latest first, or those that some words find",
                "shoot:listed",
            ),
            Command(
                "show",
                "show one shoot: drinks, what is poured, what to have ready, the log",
                "shoot:show",
            ),
            Command(
                "plan",
                "write a shoot down, change one, repeat it, or take it away",
                "shoot_plan:run",
            ),
            Command("add", "put drinks into the next shoot, or into another", "shoot_plan:add"),
            Command(
                "check",
                "whether every serve can be poured, what runs out, and what would save it",
                "shoot:check",
            ),
            Command(
                "log",
                "pour what a shoot took, with spills and counts, in one step",
                "shoot_log:run",
            ),
        ),
    ),
    Command("batch", "make one serve many, or all there is of one thing", "batch:run"),
    Command("make", "make a syrup, juice, cordial or infusion here", "make:run"),
    Command("import", "take in bottles, specs, or a whole bar, from files", "files:take_in"),
    Command("setting", "list the bar's settings, or change one", "whole_bar:setting"),
    Command("publish", "describe a drink for others, or give it as data", "files:publish"),
    Command("export", "write specs, the bottles, or everything, to a file", "files:export"),
    Command("check", "look the bar over, and save what can be read of it", "check:run"),
    Command("backup", "copy the whole bar, or list the copies there are", "backups:backup"),
    Command("restore", "put a backup in the bar's place", "backups:put_back"),
    Command(
        "removed",
        "what was removed from the bar, and bringing it back",
        parts=(
            Command("list", "list what was removed, the latest first", "removed:listed"),
            Command("bring-back", "bring one removed thing back", "removed:bring_back"),
        ),
    ),
    Command("bench", "how long the answers take, on made-up bars of any size", "bench:run"),
    Command("sample", "write the sample bar to a file", "whole_bar:sample"),
    Command("undo", "take the last change back", "whole_bar:undo"),
    Command("redo", "do again what was undone last", "whole_bar:redo"),
    Command("help", "a page of the help, or what a word means", "help_pages:show"),
    Command(
        "desktop-entry",
        "put barkeep among a desktop's programs, or take it away",
        parts=(
            Command("install", "put it there, for this user alone", "desktop_entry:install"),
            Command("remove", "take all of that away", "desktop_entry:remove"),
            Command("show", "say what is there, and what would be written", "desktop_entry:show"),
        ),
    ),
)


EXAMPLES = """\
Without a command the desktop opens.

examples:
  barkeep --sample tonight
  barkeep --bar home.barkeep --new bottles
  barkeep --bar home.barkeep count "Lamp Room dry gin" 0.4
  barkeep --bar home.barkeep import bottles.csv
"""


class Arguments(argparse.Namespace):
    """What was written, checked. Commands add their own names."""

    command: str | None
    bar: str | None
    sample: bool
    new: bool
    json: bool


class _Parser(argparse.ArgumentParser):
    """Says what cannot be understood without letting it steer the terminal."""

    def _print_message(self, message: str, file: Any = None) -> None:
        super()._print_message(only_shown(message), file)


class _Unwritten(argparse.ArgumentParser):
    """A command that was not written: nothing is asked of it, since its help stands with others.

    To make a parser takes long, and there are many commands.
    """

    def __init__(self, **_how: Any) -> None:
        pass


def _parsers_of(written: Collection[str]) -> type[argparse.ArgumentParser]:
    """What makes the parser of a command, whose name is the last word of its `prog`."""

    def make(**how: Any) -> argparse.ArgumentParser:
        is_written = how["prog"].split()[-1] in written
        return _Parser(**how) if is_written else _Unwritten(**how)

    return cast("type[argparse.ArgumentParser]", make)


def parse(argv: Sequence[str] | None = None) -> Arguments:
    """Read the arguments; leaves with status 2 where they cannot be understood."""
    written = list(sys.argv[1:] if argv is None else argv)
    parser = _Parser(
        prog="barkeep",
        description="Know what is in a home bar, what it can make, what stands in, "
        "and what to buy next.",
        epilog=EXAMPLES,
        formatter_class=argparse.RawDescriptionHelpFormatter,
        parents=[common_options()],
    )
    parser.add_argument("--version", action="version", version=f"barkeep {__version__}")
    make = _parsers_of(written)
    commands = parser.add_subparsers(
        dest="command", metavar="COMMAND", title="commands", parser_class=make
    )
    for each in COMMANDS:
        _tell(commands, each, written)
    begun = Arguments(bar=None, sample=False, new=False, json=False)
    arguments, beyond = parser.parse_known_args(written, begun)
    _take_into_query(arguments, beyond, parser)
    if arguments.bar is not None and arguments.sample:
        parser.error("--bar and --sample name two different bars")
    if arguments.new and arguments.sample:
        parser.error("--new begins a bar that stays, and --sample is thrown away")
    if arguments.bar == "":
        parser.error("--bar names no file: it is empty")
    _refuse_no_text(arguments)
    return arguments


_FILES = frozenset({"bar", "file", "rest", "save_what_can_be", "to"})
"""The arguments that name files, which may be called anything."""


def _refuse_no_text(arguments: Arguments) -> None:
    """Raise `NotText` for bytes that are no letters, but in the names of files."""
    for name, value in vars(arguments).items():
        for each in value if isinstance(value, list) else (value,):
            if isinstance(each, str) and name not in _FILES and not _is_text(each):
                raise NotText(each.encode("utf-8", "surrogateescape").decode("utf-8", "replace"))


def _is_text(written: str) -> bool:
    try:
        written.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True


def _take_into_query(
    arguments: Arguments, beyond: Sequence[str], parser: argparse.ArgumentParser
) -> None:
    """What begins with a minus belongs to a query: *own -egg*. Else nobody has asked for it."""
    if not beyond:
        return
    query: list[str] | None = getattr(arguments, "query", None)
    if query is None or any(each.startswith("--") for each in beyond):
        parser.error(f"unrecognized arguments: {' '.join(beyond)}")
    arguments.query = [*query, *beyond]


def _tell(commands: Any, command: Command, written: Collection[str]) -> None:
    """Add one command. `commands` is argparse's own action, which has no public type."""
    own = commands.add_parser(command.name, help=command.help, parents=[common_options()])
    if command.name not in written:  # the other modules need not be imported
        return
    own.description = f"{capitalised(command.help)}."
    if command.parts:
        parts = own.add_subparsers(
            metavar="ACTION", required=True, title="actions", parser_class=_parsers_of(written)
        )
        for part in command.parts:
            _tell(parts, part, written)
        return
    module, _, function = command.does.partition(":")
    does: Does = getattr(import_module(f"barkeep.cli.{module}"), function)
    for each in does.arguments:
        each(own)
    own.description, own.epilog = does.description or own.description, does.epilog
    if does.epilog or "\n" in (does.description or ""):
        own.formatter_class = argparse.RawDescriptionHelpFormatter
    own.set_defaults(run=does.run)


@cache
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
        help="the bar to use: a file, or postgresql://USER@HOST/DATABASE for a team's "
        "(default: the one in your data folder)",
    )
    which.add_argument("--new", action="store_true", help="begin a new bar where --bar names one")
    which.add_argument(
        "--sample", action="store_true", help="use a throw-away copy of the sample bar"
    )
    common.add_argument("--json", action="store_true", help="print one JSON object")
    return common


Argument = Callable[[Any], object]
"""What tells a parser, or a group of one, about an argument."""


@dataclass(frozen=True, slots=True)
class Does:
    """What does a command, its arguments, and what its help says before and after them."""

    run: Callable[[Arguments], Answer]
    arguments: tuple[Argument, ...]
    description: str | None
    epilog: str | None


def command(
    *arguments: Argument, description: str | None = None, epilog: str | None = None
) -> Callable[[Callable[[Arguments], Answer]], Does]:
    """Say of the function below that it does a command, and what may be written after that."""
    return lambda run: Does(run, arguments, description, epilog)


def argument(*names: str, **how: Any) -> Argument:
    """An argument, as argparse has it."""
    return lambda parser: parser.add_argument(*names, **how)


def flag(name: str, told: str) -> Argument:
    """An option without a value."""
    return argument(name, action="store_true", help=told)


def many(option: str, metavar: str, told: str) -> Argument:
    """An option that may be given several times."""
    told = f"{told}; may be given again"
    return argument(option, action="append", default=[], metavar=metavar, help=told)


def one_of(*arguments: Argument, required: bool = False) -> Argument:
    """Arguments of which one at most may be written."""

    def tell(parser: argparse.ArgumentParser) -> None:
        group = parser.add_mutually_exclusive_group(required=required)
        for each in arguments:
            each(group)

    return tell


def whole_number(text: str) -> int:
    """A whole number from 1, for argparse."""
    if not re.fullmatch(r"0*[1-9][0-9]{0,8}", text):
        raise argparse.ArgumentTypeError(f"“{text}” is not a whole number from 1")
    return int(text)


def day(text: str) -> date:
    """A day as year, month and day, for argparse."""
    try:
        return date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"“{text}” is not a day such as 2026-03-31") from None


DRINK = argument("name", metavar="NAME", help="the drink's name")
BOTTLE = argument("bottle", metavar="BOTTLE", help="its id, or its maker and name")
OPEN_BOTTLE = argument(
    "bottle", metavar="BOTTLE", help="its id, or its maker and name; of several the open one"
)
PRODUCT = argument("product", metavar="PRODUCT", help="its maker and name")
SHOP = argument("--shop", metavar="NAME", help="where it was bought")
USE_BY = argument("--use-by", type=day, metavar="DAY", help="how long it keeps")
WITHIN = argument(
    "--within",
    choices=("exact", "close", "loose"),
    default="close",
    help="the least closeness of a stand-in: exact (1), close (0.8, the default), loose (0.6)",
)
