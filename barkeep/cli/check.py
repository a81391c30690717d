"""`barkeep check`: what is wrong with a bar, and what can be saved of it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import ExitStack
from pathlib import Path

from barkeep.application import paths, sample_copy
from barkeep.application.checking import Checked, Saveable, check, save, take_as_it_is
from barkeep.cli.arguments import Arguments, argument, command
from barkeep.cli.output import Answer
from barkeep.domain.phrases import counted
from barkeep.store.address import Location

WAY_OUT = "barkeep check --save-what-can-be NEW"
TAKE = "barkeep check --accept"


@command(
    argument(
        "--save-what-can-be",
        metavar="NEW",
        help="write a new bar with everything that can be read, and say what cannot",
    ),
    argument(
        "--accept",
        action="store_true",
        help="take a bar as it is that another program has changed, where nothing else is wrong",
    ),
    epilog="Without --accept nothing in the bar is changed, and what is found wrong is an answer "
    "like any other.",
)
def run(arguments: Arguments) -> Answer:
    """Look a bar over, also one that cannot be opened."""
    with ExitStack() as stack:
        location = _location(arguments, stack)
        if arguments.accept:
            return _taken(location)
        if arguments.save_what_can_be is None:
            return _found(check(location))
        new = Path(arguments.save_what_can_be).expanduser().absolute()
        return _saved(new, save(location, new))


def _location(arguments: Arguments, stack: ExitStack) -> Location:
    if arguments.sample:
        return stack.enter_context(sample_copy.throw_away())
    return arguments.bar or paths.default_bar()


def _found(found: Checked) -> Answer:
    def as_json() -> Mapping[str, object]:
        saveable = found.saveable
        return {
            "file": str(found.file),
            "sound": not found.findings,
            "opens": found.opens,
            "acceptable": found.may_be_taken,
            "findings": list(found.findings),
            "saveable": None if saveable is None else _saveable_json(saveable),
        }

    return Answer(as_json, _found_shown(found))


def _found_shown(found: Checked) -> Iterator[str]:
    if not found.findings:
        yield f"Nothing is wrong with {found.file}."
        return
    yield from found.findings
    if found.saveable is not None:
        yield ""
        yield f"Of it {found.saveable.in_words} can be saved: {WAY_OUT}"
    if found.may_be_taken:
        yield f"Where another program was to do that, the bar can be taken as it is: {TAKE}"


def _taken(location: Location) -> Answer:
    taken = take_as_it_is(location)
    said = ["The bar is taken as it is:", *(f"- {each}" for each in taken)]
    if not taken:
        said = ["Nothing but barkeep has changed this bar, so there is nothing to take."]
    return Answer(lambda: {"file": str(location), "accepted": list(taken)}, iter(said))


def _saved(new: Path, saved: Saveable) -> Answer:
    def as_json() -> Mapping[str, object]:
        return {"file": str(new), **_saveable_json(saved)}

    return Answer(as_json, _saved_shown(new, saved))


def _saved_shown(new: Path, saved: Saveable) -> Iterator[str]:
    yield f"{saved.in_words} are saved in {new}, a new bar; what could be undone is not."
    if not saved.lost:
        yield "Everything could be read."
        return
    yield f"{counted(len(saved.lost), 'thing')} could not be read:"
    yield from (f"- {each}" for each in saved.lost)


def _saveable_json(saveable: Saveable) -> Mapping[str, object]:
    return {"saved": dict(saveable.counts), "lost": list(saveable.lost)}
