"""The lower bounds that pyproject.toml states."""

import pytest

from tests.lowest_versions import all_lowest, lowest


def test_each_direct_dependency_has_one_lower_bound():
    assert {line.split("==")[0] for line in all_lowest()} >= {"cadquery", "numpy", "pydantic", "typer"}


def test_an_extra_is_kept():
    assert lowest("dask[distributed]>=2024.8") == "dask[distributed]==2024.8"


@pytest.mark.parametrize("requirement", ["numpy", "numpy<3"])
def test_a_dependency_without_a_bound_is_refused(requirement):
    with pytest.raises(ValueError, match="one lower bound"):
        lowest(requirement)
