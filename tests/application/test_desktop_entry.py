"""The desktop's entry, by the rules of the standards it is written to; checked by their own tools
where they are here."""

from __future__ import annotations

import configparser
import re
import shutil
import struct
import subprocess
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

from barkeep import resource_files
from barkeep.application import desktop_entry
from barkeep.application.bar import Bar
from barkeep.application.desktop_entry import SIZES, data_home, quoted
from barkeep.errors import CannotUse

NAMESPACE = "{http://www.freedesktop.org/standards/shared-mime-info}"
MAIN_CATEGORIES = {
    *("AudioVideo", "Audio", "Video", "Development", "Education", "Game", "Graphics"),
    *("Network", "Office", "Science", "Settings", "System", "Utility"),
}
"""Of the Desktop Menu Specification; an entry has one of them at least."""


@pytest.fixture(autouse=True)
def own_data(tmp_path, monkeypatch):
    """The user's data folder is a fresh one."""
    home = tmp_path / "data home"
    monkeypatch.setenv("XDG_DATA_HOME", str(home))
    return home


def written(own_data) -> configparser.ConfigParser:
    """The entry as a reader of the standard sees it: keys keep their case, nothing is replaced."""
    read = configparser.RawConfigParser(delimiters=("=",), comment_prefixes=("#",), strict=True)
    read.optionxform = str  # type: ignore[method-assign, assignment]
    read.read(own_data / "applications" / "barkeep.desktop", encoding="utf-8")
    return read


def arguments_of(value: str) -> list[str]:
    """A value of Exec taken apart as the standard says: first as a string, then its quotes."""
    plain = value.replace("\\\\", "\\")
    found = re.findall(r'"((?:\\.|[^"\\])*)"|(\S+)', plain)
    return [re.sub(r"\\(.)", r"\1", inside) if inside else bare for inside, bare in found]


def test_the_entry_and_the_kind_of_file_speak_german_too(own_data):
    desktop_entry.install()
    entry = written(own_data)
    main = entry["Desktop Entry"]
    assert main["GenericName[de]"] == "Hausbar" and main["Comment[de]"].startswith("Was in der Bar")
    assert main["Keywords[de]"].endswith(";")
    assert entry["Desktop Action sample"]["Name[de]"] == "Beispielbar ansehen"
    kinds = ET.parse(own_data / "mime" / "packages" / "barkeep.xml").iter(f"{NAMESPACE}comment")
    language = "{http://www.w3.org/XML/1998/namespace}lang"
    assert [each.text for each in kinds if each.get(language) == "de"] == ["Bar von barkeep"]


def test_the_entry_has_what_the_standard_asks_for(own_data):
    desktop_entry.install()
    entry = written(own_data)
    assert entry.sections() == ["Desktop Entry", "Desktop Action sample"]
    main = entry["Desktop Entry"]
    assert main["Type"] == "Application" and main["Name"] == "barkeep"
    assert main["Terminal"] == "false" and main["StartupNotify"] == "true"
    assert main["MimeType"] == "application/x-barkeep;"
    assert main["Icon"] == "barkeep"  # a name, to be found in the theme
    for name in ("Categories", "Keywords", "MimeType", "Actions"):
        assert main[name].endswith(";"), name
    assert set(main["Categories"].split(";")) & MAIN_CATEGORIES
    for action in filter(None, main["Actions"].split(";")):
        assert entry[f"Desktop Action {action}"]["Name"]
    *command, file = arguments_of(main["Exec"])
    assert file == "%f"
    assert command == list(desktop_entry.started_by())
    assert Path(main["TryExec"]).is_file()


@pytest.mark.skipif(not shutil.which("desktop-file-validate"), reason="no validator here")
def test_the_validator_has_nothing_to_say(own_data):
    desktop_entry.install()
    path = own_data / "applications" / "barkeep.desktop"
    done = subprocess.run(["desktop-file-validate", str(path)], capture_output=True, text=True)
    assert (done.returncode, done.stdout) == (0, "")


@pytest.mark.parametrize(
    "argument",
    ["/opt/run", "/opt/bar keep/run", '/opt/"so"/run', "/opt/$HOME/`x`", "/opt/back\\slash"],
)
def test_an_argument_comes_back_as_it_was(argument):
    assert arguments_of(quoted(argument)) == [argument]


def test_a_percent_sign_is_no_field_code():
    assert quoted("/opt/100%f/run") == "/opt/100%%f/run"


def test_the_pictures_have_the_size_of_their_folder(own_data):
    desktop_entry.install()
    theme = own_data / "icons" / "hicolor"
    for size in SIZES:
        content = (theme / f"{size}x{size}" / "apps" / "barkeep.png").read_bytes()
        assert content[:8] == b"\x89PNG\r\n\x1a\n"
        assert struct.unpack(">II", content[16:24]) == (size, size)
    drawing = ET.parse(theme / "scalable" / "apps" / "barkeep.svg").getroot()
    assert drawing.tag == "{http://www.w3.org/2000/svg}svg"


def test_a_bar_is_known_by_its_name_and_by_its_beginning(own_data, tmp_path):
    desktop_entry.install()
    root = ET.parse(own_data / "mime" / "packages" / "barkeep.xml").getroot()
    assert root.tag == f"{NAMESPACE}mime-info"
    (kind,) = root
    assert kind.get("type") == "application/x-barkeep"
    assert kind.find(f"{NAMESPACE}glob").get("pattern") == "*.barkeep"
    (outer,) = kind.find(f"{NAMESPACE}magic")
    (inner,) = outer
    assert [outer.get("type"), inner.get("type")] == ["string", "big32"]
    with Bar.open(tmp_path / "a bar.barkeep"):
        content = (tmp_path / "a bar.barkeep").read_bytes()
    begins, marked = int(outer.get("offset")), int(inner.get("offset"))
    assert content[begins:].startswith(outer.get("value").encode())
    assert struct.unpack(">I", content[marked : marked + 4]) == (int(inner.get("value"), 0),)


@pytest.mark.skipif(not shutil.which("update-mime-database"), reason="not here")
def test_the_types_of_the_desktop_have_it_once_it_is_there_and_not_after(own_data):
    desktop_entry.install()
    globs = own_data / "mime" / "globs2"
    assert "application/x-barkeep:*.barkeep" in globs.read_text("utf-8")
    desktop_entry.remove()
    assert "x-barkeep" not in globs.read_text("utf-8")


def test_again_writes_nothing_and_what_was_changed_is_told(own_data):
    first, _told = desktop_entry.install()
    assert set(first.missing) == set(first.files) and not first.other
    second, _told = desktop_entry.install()
    assert set(second.there) == set(second.files)
    entry = own_data / "applications" / "barkeep.desktop"
    entry.write_text("mine", "utf-8")
    third, _told = desktop_entry.install()
    assert third.other == (entry,) and "mine" not in entry.read_text("utf-8")


def test_removing_leaves_what_is_not_its_own(own_data):
    desktop_entry.install()
    other = own_data / "applications" / "another.desktop"
    other.write_text("[Desktop Entry]\n", "utf-8")
    before, _told = desktop_entry.remove()
    assert set(before.there) == set(before.files)
    assert not any(each.exists() for each in before.files)
    assert other.exists()
    assert desktop_entry.remove()[0].missing == tuple(before.files)


def test_a_folder_that_is_not_absolute_is_passed_over():
    home = Path.home() / ".local" / "share"
    assert data_home({"XDG_DATA_HOME": "here"}) == home
    assert data_home({}) == home
    assert data_home({"XDG_DATA_HOME": "/else"}) == Path("/else")


def test_a_place_that_cannot_be_written_is_said(own_data):
    own_data.write_text("a file where the folder should be", "utf-8")
    with pytest.raises(CannotUse, match=r"barkeep\.desktop cannot be used"):
        desktop_entry.install()


def test_other_systems_are_told(monkeypatch):
    monkeypatch.setattr("sys.platform", "darwin")
    with pytest.raises(CannotUse, match="knows programs otherwise"):
        desktop_entry.entry()


def test_what_is_written_is_shipped():
    assert set(resource_files.names("desktop", "icons")) == {f"{size}.png" for size in SIZES}
