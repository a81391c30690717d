"""`barkeep setting`: list the bar's settings, or change one."""

from __future__ import annotations

import argparse
from dataclasses import asdict

from barkeep.application.settings import (
    OUNCE_WORDS,
    SETTINGS,
    kept_in_words,
    setting_named,
    style_word,
)
from barkeep.cli.arguments import Arguments
from barkeep.cli.bar_source import opened_bar
from barkeep.cli.output import print_json, table
from barkeep.domain.bar.snapshot import Settings


def configure(parser: argparse.ArgumentParser) -> None:
    """Its arguments."""
    keys = ", ".join(each.key for each in SETTINGS)
    parser.add_argument("key", metavar="KEY", nargs="?", help=f"{keys} (default: list them all)")
    parser.add_argument(
        "value",
        metavar="VALUE",
        nargs="*",
        help="what it shall be: us or imperial for ounce; ml for dash; as-written, oz, ml, cl "
        "or parts for shown-in; yes or no for classics; “Balance 1 to 5, Flavour 1 to 10” for "
        "scales; “small ladle=1.5 oz” for measure, “small ladle=” to take "
        "it away (left out: say what it is)",
    )
    parser.set_defaults(run=run)


def run(arguments: Arguments) -> int:
    """List the settings, say one, or change it."""
    words = None if arguments.key is None else setting_named(arguments.key)
    with opened_bar(arguments) as bar:
        before, kept = bar.snapshot.settings, ""
        if words is not None and arguments.value:
            wanted = words.read(before, " ".join(arguments.value))
            kept = kept_in_words(bar.snapshot, wanted)
            bar.settings.change(wanted)
        settings = bar.snapshot.settings
    if arguments.json:
        print_json({"settings": _json(settings)})
    elif words is not None and arguments.value:
        now = "is now" if settings != before else "was already"
        print(f"{words.key} {now} {words.say(settings)}.{f' {kept}.' if kept else ''}")
    elif words is not None:
        print(f"{words.key} is {words.say(settings)}. {words.hint()}")
    else:
        print(table(("setting", "value"), ((each.key, each.say(settings)) for each in SETTINGS)))
    return 0


def _json(settings: Settings) -> dict[str, object]:
    return {
        "name": settings.name,
        "currency": settings.currency,
        "ounce": OUNCE_WORDS[settings.ounce],
        "dash_ml": settings.dash_ml,
        "shown_in": style_word(settings.shown_in),
        "country": settings.country,
        "classics": settings.classics,
        "scales": [asdict(scale) for scale in settings.scales],
        "measures": [
            {**asdict(measure), "volume_ml": measure.volume_ml} for measure in settings.measures
        ],
    }
