"""Speed of tables, all measured in one run: ``python -m tests.benchmarks.fleet [--rows 2000000] [--file-rows 10000000]``.

Closed-form questions stand against the same sums in bare numpy, with the same checks of bounds and the same refusals; the catenary question
against its kernel alone; files against their reader and writer alone. Every ratio comes from the same process and the same minute.
"""

import argparse
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

import numpy as np
import pyarrow as pa
import pyarrow.csv as arrow_csv
from pyarrow import parquet

from anchorcalc import check_table
from anchorcalc.catalogue import question
from anchorcalc.physics.catenary import rode_shape
from anchorcalc.physics.weights import rode_weights
from anchorcalc.units.kinds import UNIT
from anchorcalc.vocabulary import TERMS

FOOT = 0.3048
CLOSED_FORM: dict[str, dict[str, tuple[float, float]]] = {  # in feet, scope as it is
    "rode_to_let_out": {"depth": (3, 90), "bow_height": (2, 8), "tide_rise": (0, 12), "scope": (3, 9)},
    "scope_now": {"rode_out": (140, 300), "depth": (3, 90), "bow_height": (2, 8), "tide_rise": (0, 12)},
    "swing_radius": {"rode_out": (140, 300), "depth": (3, 90), "boat_length": (20, 50), "bow_height": (2, 8), "tide_fall": (0, 9)},
    "rode_for_room": {"distance": (60, 400), "boat_length": (20, 50), "depth": (3, 90), "bow_height": (2, 8), "tide_rise": (0, 12), "scope": (3, 9)},
    "deepest_anchorage": {"rode_aboard": (100, 400), "bow_height": (2, 8), "tide_rise": (0, 12), "scope": (3, 9), "reserve": (0, 20)},
    "rode_to_carry": {"depth": (3, 90), "bow_height": (2, 8), "tide_rise": (0, 12), "scope": (3, 9), "reserve": (0, 20)},
}


def best(*works: Callable[[], Any], times: int = 3) -> list[float]:
    """Return the shortest time of each work in seconds, of a few runs by turns: the machine is seldom alone."""
    taken = [float("inf")] * len(works)
    for _ in range(times):
        for place, work in enumerate(works):
            began = time.perf_counter()
            work()
            taken[place] = min(taken[place], time.perf_counter() - began)
    return taken


def columns_of(name: str, rows: int) -> dict[str, Any]:
    """Return random columns of a closed-form question by term, in feet."""
    rng = np.random.default_rng(1)
    return {term: rng.uniform(low, high, rows) for term, (low, high) in CLOSED_FORM[name].items()}


def headed(columns: dict[str, Any]) -> dict[str, Any]:
    """Return the columns under their headings."""
    return {f"{term} [ft]" if TERMS[term].kind.has_unit else term: column for term, column in columns.items()}


def bare(name: str, columns: dict[str, Any]) -> dict[str, Any]:
    """Return the same results by numpy alone: into SI, bounds, refusals, sums, and back into feet where nothing was wrong."""
    asked = question(name)
    values: dict[str, Any] = {}
    fine: Any = True
    for term in asked.direct:
        declared = TERMS[term]
        if term not in columns:
            if asked.inputs[term].need == "usual":
                values[term] = declared.usual
            continue
        values[term] = columns[term] * FOOT if declared.kind.has_unit else columns[term]
        fine = fine & np.isfinite(values[term])
        if declared.above is not None:
            fine &= values[term] > declared.above
        if declared.least is not None:
            fine &= values[term] >= declared.least
        if declared.most is not None:
            fine &= values[term] <= declared.most
    for rule in asked.refuses:
        fine = fine & ~np.asarray(rule.holds(values))
    found = asked.solve(**values)
    return {name: np.where(fine, one / FOOT if np.asarray(one).dtype.kind == "f" else one, np.nan) for name, one in found.items()}


def closed_form(rows: int) -> None:
    """Print how each closed-form question stands against bare numpy."""
    import pandas as pd
    import polars as pl

    print(f"\nclosed form, {rows:,} rows: check_table / bare numpy with the same checks")
    for name in CLOSED_FORM:
        columns = columns_of(name, rows)
        table = headed(columns)
        kinds = {"arrays": table, "pyarrow": pa.table(table), "polars": pl.DataFrame(table), "pandas": pd.DataFrame(table)}
        alone, *taken = best(partial(bare, name, columns), *(partial(check_table, name, given) for given in kinds.values()), times=5)
        ratios = {kind: one / alone for kind, one in zip(kinds, taken, strict=True)}
        print(f"  {name:<20}{alone * 1e3:8.0f} ms   " + "  ".join(f"{kind} {ratio:.2f}" for kind, ratio in ratios.items()))


def catenary(rows: int) -> None:
    """Print how the catenary question stands against its kernel."""
    rng = np.random.default_rng(1)
    height_part = {"depth [m]": rng.uniform(2, 25, rows), "bow_height [m]": rng.uniform(0.5, 2, rows)}
    height = height_part["depth [m]"] + height_part["bow_height [m]"]
    rode_out, load, chain = height * rng.uniform(2, 10, rows), 10.0 ** rng.uniform(2, 4.3, rows), rng.uniform(5, 30, rows)
    chain_size, line_size = np.full(rows, 0.008), np.full(rows, 0.014)
    sizes = {"chain_size [m]": chain_size, "line_size [m]": line_size}
    table = {**height_part, "rode_out [m]": rode_out, "load [N]": load, "chain [m]": chain, **sizes}
    material = TERMS["line_material"].code("nylon_3_strand")

    def kernel() -> None:
        chain_weight, line_weight = rode_weights(chain_size=chain_size, line_size=line_size, line_material=material)
        rode_shape(rode_out=rode_out, chain=chain, height=height, load=load, chain_weight=chain_weight, line_weight=line_weight)

    alone, ours = best(kernel, partial(check_table, "pull_at_anchor", table), times=5)
    print(f"\ncatenary, {rows:,} rows: kernel on one core {alone:.2f} s, check_table {ours:.2f} s: {ours / alone:.2f}")


def linear(most: int) -> None:
    """Print what a row costs from a thousand to ten million."""
    print("\ncost of a row of rode_to_let_out by the number of rows")
    rows = 1000
    while rows <= most:
        table = headed(columns_of("rode_to_let_out", rows))
        (taken,) = best(partial(check_table, "rode_to_let_out", table))
        print(f"  {rows:>10,} rows {taken * 1e3:9.1f} ms {taken / rows * 1e9:8.1f} ns a row")
        rows *= 10


_RUN = """
from pathlib import Path
from anchorcalc.doors.fleet_files import run_files
run_files(question="rode_to_let_out", source={source!r}, target={target!r}, boat=None, units=None, strict=False)
peak = next(line for line in Path("/proc/self/status").read_text().splitlines() if line.startswith("VmHWM"))
print(int(peak.split()[1]) / 1024)
"""


def files(rows: int, folder: Path) -> None:
    """Print how files stand against their reader and writer alone."""
    rng = np.random.default_rng(1)
    names = ("depth", "bow_height", "scope")
    drawn = {f"{name} [{UNIT['ft'].symbol}]" if name != "scope" else name: np.round(rng.uniform(3, 8, rows), 1) for name in names}
    table = pa.table({"boat": pa.array(np.arange(rows) % 200).cast(pa.string()), **drawn})
    arrow_csv.write_csv(table, folder / "in.csv")
    parquet.write_table(table, folder / "in.parquet")
    del table, drawn
    print(f"\nfiles, {rows:,} rows: reader and writer alone / the fleet command (its start included); peak memory")
    for ending, alone in ((".csv", _csv_alone), (".parquet", _parquet_alone)):
        source, target = folder / f"in{ending}", folder / f"out{ending}"
        began = time.perf_counter()
        done = subprocess.run([sys.executable, "-c", _RUN.format(source=str(source), target=str(target))], capture_output=True, check=True)
        ours = time.perf_counter() - began
        reading, writing = alone(source, target, folder / f"again{ending}")
        size = f"{source.stat().st_size / 1e6:.0f} MB in, {target.stat().st_size / 1e6:.0f} MB out"
        print(
            f"  {ending:<9}{size}: {ours:.1f} s; alone {reading:.1f} + {writing:.1f} s: {(reading + writing) / ours:.2f}; {float(done.stdout):.0f} MB"
        )


def _csv_alone(source: Path, target: Path, again: Path) -> tuple[float, float]:
    """Return the times of reading the source, and of writing what is in the target, batch by batch."""
    reading = writing = 0.0
    columns = arrow_csv.open_csv(source).schema.names
    options = arrow_csv.ConvertOptions(column_types=dict.fromkeys(columns, pa.string()))
    began = time.perf_counter()
    for _ in arrow_csv.open_csv(source, convert_options=options, parse_options=arrow_csv.ParseOptions(newlines_in_values=True)):
        pass
    reading = time.perf_counter() - began
    reader = arrow_csv.open_csv(target)
    with arrow_csv.CSVWriter(again, reader.schema) as writer:
        for batch in reader:
            began = time.perf_counter()
            writer.write(batch)
            writing += time.perf_counter() - began
    return reading, writing


def _parquet_alone(source: Path, target: Path, again: Path) -> tuple[float, float]:
    began = time.perf_counter()
    for _ in parquet.ParquetFile(source).iter_batches(batch_size=131_072):
        pass
    reading, writing = time.perf_counter() - began, 0.0
    file = parquet.ParquetFile(target)
    with parquet.ParquetWriter(again, file.schema_arrow) as writer:
        for batch in file.iter_batches(batch_size=131_072):
            began = time.perf_counter()
            writer.write_batch(batch)
            writing += time.perf_counter() - began
    return reading, writing


def main() -> None:
    """Measure all of it."""
    options = argparse.ArgumentParser()
    options.add_argument("--rows", type=int, default=2_000_000)
    options.add_argument("--file-rows", type=int, default=10_000_000)
    options.add_argument("--most", type=int, default=10_000_000)
    chosen = options.parse_args()
    closed_form(chosen.rows)
    catenary(chosen.rows // 4)
    linear(chosen.most)
    with tempfile.TemporaryDirectory() as folder:
        files(chosen.file_rows, Path(folder))


if __name__ == "__main__":
    main()
