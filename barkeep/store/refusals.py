"""What the store cannot do, said to the user."""

from __future__ import annotations

from barkeep.errors import UserError


class BarIsBusy(UserError):
    """Another program holds the file locked."""

    file: str
    says = (
        "{file} is in use by another program just now, and nothing was changed. "
        "Try again in a moment."
    )


class BarIsHeld(BarIsBusy):
    """Another program kept the file locked for all of `waited_s` seconds while a bar was opened."""

    waited_s: float
    says = (
        "{file} could not be opened: it is in use by another program, which has not "
        "finished within {waited_s:g} s. Nothing of it was lost; open it again when "
        "the other program has finished or is closed."
    )


class CannotUndo(UserError):
    """An undo or redo (`what`) that no longer fits what is in the bar."""

    what: str
    label: str
    reason: str
    says = "Cannot {what} “{label}”: {reason}. Nothing was changed."


class CannotWrite(UserError):
    """A file that cannot be written; `reason` says why."""

    file: str
    reason: str
    says = "{file} cannot be written: {reason}. Nothing was changed."


class ReadOnlyBar(CannotWrite):
    """A bar that may only be looked at."""

    reason: str = "the file or its folder is read-only"
    says = "{file} is read-only: it can be looked at, and nothing in it can be changed."
