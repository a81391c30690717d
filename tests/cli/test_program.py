"""The program as a whole: usage, faults, what it imports, and how the desktop starts."""

from __future__ import annotations

import subprocess
import sys
from types import ModuleType

import pytest

from barkeep import __version__
from barkeep.cli import main, start_desktop
from barkeep.cli.arguments import COMMANDS
from barkeep.cli.output import level_bar, table, width

QT = "PySide6"


def run(*argv: str, **more) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, *argv], capture_output=True, text=True, check=False, **more
    )


class TestUsage:
    def test_version(self, capsys):
        with pytest.raises(SystemExit) as left:
            main(["--version"])
        assert left.value.code == 0
        assert capsys.readouterr().out == f"barkeep {__version__}\n"

    def test_help_names_every_command(self, capsys):
        with pytest.raises(SystemExit) as left:
            main(["--help"])
        assert left.value.code == 0
        shown = capsys.readouterr().out
        for command in COMMANDS:
            assert f"    {command.name} " in shown and command.help in shown

    @pytest.mark.parametrize("command", [each.name for each in COMMANDS])
    def test_each_command_has_help_of_its_own(self, command, capsys):
        with pytest.raises(SystemExit) as left:
            main([command, "--help"])
        assert left.value.code == 0
        assert f"usage: barkeep {command}" in capsys.readouterr().out

    @pytest.mark.parametrize(
        "argv",
        [
            ["pour"],
            ["count"],
            ["count", "1"],
            ["tonight", "--within", "nearly"],
            ["bottles", "--colour"],
            ["--bar"],
            ["--bar", "x.bar", "--sample", "bottles"],
            ["spec", "burn"],
        ],
    )
    def test_what_cannot_be_understood_is_status_2(self, argv, capsys):
        with pytest.raises(SystemExit) as left:
            main(argv)
        assert left.value.code == 2
        assert "usage: barkeep" in capsys.readouterr().err

    def test_options_stand_before_or_after_the_command(self, barkeep, bar):
        before = barkeep("--json", "--bar", bar, "bottles")
        assert before.answer == barkeep("bottles", "--bar", bar, "--json").answer


class TestFaults:
    def test_a_fault_is_one_sentence_and_a_log(self, barkeep, bar, monkeypatch, tmp_path):
        def burst(*_args):
            raise RuntimeError("the boiler burst")

        monkeypatch.setattr("barkeep.cli.tonight.evening_asked_once", burst)
        ran = barkeep("--bar", bar, "tonight")
        assert (ran.status, ran.out) == (70, "")
        assert ran.err.startswith("barkeep: this is a fault of the program (RuntimeError)")
        assert len(ran.err.splitlines()) == 1
        log = tmp_path / "state" / "barkeep" / "barkeep.log"
        assert "the boiler burst" in log.read_text(encoding="utf-8")

    def test_a_reader_that_has_enough_is_no_fault(self, bar):
        command = f"{sys.executable} -m barkeep --bar {bar} tonight --json | head -1"
        done = subprocess.run(command, shell=True, capture_output=True, text=True, check=True)
        assert (done.stdout, done.stderr) == ("{\n", "")

    def test_a_terminal_without_fractions_still_gets_an_answer(self, bar):
        environment = {"PYTHONIOENCODING": "ascii", "PATH": "", "HOME": str(bar.parent)}
        done = run("-m", "barkeep", "--bar", str(bar), "bottles", env=environment)
        assert done.returncode == 0 and "Limes" not in done.stdout and "?" in done.stdout
        done = run("-m", "barkeep", "--bar", str(bar), "bottles", "--json", env=environment)
        assert "Cr\\u00e8me" in done.stdout or "cr\\u00e8me" in done.stdout


class TestImports:
    def test_version_needs_nothing_heavy(self):
        heavy = {QT, "sqlalchemy", "networkx", "scipy", "numpy", "pint", "rapidfuzz"}
        code = (
            "import sys\nfrom barkeep.cli import main\n"
            "try: main(['--version'])\nexcept SystemExit: pass\n"
            f"print(sorted(set(sys.modules) & {heavy!r}))"
        )
        assert run("-c", code).stdout.splitlines()[-1] == "[]"

    @pytest.mark.parametrize("command", ["bottles", "pantry", "spec list", "history 1"])
    def test_a_list_needs_no_solver_no_units_and_no_qt(self, bar, command):
        heavy = {QT, "networkx", "scipy", "numpy", "pint", "rapidfuzz"}
        code = (
            "import sys\nfrom barkeep.cli import main\n"
            f"status = main(['--bar', {str(bar)!r}, *{command.split()!r}])\n"
            f"print(status, sorted(set(sys.modules) & {heavy!r}))"
        )
        assert run("-c", code).stdout.splitlines()[-1] == "0 []"

    def test_a_bar_that_was_read_before_is_asked_without_its_store(
        self, barkeep, bar, tmp_path, monkeypatch
    ):
        """SQLAlchemy takes longer to load than most answers take to give."""
        # Few bars are kept, and tests run beside this one would have it forgotten.
        monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
        assert barkeep("--bar", bar, "bottles").status == 0
        asked = ["bottles", "pantry", "spec list", "next-bottle", "tonight", "stand-in bourbon"]
        code = (
            "import sys\nfrom barkeep.cli import main\n"
            f"for each in {asked!r}:\n"
            f"    status = main(['--bar', {str(bar)!r}, *each.split()])\n"
            "    print(status, each, 'sqlalchemy' in sys.modules, file=sys.stderr)"
        )
        assert run("-c", code).stderr.splitlines() == [f"0 {each} False" for each in asked]


class TestDesktop:
    @pytest.fixture
    def desktop(self, monkeypatch):
        """A desktop that opens no window and tells what it was given."""
        given: list[list[str]] = []

        def opened(argv):
            given.append(argv)
            return 0

        stand_in = ModuleType("barkeep.desktop.shell.main")
        stand_in.main = opened
        monkeypatch.setitem(sys.modules, "barkeep.desktop.shell.main", stand_in)
        return given

    def test_without_a_command_it_opens_with_the_bar_that_was_named(self, desktop):
        assert [main([]), main(["--bar", "x.bar"]), main(["--sample"])] == [0, 0, 0]
        assert desktop == [[], ["--bar", "x.bar"], ["--sample"]]

    def test_without_a_display_it_says_so(self, monkeypatch, capsys):
        monkeypatch.setattr("sys.platform", "linux")
        for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
            monkeypatch.delenv(name, raising=False)
        assert main([]) == 3
        assert "there is no display here" in capsys.readouterr().err

    @pytest.mark.parametrize(
        ("raised", "said"),
        [
            (
                ImportError("libEGL.so.1: cannot open shared object file: No such file"),
                "libEGL.so.1 is missing; on Debian, apt install libegl1",
            ),
            (
                ImportError("libodd.so.7: cannot open shared object file: No such file"),
                "Qt needs libglib2.0-0 libgl1 libegl1",
            ),
            (
                ModuleNotFoundError("No module named 'PySide6'", name="PySide6"),
                "PySide6 is not installed; pip install PySide6-Essentials",
            ),
        ],
    )
    def test_what_is_missing_is_named_with_what_to_install(self, raised, said, monkeypatch, capsys):
        class Missing:
            def find_spec(self, name, path=None, target=None):
                if name == "barkeep.desktop.shell.main":
                    raise raised

        monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
        monkeypatch.delitem(sys.modules, "barkeep.desktop.shell.main", raising=False)
        monkeypatch.setattr("sys.meta_path", [Missing(), *sys.meta_path])
        assert main([]) == 3
        err = capsys.readouterr().err
        assert err.startswith("barkeep: the window cannot open: ") and said in err

    def test_a_mistake_of_ours_is_not_taken_for_a_missing_qt(self):
        ours = ModuleNotFoundError("No module named 'barkeep.gone'", name="barkeep.gone")
        assert start_desktop.without_qt(ours) is None

    def test_only_linux_is_asked_for_a_display(self):
        assert start_desktop.without_display("darwin", {}) is None
        assert start_desktop.without_display("linux", {"WAYLAND_DISPLAY": "wayland-0"}) is None


class TestTable:
    def test_columns_are_aligned_by_what_they_take_on_screen(self):
        shown = table(("name", "ml"), [("梅酒", "5"), ("Gin", "1200")], right="lr")
        assert shown.splitlines() == ["name    ml", "────  ────", "梅酒     5", "Gin   1200"]
        assert {width(line) for line in shown.splitlines()} == {10}

    def test_marks_that_combine_take_no_room(self):
        assert width("Cre\u0300me") == 5

    @pytest.mark.parametrize(
        ("share", "cells"), [(0.0, 0), (0.001, 1), (0.42, 4), (0.95, 10), (1.0, 10), (1.2, 10)]
    )
    def test_a_level_is_drawn_in_tenths(self, share, cells):
        assert level_bar(share) == "█" * cells + "░" * (10 - cells)

    def test_an_empty_table_is_its_head(self):
        assert table(("a", "b"), []) == "a  b\n─  ─"
