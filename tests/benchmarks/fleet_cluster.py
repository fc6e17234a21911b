"""How a Dask cluster on this machine scales from one worker process to two: ``python -m tests.benchmarks.fleet_cluster [--rows 8000000]``."""

import argparse
import tempfile
import time
from pathlib import Path

import dask.dataframe as dd
import numpy as np
import pandas as pd
from distributed import Client, LocalCluster

from anchorcalc import check_table

PARTITIONS = 16
TURNS = 2  # of which the faster counts: the machine is seldom alone


def write(folder: Path, *, rows: int) -> None:
    """Write the fleet as partitioned Parquet."""
    for part in range(PARTITIONS):
        rng = np.random.default_rng(part)
        some = rows // PARTITIONS
        columns = {"depth [m]": rng.uniform(2, 25, some), "bow_height [m]": rng.uniform(0.5, 2, some), "tide_rise [m]": rng.uniform(0, 4, some)}
        pd.DataFrame(columns).to_parquet(folder / f"part-{part:02d}.parquet", index=False)


def seconds(source: Path, target: Path, *, workers: int) -> float:
    """Return the time from Parquet to Parquet with so many workers, the cluster being up and warm."""
    with LocalCluster(n_workers=workers, threads_per_worker=1, processes=True, dashboard_address=None) as cluster, Client(cluster):
        check_table("rode_to_let_out", dd.read_parquet(source).partitions[:workers]).compute()
        began = time.perf_counter()
        check_table("rode_to_let_out", dd.read_parquet(source)).to_parquet(target)
        return time.perf_counter() - began


def main() -> None:
    """Measure it."""
    options = argparse.ArgumentParser()
    options.add_argument("--rows", type=int, default=4_000_000)
    rows = options.parse_args().rows
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "in"
        source.mkdir()
        write(source, rows=rows)
        taken = {1: float("inf"), 2: float("inf")}
        for turn in range(TURNS):
            for workers in (1, 2):
                taken[workers] = min(taken[workers], seconds(source, Path(folder) / f"out-{workers}-{turn}", workers=workers))
    for workers, one in taken.items():
        print(f"{workers} worker{'s' if workers > 1 else ''}: {one:.1f} s, {rows / one / workers:,.0f} rows a second and worker")
    print(f"two against one: {taken[1] / taken[2]:.2f} times as fast")


if __name__ == "__main__":
    main()
