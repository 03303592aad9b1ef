"""Holds the kernels' year of a household against a stiff general-purpose solver (SciPy, tolerance 1e-10) on the same equations, written
a second time in stack_equations.py. Each act restarts the solver.

    python3 tests/reference/stack_numerics.py --program BUILD/tests/reference/stack_trajectories --members 20

The error of a quantity is |x − reference| ÷ the running maximum of |reference|, or ÷ its resolution below that nobody could tell anything
apart (`RESOLUTION`: 10 g of a pool of a tray and the like); it must stay at 1 % or below on every day of the year
(`LOOSE` quantities 5 %).
With --mutate one rate of the reference is changed by 5 %, and the comparison must fail: exit 0 when it does.
"""
import argparse
import subprocess
import sys

import numpy as np
from scipy.integrate import solve_ivp

import stack_equations as eq

BOUND = 0.01
# By the last word of a quantity's name; below it nobody could tell anything apart. Without it the first thousandth of a cocoon or the first
# drop in the sump would count as much as a tray full of castings.
RESOLUTION = dict(unprocessed=0.01, mix=0.01, grounds=0.01, paper=0.01, cardboard=0.01, castings=0.02, tracer=0.01, carbon=0.01, water=0.05,
                  salts=1e-3, share=0.01, cocoons=100.0, sump=0.5, evaporated=0.1, respired=0.01)
# What drains is a small difference of large pools, and laying begins where a surplus passes nothing: these may be off by more.
LOOSE_BOUND = 0.05
LOOSE = ("salts", "sump", "cocoons")
# H alone is what worms leave of what softens, a few grams that turn over within hours; it is said, and bounded with F as `unprocessed`.
UNBOUNDED = ("softened",)
T, S = eq.Layout.TRAY, eq.Layout.STACK


class Year:
    """What stack_trajectories wrote: parameters, acts by day and states by (member, day)."""

    def __init__(self, lines):
        self.parameters, self.acts, self.states = {}, {}, {}
        self.area = self.height = None
        for line in lines:
            word, *rest = line.split()
            if word == "parameter":
                self.parameters.setdefault(rest[0], []).append(float(rest[2]))
            elif word == "area":
                self.area = float(rest[0])
            elif word == "height":
                self.height = float(rest[0])
            elif word == "state":
                day, member, slot = map(int, rest[:3])
                self.states.setdefault((member, day), {})[slot] = np.array(rest[3:], float)
            else:
                self.acts.setdefault(int(rest[0]), []).append((word, rest[1:]))
        self.last = max(day for _, day in self.states)

    def state(self, member, day):
        parts = self.states[member, day]
        trays = len(parts) - 1
        return np.concatenate([parts[t] for t in range(trays)] + [parts[-1]])[:, None]

    def of_member(self, member):
        return {name: np.array([values[member]]) for name, values in self.parameters.items()}


class Shapes:
    """Means that all members of a tray share, weighted by the dry matter that went in."""

    def __init__(self):
        self.held, self.carbon_share, self.weight = np.zeros(8), np.zeros(8), np.zeros(8)
        self.tracer_class, self.drying = -1, False

    def add(self, c, dry, held, carbon):
        total = self.weight[c] + dry
        self.held[c] = (self.held[c] * self.weight[c] + held * dry) / total
        self.carbon_share[c] = (self.carbon_share[c] * self.weight[c] + carbon * dry) / total
        self.weight[c] = total

    def as_dict(self):
        return dict(held=self.held, carbon_share=self.carbon_share, tracer_class=self.tracer_class, drying=self.drying)


class Household:
    """The reference: one or more members, state y [rows, members]; acts done to it as the people of the journal do."""

    def __init__(self, year, p):
        self.year, self.p, self.shapes = year, p, []
        self.y = None
        self.around = dict(area=year.area, height=year.height, temperature=20.0, humidity=0.55, lid_off=False)

    def layout(self):
        return eq.Layout(len(self.shapes))

    def act(self, word, rest):
        layout = self.layout()
        if word == "usual":
            self.around["temperature"] = float(rest[0])
        elif word == "tray":
            for shape in self.shapes:
                shape.drying = False
            self.shapes.append(Shapes())
            if self.y is not None:
                stack = layout.stack(self.y)
                empty = np.zeros((layout.TRAY_ROWS, self.y.shape[1]))
                self.y = np.vstack([self.y[:-layout.STACK_ROWS], empty, stack])
        elif word in ("bed", "feed"):
            slot, c, (dry, held, carbon, water) = int(rest[0]), int(rest[1]), map(float, rest[2:])
            self.shapes[slot].add(c, dry, held, carbon)
            if self.y is not None:
                tray = layout.tray(self.y, slot)
                tray[T["F"]][c] += dry
                tray[T["carbon"]] += dry * carbon
                tray[T["water"]] += water
                if word == "feed":
                    tray[T["tracer"]] = dry
            if word == "feed":
                self.shapes[slot].tracer_class = c
        elif word == "pour":
            slot, litres = int(rest[0]), float(rest[1])
            shape, tray = self.shapes[slot], layout.tray(self.y, slot)
            capacity = self.p["field_capacity"] * (shape.held @ tray[T["F"]] + eq.HELD_SOFTENED * tray[T["H"]] + eq.HELD_CASTINGS * tray[T["C"]])
            through = np.maximum(litres - np.maximum(capacity - tray[T["water"]], 0.0), 0.0) * self.p["bypass"]
            tray[T["salts"]] *= 1 - through / (tray[T["water"]] + litres)
            tray[T["water"]] += litres - through
            layout.stack(self.y)[S["into_sump"]] += through
        elif word == "rotate":
            self.shapes.append(self.shapes.pop(0))
            self.shapes[-1].drying = True
            rows = layout.TRAY_ROWS
            self.y = np.vstack([self.y[rows:-layout.STACK_ROWS], self.y[:rows], layout.stack(self.y)])
            self.around["lid_off"] = True
        elif word == "harvest":
            top = len(self.shapes) - 1
            stack, tray = layout.stack(self.y), layout.tray(self.y, top)
            dry = lambda t: eq.DRY_PER_LIVE * eq.COCOON * layout.tray(self.y, t)[T["E"]].sum(axis=0)
            live = eq.DRY_PER_LIVE * (eq.MASS @ stack[S["n"]]) + stack[S["R"]]
            pool = live + sum(dry(t) for t in range(top + 1))
            share = tray[T["share"]].copy()
            stack[S["worm_carbon"]] *= 1 - (dry(top) + share * live) / pool
            stack[S["n"]] *= 1 - share
            stack[S["R"]] *= 1 - share
            for t in range(top):
                layout.tray(self.y, t)[T["share"]] /= 1 - share
            self.y = np.vstack([self.y[:top * layout.TRAY_ROWS], stack])
            self.shapes.pop()
            self.around["lid_off"] = False
        else:
            raise ValueError(f"unknown act: {word}")

    def derivative(self):
        layout, shapes, around, p = self.layout(), [s.as_dict() for s in self.shapes], dict(self.around), self.p
        return lambda y: eq.derivative(y, layout, p, shapes, around)


def slopes(f, z, scale):
    """The Jacobian by differences, all columns in one call: the equations take them as so many members."""
    step = 1e-7 * np.maximum(np.abs(z), 1.0)
    columns = np.column_stack([z, z[:, None] + np.diag(step)])
    rates = f(columns * scale[:, None]) / scale[:, None]
    return (rates[:, 1:] - rates[:, :1]) / step


def solve(household, member, year, days, method, tolerance):
    """The state after each day, acts done; yields (day, layout, y)."""
    household.y = None
    for word, rest in year.acts[0]:
        # The stack as first set up is given; feedings of that day, were there any, would be in it.
        household.act(word, rest)
    household.y = year.state(member, 0)
    act_days = sorted(day for day in year.acts if 0 < day < days) + [days]
    begin = 0
    for end in act_days:
        f = household.derivative()
        scale = np.maximum(np.abs(household.y[:, 0]), 1e-6)
        # Relative to a size of each row, so that small pools are as exact as large ones.
        answer = solve_ivp(lambda _, z: f((z * scale)[:, None])[:, 0] / scale, (begin, end), household.y[:, 0] / scale, method=method, rtol=tolerance,
                           atol=tolerance, t_eval=np.arange(begin + 1, end + 1), jac=lambda _, z: slopes(f, z, scale))
        if not answer.success:
            raise RuntimeError(f"solver stopped on day {answer.t[-1] if len(answer.t) else begin}: {answer.message}")
        for day, z in zip(answer.t, answer.y.T):
            household.y = (z * scale)[:, None]
            yield int(round(day)), household.layout(), household.y
        for word, rest in year.acts.get(end, []):
            household.act(word, rest)
        begin = end


def quantities(layout, y):
    """What is compared, by name."""
    stack = layout.stack(y)[:, 0]
    n = stack[S["n"]]
    found = {"colony": eq.MASS @ n, "worms": n.sum(), "adults": eq.ADULT @ n, "reserve": stack[S["R"]], "worm carbon": stack[S["worm_carbon"]],
             "bed temperature": stack[S["bed"]], "into sump": stack[S["into_sump"]], "evaporated": stack[S["evaporated"]],
             "respired": stack[S["respired"]]}
    for t in range(layout.trays):
        tray = layout.tray(y, t)[:, 0]
        F = tray[T["F"]]
        for name, c in (("mix", 1), ("grounds", 2), ("paper", 3), ("cardboard", 4)):
            found[f"tray {t + 1} {name}"] = F[c]
        found[f"tray {t + 1} unprocessed"] = tray[T["H"]] + F[:5].sum()
        found[f"tray {t + 1} softened"] = tray[T["H"]]
        found[f"tray {t + 1} castings"] = tray[T["C"]]
        found[f"tray {t + 1} carbon"] = tray[T["carbon"]]
        found[f"tray {t + 1} salts"] = tray[T["salts"]]
        found[f"tray {t + 1} cocoons"] = tray[T["E"]].sum()
        found[f"tray {t + 1} water"] = tray[T["water"]]
        found[f"tray {t + 1} share"] = tray[T["share"]]
        found[f"tray {t + 1} tracer"] = tray[T["tracer"]]
    return found


def compare(year, member, days, method, tolerance, mutate=None):
    """Worst error of each quantity: (error, day)."""
    p = year.of_member(member)
    if mutate:
        p[mutate] = p[mutate] * 1.05
    household = Household(year, p)
    largest, worst, trays = {}, {}, None
    for day, layout, y in solve(household, member, year, days, method, tolerance):
        ours = quantities(layout, year.state(member, day))
        if trays is not None and layout.trays != trays:
            largest = {name: size for name, size in largest.items() if not name.startswith("tray")}  # slots are renamed
        trays = layout.trays
        for name, reference in quantities(layout, y).items():
            largest[name] = max(largest.get(name, RESOLUTION.get(name.split()[-1], 1e-9)), abs(reference))
            error = abs(ours[name] - reference) / largest[name]
            if not error <= worst.get(name, (-1.0, 0))[0]:
                worst[name] = (error, day)
    return worst


def bound_of(name):
    return LOOSE_BOUND if name.endswith(LOOSE) else BOUND


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--program", required=True)
    parser.add_argument("--members", type=int, default=3)
    parser.add_argument("--days", type=int, default=365)
    parser.add_argument("--steps", type=int, default=2, help="steps a day of the kernels")
    parser.add_argument("--method", default="LSODA")
    parser.add_argument("--tolerance", type=float, default=1e-10)
    parser.add_argument("--mutate", help="parameter of the reference to change by 5 %%; then the comparison must fail")
    parser.add_argument("--all", action="store_true", help="say the error of every quantity")
    options = parser.parse_args()
    text = subprocess.run([options.program, str(options.members), str(options.steps), str(options.days)], check=True, capture_output=True, text=True).stdout
    year = Year(text.splitlines())
    overall = 0.0
    for member in range(options.members):
        worst = compare(year, member, options.days, options.method, options.tolerance, options.mutate)
        unbounded = max(error for name, (error, _) in worst.items() if name.endswith(UNBOUNDED))
        ranked = sorted(((name, at) for name, at in worst.items() if not name.endswith(UNBOUNDED)), key=lambda item: -item[1][0] / bound_of(item[0]))
        strained = [at[0] / bound_of(name) for name, at in ranked]
        overall = max(overall, *strained) if not np.isnan(strained).any() else np.inf
        print(f"member {member}: softened matter alone, not bounded: {100 * unbounded:.3f} %")
        for name, (error, day) in ranked if options.all else ranked[:3]:
            print(f"member {member}: {name}: {100 * error:.3f} % on day {day}", flush=True)
    print(f"worst of {options.members} members over {options.days} days at {options.steps} steps a day: {overall:.2f} of the bound "
          f"({100 * BOUND:g} %; {100 * LOOSE_BOUND:g} % for {', '.join(LOOSE)})")
    within = overall <= 1.0
    if options.mutate:
        print("the changed rate was seen" if not within else "the changed rate was NOT seen")
        return 0 if not within else 1
    return 0 if within else 1


if __name__ == "__main__":
    sys.exit(main())
