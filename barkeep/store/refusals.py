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


class BarMoved(UserError):
    """A write to a bar whose file has been deleted, moved or replaced beneath it."""

    file: str
    says = (
        "{file} was deleted, moved or replaced while it was open here, and nothing was changed. "
        "What is shown was read before that."
    )


class WrittenNotRead(UserError):
    """A change that is written, after which the file could not be read, as another holds it."""

    file: str
    says = (
        "What you did is written, but {file} is in use by another program just now, so it does "
        "not show yet. Read it again in a moment."
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


class AnotherStep(UserError):
    """A step to undo or redo (`what`) that is no longer the next one: `gone` says why.

    `next_one` is the step that is next by now, empty for none.
    """

    what: str
    label: str
    gone: str
    next_one: str

    def __str__(self) -> str:
        left = f"{self.what.capitalize()} now means “{self.next_one}”"
        if not self.next_one:
            left = f"There is nothing else to {self.what}"
        return (
            f"“{self.label}” {self.gone}, here, in another window or by a command, "
            f"so nothing was changed. {left}."
        )


class CannotWrite(UserError):
    """A file that cannot be written; `reason` says why."""

    file: str
    reason: str
    says = "{file} cannot be written: {reason}. Nothing was changed."
