"""Fixtures shared by all tests; nothing here imports Qt."""

from __future__ import annotations

import gc
import os
import sys
from contextlib import suppress
from datetime import datetime
from importlib import import_module
from pathlib import Path
from tempfile import TemporaryDirectory

import pytest
from hypothesis import settings

from tests import servers
from tests.how_much import EVERYTHING

TESTS = Path(__file__).parent

# No test asserts a time, and a first call may import something heavy.
gc.set_threshold(50_000, 20, 50)  # the suite keeps much alive, and looking through it takes long
settings.register_profile("untimed", deadline=None, max_examples=100 if EVERYTHING else 60)
settings.load_profile("untimed")


# Without a display Qt would abort the whole run.
os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")


# What things are called must not hang on where the tests run.
for name in ("LC_ALL", "LC_MESSAGES"):
    os.environ.pop(name, None)
os.environ["LANG"] = "C.UTF-8"


if "BARKEEP_TESTS_CACHE" not in os.environ:  # set by whoever started this process
    cache = TemporaryDirectory(prefix="barkeep-tests-")
    os.environ["BARKEEP_TESTS_CACHE"] = cache.name
# What is worked out again at any time is shared by all tests, and is none of the user's.
os.environ["XDG_CACHE_HOME"] = os.environ["BARKEEP_TESTS_CACHE"]


# What tests start and workers read is compiled once, also where nothing may be written beside it.
if os.environ.pop("PYTHONDONTWRITEBYTECODE", ""):
    compiled = str(Path(os.environ["XDG_CACHE_HOME"], "compiled"))
    os.environ["PYTHONPYCACHEPREFIX"] = sys.pycache_prefix = compiled
    sys.dont_write_bytecode = False


# The same server for all, started by whoever asks for it first and stopped by who began the run.
began_the_run = servers.FOLDER not in os.environ
if began_the_run:
    os.environ[servers.FOLDER] = str(servers.make_folder())


def pytest_unconfigure():
    if began_the_run:
        servers.put_away(Path(os.environ[servers.FOLDER]))


def pytest_collection(session):
    """Every other worker reads the tests from the last to the first, before it collects them all.

    So each finds compiled what another has read by then; with its assertions spelt out, that
    takes longer than all else of collecting.
    """
    config = session.config
    number = getattr(config, "workerinput", {"workerid": "gw0"})["workerid"].removeprefix("gw")
    if config.args == config.getini("testpaths") and int(number) % 2:
        for path in sorted(TESTS.rglob("test_*.py"), reverse=True):
            with suppress(Exception, pytest.skip.Exception):  # told of when it is collected
                import_module(".".join(path.relative_to(TESTS.parent).with_suffix("").parts))


LONG = (
    "test_architecture",
    "test_kills",
    "test_killed_backups",
    "test_openings",
    "test_every_action",
)
"""Modules with tests of many seconds each."""


def pytest_collection_modifyitems(items):
    """The longest come first: begun last, one would be waited for by a worker without any."""
    items.sort(key=lambda item: item.path.stem not in LONG)


NOON = datetime(2026, 11, 21, 12, 0)
"""The moment every test's clock shows."""


@pytest.fixture
def clock():
    """A clock that stands still."""
    return lambda: NOON


@pytest.fixture(scope="session")
def server():
    """A PostgreSQL server that all tests share; without one its tests are skipped."""
    found = servers.shared()
    if found is None:
        pytest.skip(servers.NOT_HERE)
    return found


@pytest.fixture(scope="session")
def own_server():
    """A server that a test may stop, and starts again."""
    if servers.programs() is None:
        pytest.skip(servers.NOT_HERE)
    with servers.own() as mine:
        yield mine


@pytest.fixture
def engine(request):
    """What keeps the bar of a test: *sqlite*, or what `on_both` says."""
    return getattr(request, "param", "sqlite")


@pytest.fixture(scope="session")
def knowledge():
    """Everything barkeep brings along."""
    from barkeep.application.knowledge import shipped

    return shipped()


@pytest.fixture(scope="session")
def tree(knowledge):
    """The shipped family tree."""
    return knowledge.tree


@pytest.fixture(scope="session")
def _sample_file(tmp_path_factory) -> Path:
    from barkeep.application.sample import build

    path = tmp_path_factory.mktemp("sample") / "sample.bar"
    build(path, clock=lambda: NOON)
    return path


@pytest.fixture
def sample_bar(_sample_file, tmp_path) -> Path:
    """The path of a fresh copy of the sample bar."""
    copy = tmp_path / "sample.bar"
    copy.write_bytes(_sample_file.read_bytes())
    return copy
