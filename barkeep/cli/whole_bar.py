"""`barkeep setting`, `sample`, `undo` and `redo`: what concerns a bar as a whole."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path

from barkeep.application.bar import Bar
from barkeep.application.own_locale import own_region
from barkeep.application.settings import (
    OUNCE_WORDS,
    SETTINGS,
    kept_in_words,
    setting_named,
    style_word,
)
from barkeep.cli.arguments import Arguments, argument, command
from barkeep.cli.bar_source import in_bar, opened_bar
from barkeep.cli.output import Answer, table
from barkeep.domain.bar.snapshot import Snapshot
from barkeep.errors import UserError


@command(
    argument(
        "key",
        metavar="KEY",
        nargs="?",
        help=f"{', '.join(each.key for each in SETTINGS)} (default: list them all)",
    ),
    argument(
        "value",
        metavar="VALUE",
        nargs="*",
        help="what it shall be: us or imperial for ounce; ml for dash; as-written, oz, ml, cl "
        "or parts for shown-in; yes or no for classics; “Balance 1 to 5, Flavour 1 to 10” for "
        "scales; “small ladle=1.5 oz” for measure, “small ladle=” to take "
        "it away; “rum=Label of a bottle” for house; "
        "“sweet vermouth=60”, in days, for keeps; a folder, or beside, for backups "
        "(left out: say what it is)",
    ),
)
def setting(arguments: Arguments) -> Answer:
    """List the settings, say one, or change it."""
    words = None if arguments.key is None else setting_named(arguments.key)
    with opened_bar(arguments) as bar:
        before, kept = bar.snapshot.settings, ""
        if words is not None and arguments.value:
            wanted = words.read(bar.snapshot, " ".join(arguments.value))
            kept = kept_in_words(bar.snapshot, wanted)
            bar.settings.change(wanted, before)
        snapshot, settings = bar.snapshot, bar.snapshot.settings
    if words is None:
        shown = table(("setting", "value"), ((each.key, each.say(snapshot)) for each in SETTINGS))
    elif arguments.value:
        now = "is now" if settings != before else "was already"
        shown = f"{words.key} {now} {words.say(snapshot)}.{f' {kept}.' if kept else ''}"
    else:
        shown = f"{words.key} is {words.say(snapshot)}. {words.hint()}"
    return Answer(lambda: {"settings": _json(snapshot)}, shown)


def _json(snapshot: Snapshot) -> dict[str, object]:
    settings, tree = snapshot.settings, snapshot.knowledge.tree
    titles = {each.id: each.title for each in snapshot.products}
    return {
        "name": settings.name,
        "currency": settings.currency,
        "ounce": OUNCE_WORDS[settings.ounce],
        "dash_ml": settings.dash_ml,
        "shown_in": style_word(settings.shown_in),
        "country": settings.country,
        "region": settings.region or own_region() or "none",
        "classics": settings.classics,
        "scales": [asdict(scale) for scale in settings.scales],
        "measures": [
            {**asdict(measure), "volume_ml": measure.volume_ml} for measure in settings.measures
        ],
        "house": [
            {"ingredient": tree.name(each.kind), "product": titles.get(each.product)}
            for each in settings.house
            if each.kind in tree
        ],
        "keeps": [
            {"ingredient": tree.name(each.kind), "days": each.days}
            for each in settings.keeps
            if each.kind in tree
        ],
        "backups": settings.backups or None,
    }


@command(argument("file", metavar="FILE", help="a new file; none is ever written over"))
def sample(arguments: Arguments) -> Answer:
    """Build the sample bar."""
    from barkeep.application.sample import build  # what builds it is of no use to other bars

    path = Path(arguments.file).expanduser().absolute()
    build(path)
    said = f"The sample bar is in {path}. Everything in it is invented."
    return Answer(lambda: {"file": str(path)}, said)


class NotNext(UserError):
    """A step that was named to undo or redo (`what`) while another is next, or none."""

    what: str
    named: str
    next_one: str

    def __str__(self) -> str:
        now = f"{self.what} now means “{self.next_one}”" if self.next_one else "there is nothing"
        return f"“{self.named}” is not the next step to {self.what}, so nothing was changed: {now}."


STEP = argument(
    "step",
    metavar="STEP",
    nargs="*",
    help="what it is called, as it was said before; where another is next by now nothing is done",
)


def _refuse_another(what: str, arguments: Arguments, label: str | None) -> None:
    named = " ".join(arguments.step)
    if named and named != label:
        raise NotNext(what, named, label or "")


@command(STEP)
@in_bar
def undo(arguments: Arguments, bar: Bar) -> Answer:
    """Undo one change, and say which it was."""
    step = bar.next_step("undo")
    _refuse_another("undo", arguments, bar.undo_label)
    label = bar.undo(step).label
    return Answer(lambda: {"undone": label}, f"Undone: {label}.")


@command(STEP)
@in_bar
def redo(arguments: Arguments, bar: Bar) -> Answer:
    """Redo one change, and say which it was."""
    step = bar.next_step("redo")
    _refuse_another("redo", arguments, bar.redo_label)
    label = bar.redo(step).label
    return Answer(lambda: {"redone": label}, f"Done again: {label}.")
