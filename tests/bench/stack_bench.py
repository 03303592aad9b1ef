"""The kernels beside the same equations in NumPy, all members at once (Heun's method, of second order like the kernels, at the same
step), and in SciPy's integrator, member by member. Ratios of medians within one run say more than any one figure:

    cmake --preset bench -DTIERLOAM_TESTS=ON && cmake --build --preset bench --target model_bench stack_trajectories
    python3 tests/bench/stack_bench.py build-bench

Needs python3-numpy and python3-scipy. Exit 1 when a ratio is below its bar: 20 for NumPy, 1,000 for SciPy.
"""
import json
import os
import pathlib
import statistics
import subprocess
import sys
import time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS"):
    os.environ[name] = "1"  # one core each

import numpy as np
from scipy.integrate import solve_ivp

sys.path.insert(0, str(pathlib.Path(__file__).parent.parent / "reference"))
import stack_equations as eq
import stack_numerics as numerics

MEMBERS, FROM, DAYS, ROUNDS = 512, 160, 20, 5
BARS = dict(NumPy=20, SciPy=1000)


def kernels(folder):
    """Nanoseconds a member-day with three trays, without process noise."""
    answer = subprocess.run([folder / "tests/bench/model_bench", "--benchmark_filter=memberDay/avx2", "--benchmark_format=json"], check=True,
                            capture_output=True, text=True).stdout
    return 1e9 * json.loads(answer)["benchmarks"][0]["per_member_day"]


def at_work(folder):
    """Three trays that worms are at work in, all members."""
    text = subprocess.run([folder / "tests/reference/stack_trajectories", str(MEMBERS), "2", str(FROM)], check=True, capture_output=True, text=True).stdout
    year = numerics.Year(text.splitlines())
    shapes = numerics.Household(year, {})
    for day in sorted(day for day in year.acts if day < FROM):
        for word, rest in year.acts[day]:
            if word == "pour":
                continue
            shapes.y = None
            shapes.act(word, rest)
    y = np.hstack([year.state(m, FROM) for m in range(MEMBERS)])
    p = {name: np.array(values) for name, values in year.parameters.items()}
    return eq.Layout(len(shapes.shapes)), y, p, [s.as_dict() for s in shapes.shapes], shapes.around


def by_numpy(layout, y, p, shapes, around):
    step = 0.5
    begin = time.perf_counter()
    for _ in range(int(DAYS / step)):
        first = eq.derivative(y, layout, p, shapes, around)
        second = eq.derivative(np.maximum(y + step * first, 0.0), layout, p, shapes, around)
        y = np.maximum(y + 0.5 * step * (first + second), 0.0)
    seconds = time.perf_counter() - begin
    assert np.isfinite(y).all()
    return 1e9 * seconds / DAYS / MEMBERS


def by_scipy(member, layout, y, p, shapes, around):
    own = {name: values[member:member + 1] for name, values in p.items()}
    begin = time.perf_counter()
    answer = solve_ivp(lambda _, z: eq.derivative(z[:, None], layout, own, shapes, around)[:, 0], (0, DAYS), y[:, member], method="LSODA", rtol=1e-3,
                       atol=1e-6)
    seconds = time.perf_counter() - begin
    assert answer.success, answer.message
    return 1e9 * seconds / DAYS


def main():
    folder = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else "build-bench")
    given = at_work(folder)
    ours, numpy, scipy = [], [], []
    for round_ in range(ROUNDS):  # in turn, so that a busy machine slows all alike
        ours.append(kernels(folder))
        numpy.append(by_numpy(*given))
        scipy.append(by_scipy(round_ * 97, *given))
    kernel = statistics.median(ours)
    print(f"kernels            {kernel:12.0f} ns a member-day (of {', '.join(f'{x:.0f}' for x in ours)})")
    good = True
    for name, times in (("NumPy", numpy), ("SciPy", scipy)):
        median = statistics.median(times)
        ratio = median / kernel
        print(f"{name}              {median:12.0f} ns a member-day, {ratio:.0f} times the kernels (bar {BARS[name]})")
        good = good and ratio >= BARS[name]
    return 0 if good else 1


if __name__ == "__main__":
    sys.exit(main())
