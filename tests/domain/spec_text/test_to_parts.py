"""A spec in the pieces that a document gives."""

from __future__ import annotations

from barkeep.domain.spec_text.parts import SpecParts, parts_of
from barkeep.domain.spec_text.text import read_specs
from barkeep.domain.specs.spec import Line, Spec

TEXT = """\
Signal Post
1 1/2 oz rye whiskey
Garnish: lemon peel
Glass: coupe
Ice: none
Notes: Filmed.
Notes: Twice.

Stir with ice.
Strain.

Twist the peel.
"""


def test_everything_of_a_spec(tree):
    (read,) = read_specs(TEXT, tree)
    assert read.spec is not None
    assert parts_of(read.spec, tree) == SpecParts(
        "Signal Post",
        ("1 1/2 oz rye whiskey", "Garnish: lemon peel"),
        ("Stir with ice.", "Strain.", "", "Twist the peel."),
        "coupe",
        "none",
        ("Filmed.", "Twice."),
    )


def test_a_garnish_says_that_it_is_one(tree):
    line = Line("lemon peel", "lemon-peel", garnish=True)
    assert parts_of(Spec("A", (line,)), tree).lines == ("Garnish: Lemon peel",)


def test_a_line_changed_in_its_fields_is_written_anew(tree):
    line = Line("2 oz rye whiskey", "rye-whiskey", 45.0, None, "ml", 45.0)
    assert parts_of(Spec("A", (line,)), tree).lines == ("45 ml Rye whiskey",)


def test_empty_rows_around_a_method_are_no_steps(tree):
    spec = Spec("A", (), method="\n\nStir.\n\n\n\nStrain.\n\n", serves=4.0, tags=("long",))
    parts = parts_of(spec, tree)
    assert parts.method == ("Stir.", "", "Strain.")
    assert (parts.serves, parts.tags) == (4.0, ("long",))
