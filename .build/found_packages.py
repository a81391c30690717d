"""Builds barkeep with setuptools; packages are found, not listed.

barkeep's data lies beside the package, as `resources` and `sample_db`, and is
installed inside it. setuptools finds packages below one folder only, so the
two are found here and handed over with the rest.
"""

from pathlib import Path

import setuptools
from setuptools.build_meta import _BuildMetaBackend

ROOT = Path(__file__).resolve().parent.parent
DATA = ("resources", "sample_db")


def packages():
    """Every package that is installed, by the name it is imported by."""
    found = ["barkeep", *(f"barkeep.{each}" for each in setuptools.find_packages(ROOT / "barkeep"))]
    for folder in DATA:
        inside = setuptools.find_packages(ROOT, include=[folder, f"{folder}.*"])
        found += [f"barkeep.{each}" for each in inside]
    return sorted(found)


class _Backend(_BuildMetaBackend):
    def run_setup(self, setup_script="setup.py"):
        """There is no setup.py: what one would say is said here."""
        setuptools.setup(
            packages=packages(),
            package_dir={"barkeep": "barkeep", **{f"barkeep.{each}": each for each in DATA}},
            package_data={f"barkeep.{each}": ["**/*"] for each in DATA},
        )


_backend = _Backend()
build_sdist = _backend.build_sdist
build_wheel = _backend.build_wheel
build_editable = _backend.build_editable
get_requires_for_build_sdist = _backend.get_requires_for_build_sdist
get_requires_for_build_wheel = _backend.get_requires_for_build_wheel
get_requires_for_build_editable = _backend.get_requires_for_build_editable
prepare_metadata_for_build_wheel = _backend.prepare_metadata_for_build_wheel
prepare_metadata_for_build_editable = _backend.prepare_metadata_for_build_editable
