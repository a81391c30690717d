"""The language of the window: Qt's own words and barkeep's, from its translation files."""

from __future__ import annotations

from collections.abc import Mapping

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from barkeep import resource_files
from barkeep.translation import speak_through

SYSTEM = "system"
LANGUAGES: Mapping[str, str] = {
    "en": "English",
    "en_US": "English (United States)",
    "de": "Deutsch",
}
"""Each language by the name it has for itself, as whoever looks for it knows it by no other."""
CONTEXT = "barkeep"


def language_of(choice: str) -> str:
    """The language that is spoken where this is chosen: the system's, if barkeep knows it."""
    if choice in LANGUAGES:
        return choice
    system = QLocale.system()
    exact = system.name()
    plain = exact.partition("_")[0]
    return next((each for each in (exact, plain) if each in LANGUAGES), "en")


class Language:
    """What is spoken in this program; a window made before a change keeps its words."""

    def __init__(self, app: QCoreApplication, choice: str = SYSTEM) -> None:
        self._app = app
        self._translators: list[QTranslator] = []
        self.choice = choice
        self.choose(choice)

    def choose(self, choice: str) -> None:
        """Speak this from now on."""
        self.choice = choice
        self.leave()
        language = language_of(choice)
        own = _own(language)
        self._translators = [each for each in (_qts(language), own) if each]
        for translator in self._translators:
            self._app.installTranslator(translator)
        plain = language.partition("_")[0]
        speak_through(_translated if own else None, plain)  # Qt has English words of its own

    def leave(self) -> None:
        """Speak English again."""
        for translator in self._translators:
            self._app.removeTranslator(translator)
        self._translators = []
        speak_through(None)


def _qts(language: str) -> QTranslator | None:
    """What Qt says itself: the buttons of its boxes, the menu of a field."""
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    translator = QTranslator()
    return translator if translator.load(f"qtbase_{language}", folder) else None


class _Own(QTranslator):
    """Barkeep's words of one language; Qt reads them where they lie, so they are kept here."""

    def __init__(self, data: bytes) -> None:
        super().__init__()
        self._data = data
        self.is_read = self.load(data)


def _own(language: str) -> QTranslator | None:
    name = f"barkeep_{language}.qm"
    if name not in resource_files.names("translations", suffix=".qm"):
        return None
    translator = _Own(resource_files.read_bytes("translations", name))
    return translator if translator.is_read else None


_english: dict[str, str] = {}
"""What was said so far in another language -> the same in English."""


def _translated(words: str, about: str) -> str:
    said = QCoreApplication.translate(CONTEXT, words, about or None)
    _english[said] = words
    return said


def in_english(said: str) -> str:
    """The words that were said so, in English, by which things are remembered in every language."""
    return _english.get(said, said)
