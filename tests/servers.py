"""A PostgreSQL server for the tests: started where its programs are here, and shared by a run.

`BARKEEP_TEST_POSTGRESQL` may give the address of another, such as
`postgresql://team@cellar/bars`, in whose database that user may make schemas.
"""

from __future__ import annotations

import fcntl
import os
import pwd
import shutil
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import count
from pathlib import Path
from uuid import uuid4

import pytest

NAMED = "BARKEEP_TEST_POSTGRESQL"
FOLDER = "BARKEEP_TESTS_SERVER"
"""Where the server of this run is, or will be once the first test asks for it."""

NOT_HERE = (
    f"there is no PostgreSQL here: install Debian's package postgresql, or name a server by {NAMED}"
)

ADMIN, TEAM, LOOKER, LOCKED = "keeper", "team", "looker", "locked"
PASSWORD = "n0t-t0-be-sh0wn"
"""Of the one user who needs one."""

PATIENCE_S = 120
"""How long a test waits for what must come, before it fails."""

_WHO_MAY = f"local all {LOCKED} scram-sha-256\nlocal all all trust\n"
_SETTINGS = {
    "listen_addresses": "",
    "fsync": "off",  # only a power cut would show the difference
    "max_connections": "60",
    "autovacuum": "off",
    "jit": "off",
    "lc_messages": "C",
}

_numbers = count(1)


@dataclass(frozen=True, slots=True)
class Server:
    """A server by the address of its database; `folder` is where it lives, None for another's."""

    address: str
    folder: Path | None = None

    def new_bar(self, **options: str) -> str:
        """The address of a bar that is nowhere else and not begun yet."""
        return self.bar(f"bar_{uuid4().hex[:12]}_{next(_numbers)}", **options)

    def bar(self, schema: str, **options: str) -> str:
        """The address of the bar in a schema."""
        more = "".join(f"&{name}={value}" for name, value in options.items())
        joiner = "&" if "?" in self.address else "?"
        return f"{self.address}{joiner}schema={schema}{more}"

    def as_user(self, user: str) -> Server:
        """The same, for another user of the server."""
        assert self._folder
        return Server(self.address.replace(f"//{TEAM}@", f"//{user}@"), self.folder)

    def stop(self, how: str = "fast") -> None:
        """End it: *fast* takes back what is under way, *immediate* is a crash."""
        _as_its_user(self._folder, "pg_ctl", "-D", "data", "-m", how, "-w", "stop")

    def start(self) -> None:
        """Start it, and wait until it answers."""
        said = " ".join(f"-c {name}='{value}'" for name, value in _SETTINGS.items())
        said += f" -c unix_socket_directories='{self._folder}'"
        _as_its_user(self._folder, "pg_ctl", "-D", "data", "-l", "log", "-w", "-o", said, "start")

    def run(self, sql: str, database: str = "postgres") -> None:
        """Let the server's owner run statements."""
        _as_its_user(
            self._folder, "psql", "-qX", "-v", "ON_ERROR_STOP=1", "-h", str(self._folder),
            "-U", ADMIN, "-d", database, "-c", sql,
        )  # fmt: skip

    @property
    def _folder(self) -> Path:
        if self.folder is None:
            pytest.skip(f"the server that {NAMED} names has none of our users, and is not stopped")
        return self.folder


def programs() -> Path | None:
    """The folder of the server's programs, the newest there are; None where there are none."""
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"), key=lambda each: each.parts)
    there = shutil.which("initdb")
    file = found[-1] if found else Path(there) if there else None
    return None if file is None else file.parent


def shared() -> Server | None:
    """The server of this run, started by the first who asks; None where none can be had."""
    if os.environ.get(NAMED):
        return Server(os.environ[NAMED])
    if programs() is None:
        return None
    folder = Path(os.environ[FOLDER])
    with (folder / "lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not (folder / "data").exists():
            begin(folder)
    return Server(_address(folder), folder)


@contextmanager
def own() -> Iterator[Server]:
    """A server for one test alone, which may be stopped."""
    folder = make_folder()
    try:
        yield begin(folder)
    finally:
        put_away(folder)


def make_folder() -> Path:
    """A folder in which a server may be begun."""
    folder = Path(tempfile.mkdtemp(prefix="barkeep-server-"))
    if (user := _user()) is not None:
        shutil.chown(folder, user.pw_uid, user.pw_gid)
    return folder


def begin(folder: Path) -> Server:
    """A new server with a database of a team that owns nothing else, running."""
    _as_its_user(
        folder, "initdb", "-D", "data", "-U", ADMIN, "-E", "UTF8", "--no-locale", "--no-sync"
    )
    (folder / "data" / "pg_hba.conf").write_text(_WHO_MAY)
    server = Server(_address(folder), folder)
    server.start()
    for user in (f"{TEAM} LOGIN", f"{LOOKER} LOGIN", f"{LOCKED} LOGIN PASSWORD '{PASSWORD}'"):
        server.run(f"CREATE ROLE {user} NOSUPERUSER")
    # Not in the order of letters' numbers, as on most people's servers.
    of_language = "LOCALE_PROVIDER icu ICU_LOCALE 'en-US' TEMPLATE template0"
    server.run(f"CREATE DATABASE bars OWNER {TEAM} {of_language}")
    return server


def put_away(folder: Path) -> None:
    """Stop the server in a folder, where one runs, and delete it."""
    if (folder / "data" / "postmaster.pid").exists():
        Server("", folder).stop("immediate")
    shutil.rmtree(folder, ignore_errors=True)


def _address(folder: Path) -> str:
    return f"postgresql://{TEAM}@/bars?host={folder}"


def _user() -> pwd.struct_passwd | None:
    """Whom the server is run as: the superuser may not run one."""
    if os.geteuid() != 0:
        return None
    users = {each.pw_name: each for each in pwd.getpwall()}
    return users.get("postgres") or users["nobody"]


def _as_its_user(folder: Path, program: str, *arguments: str) -> None:
    bin_folder, user = programs(), _user()
    assert bin_folder is not None
    as_user = {} if user is None else {"user": user.pw_uid, "group": user.pw_gid}
    done = subprocess.run(
        [bin_folder / program, *arguments],
        cwd=folder,
        stdin=subprocess.DEVNULL,
        # No pipe: the server would hold it for as long as it runs.
        stdout=(out := (folder / "said").open("w")),
        stderr=out,
        check=False,
        **as_user,
        **({} if user is None else {"extra_groups": []}),
    )
    out.close()
    assert done.returncode == 0, (folder / "said").read_text()
