"""What the store cannot do, said to the user."""

from __future__ import annotations

from dataclasses import dataclass

from barkeep.errors import UserError


@dataclass
class BarIsBusy(UserError):
    """Another program holds the file locked."""

    file: str

    def __str__(self) -> str:
        return (
            f"{self.file} is in use by another program just now, and nothing was changed. "
            "Try again in a moment."
        )


@dataclass
class BarIsHeld(BarIsBusy):
    """Another program kept the file locked for all of `waited_s` seconds while a bar was opened."""

    waited_s: float

    def __str__(self) -> str:
        return (
            f"{self.file} could not be opened: it is in use by another program, which has not "
            f"finished within {self.waited_s:g} s. Nothing of it was lost; open it again when "
            "the other program has finished or is closed."
        )


@dataclass
class CannotUndo(UserError):
    """An undo or redo (`what`) that no longer fits what is in the bar."""

    what: str
    label: str
    reason: str

    def __str__(self) -> str:
        return f"Cannot {self.what} “{self.label}”: {self.reason}. Nothing was changed."


@dataclass
class CannotWrite(UserError):
    """A file that cannot be written; `reason` says why."""

    file: str
    reason: str

    def __str__(self) -> str:
        return f"{self.file} cannot be written: {self.reason}. Nothing was changed."
