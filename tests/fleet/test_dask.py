"""Dask dataframes: lazy until computed, and whole even where a worker dies."""

import os
import signal
import time
import warnings
from collections.abc import Iterator
from pathlib import Path

import dask.dataframe as dd
import numpy as np
import pandas as pd
import pytest
from distributed import Client, LocalCluster

from anchorcalc import TableError, check_table

pytestmark = pytest.mark.filterwarnings("ignore:The inplace keyword")  # what dask asks of pandas
PARTITIONS, ROWS = 8, 5_000


def fleet_of(rows: int, *, seed: int) -> pd.DataFrame:
    """Return rows of which some are bad."""
    rng = np.random.default_rng(seed)
    depth = rng.uniform(2.0, 25.0, rows)
    depth[::97] = np.nan
    depth[::101] = 900.0
    return pd.DataFrame({"boat": np.arange(rows), "depth [m]": depth, "bow_height": rng.choice(["1 m", "4 ft", "2..3 m"], rows)})


@pytest.fixture(scope="module")
def files(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("fleet")
    for part in range(PARTITIONS):
        fleet_of(ROWS, seed=part).to_parquet(folder / f"part-{part:02d}.parquet", index=False)
    return folder


@pytest.fixture(scope="module")
def cluster() -> Iterator[Client]:
    with (
        LocalCluster(n_workers=2, threads_per_worker=1, processes=True, dashboard_address=None) as workers,
        Client(workers) as client,
    ):
        yield client


def test_nothing_is_read_before_it_is_computed(files: Path) -> None:
    lazy = check_table("rode_to_let_out", dd.read_parquet(files))
    assert isinstance(lazy, dd.DataFrame)
    assert lazy.npartitions == PARTITIONS
    first = lazy.partitions[0].compute()
    pd.testing.assert_frame_equal(first, check_table("rode_to_let_out", dd.read_parquet(files).partitions[0].compute()))
    assert lazy.dtypes.equals(first.dtypes)


def test_headings_are_checked_and_warned_of_at_once(files: Path) -> None:
    table = dd.read_parquet(files)
    with pytest.raises(TableError):
        check_table("rode_to_let_out", table.rename(columns={"depth [m]": "depth [kg]"}))
    with pytest.warns(UserWarning, match="looks like one"):
        lazy = check_table("rode_to_let_out", table.rename(columns={"bow_height": "bow_heigth"}))
    with warnings.catch_warnings():
        warnings.simplefilter("error", UserWarning)
        lazy.partitions[0].compute(scheduler="synchronous")


def test_the_answer_is_whole_and_right_though_a_worker_dies(files: Path, cluster: Client, tmp_path: Path) -> None:
    lazy = check_table("rode_to_let_out", dd.read_parquet(files), boat={"scope": "5:1"}, units="us")
    processes = set(cluster.run(os.getpid).values())
    doomed = min(processes)
    running = cluster.compute(lazy.map_partitions(_killing, doomed=doomed, mark=str(tmp_path / "second"), meta=lazy._meta))
    got = running.result(timeout=60)
    assert len(processes) == 2
    assert doomed not in set(cluster.run(os.getpid).values()), "no worker was killed"
    parts = [check_table("rode_to_let_out", fleet_of(ROWS, seed=part), boat={"scope": "5:1"}, units="us") for part in range(PARTITIONS)]
    pd.testing.assert_frame_equal(got.reset_index(drop=True), pd.concat(parts, ignore_index=True), check_dtype=False)


def _killing(part: pd.DataFrame, *, doomed: int, mark: str) -> pd.DataFrame:
    """Pass a partition on; the doomed worker dies at its second."""
    if os.getpid() == doomed:
        if Path(mark).exists():
            os.kill(doomed, signal.SIGKILL)
        Path(mark).touch()
    time.sleep(0.05)
    return part
