"""The equations of the stack, written a second time, from the description of the model and not from the kernels, as one system of
ordinary differential equations with everything coupled at once. NumPy alone; all functions take arrays whose last axis is members.

Units: kg dry matter, kg live worm mass, kg water, m², days, °C. Rows of the state are named by `Layout`.
"""
import numpy as np

CLASSES = 8             # soft mix coffee paper cardboard wood coir mineral
MASSES = 16             # geometric, 4 mg to 1.6 g
SOFTENING = np.array([0.25, 0.12, 0.05, 0.02, 0.015, 0.003, 0.002, 0.0])
FOOD_CLASSES = 3        # the first three take the food scale, the others the paper scale
DRY_PER_LIVE = 0.18
GROWTH_COST = 0.66
SHRINK_YIELD = 0.44
HELD_SOFTENED, HELD_CASTINGS = 3.0, 2.6
COCOON = 14.3e-6
HATCHLING = 5.3e-6
MATURITY = 0.28e-3

ADULT_GROWTH_MOST = 0.014  # g LW/d of an adult of 1 g at 25 C
MASS = 4e-6 * (1.6e-3 / 4e-6) ** (np.arange(MASSES) / (MASSES - 1))
GRAMS = MASS * 1000.0
STEP = np.log(MASS[1] / MASS[0])
ADULT = 1.0 - np.clip(np.log(MATURITY / MASS) / STEP + 0.5, 0.0, 1.0)
GAP_UP = np.append(np.diff(MASS), np.inf)      # none leaves the top class upwards
GAP_DOWN = np.append(MASS[0], np.diff(MASS))   # from the lowest class down is death
TWO_THIRDS, THREE_QUARTERS, CUBE_ROOT = GRAMS ** (2 / 3), GRAMS ** 0.75, GRAMS ** (1 / 3)


class Layout:
    """Where each pool stands in the state of a stack with so many trays, from slot 1 up."""
    TRAY = dict(F=slice(0, 8), H=8, C=9, carbon=10, salts=11, E=slice(12, 16), water=16, share=17, tracer=18)
    TRAY_ROWS = 19
    STACK = dict(n=slice(0, 16), R=16, worm_carbon=17, bed=18, mean_warmth=19, into_sump=20, evaporated=21, respired=22)
    STACK_ROWS = 23

    def __init__(self, trays):
        self.trays = trays
        self.rows = trays * self.TRAY_ROWS + self.STACK_ROWS

    def tray(self, y, t):
        return y[t * self.TRAY_ROWS:(t + 1) * self.TRAY_ROWS]

    def stack(self, y):
        return y[self.trays * self.TRAY_ROWS:]


def rosso(t, coldest, best, hottest):
    """Cardinal temperature curve, 0 outside."""
    top = (t - hottest) * (t - coldest) ** 2
    bottom = (best - coldest) * ((best - coldest) * (t - best) - (best - hottest) * (best + coldest - 2 * t))
    inside = (t > coldest) & (t < hottest)
    return np.where(inside, top / np.where(inside, bottom, 1.0), 0.0)


def vapour_pressure(t):
    """kPa; FAO Irrigation and Drainage Paper 56, eq. 11."""
    return 0.6108 * np.exp(17.27 * t / (t + 237.3))


def heat_and_cold_death(t):
    low = 0.02 * (0.15 / 0.02) ** ((t - 33) / 2)
    high = 0.15 * (0.7 / 0.15) ** ((t - 35) / 3)
    heat = np.where(t < 31, 0.0, np.where(t < 35, low, high))
    cold = np.where(t > 3, 0.0, 0.02 * (0.3 / 0.02) ** ((1 - t) / 2))
    return heat + cold


def derivative(y, layout, p, trays, surroundings):
    """dy/dt, y of shape [rows, members].

    p             parameters by name, each [members]
    trays         per tray: held[8], carbon_share[8], tracer_class, drying
    surroundings  area, height, temperature (usual, with the season), humidity, lid_off
    """
    d = np.zeros_like(y)
    at, dat = layout.stack(y), layout.stack(d)
    S, T = Layout.STACK, Layout.TRAY
    area = surroundings["area"]
    n, R, bed = at[S["n"]], at[S["R"]], at[S["bed"]]
    live = MASS @ n
    cocoons = sum(layout.tray(y, t)[T["E"]].sum(axis=0) for t in range(layout.trays))
    tiny = 1e-300

    # Temperature of rates.
    q10 = 2.0 ** ((np.minimum(bed, 60.0) - 25) / 10)
    arrhenius = np.exp(0.25 / 8.617333262e-5 * (1 / 298.15 - 1 / (bed + 273.15)))
    growth = rosso(bed, p["coldest"], p["best"], p["hottest"]) / rosso(25.0, p["coldest"], p["best"], p["hottest"])
    laying = rosso(bed, 5.0, 24.0, 33.0) / rosso(25.0, 5.0, 24.0, 33.0)

    cap = 1e-3 * p["ingestion"] * growth * (TWO_THIRDS @ n)   # kg DM/d of all worms, unlimited
    respired = np.zeros_like(R)
    air_share = np.zeros_like(R)
    eaten_all = np.zeros_like(R)
    eaten_carbon = np.zeros_like(R)
    here_death, preference = [], []
    for t in range(layout.trays):
        tray, dt, shape = layout.tray(y, t), layout.tray(d, t), trays[t]
        F, H, C, share, water = tray[T["F"]], tray[T["H"]], tray[T["C"]], tray[T["share"]], tray[T["water"]]
        # Softening.
        density = share * live / area
        factor = q10 * (0.30 + p["worm_factor"] * density / (density + 0.5))
        scale = np.vstack([np.tile(p["softening_food"], (FOOD_CLASSES, 1)), np.tile(p["softening_paper"], (CLASSES - FOOD_CLASSES, 1))])
        rate = SOFTENING[:, None] * scale * factor
        softened = rate * F
        of_softening = p["respired_softening"] * softened
        of_h = 0.006 * q10 * H
        of_c = p["castings_respiration"] * q10 * C
        dt[T["F"]] -= softened
        if shape["tracer_class"] >= 0:
            dt[T["tracer"]] -= rate[shape["tracer_class"]] * tray[T["tracer"]]
        breathed = of_softening.sum(axis=0) + of_h + of_c
        rest = np.maximum(tray[T["carbon"]] - shape["carbon_share"] @ F, 0.0)
        rest_share = rest / (H + C + tiny)
        dt[T["H"]] += (softened - of_softening).sum(axis=0) - of_h
        dt[T["C"]] -= of_c
        dt[T["carbon"]] -= shape["carbon_share"] @ of_softening + (of_h + of_c) * rest_share
        dt[T["water"]] += 0.6 * breathed
        respired = respired + breathed
        # Air and moisture.
        x = (of_softening.sum(axis=0) + of_h) / area
        air = 1 / (1 + (x / p["air_half"]) ** 4)
        capacity = p["field_capacity"] * (shape["held"] @ F + HELD_SOFTENED * H + HELD_CASTINGS * C)
        w = water / (capacity + tiny)
        wet = np.minimum(np.clip((w - 0.35) / 0.3, 0, 1), np.maximum(1 - 2.8 * (w - 1.05), 0.3))
        air_share = air_share + share * air
        here_death.append(0.06 * np.maximum(0.5 - air, 0.0) + np.where(wet <= 0, 0.05, 0.0))
        # Ingestion.
        eaten = share * cap * wet * air * H / (H + p["half_saturation"] * area)
        dt[T["H"]] -= eaten
        dt[T["C"]] += (1 - p["assimilation"]) * eaten
        dt[T["carbon"]] -= p["assimilation"] * eaten * rest_share
        dt[T["salts"]] += p["salt_yield"] * eaten
        eaten_all = eaten_all + eaten
        eaten_carbon = eaten_carbon + p["assimilation"] * eaten * rest_share
        # Where worms would be.
        fresh = F.sum(axis=0) + H
        preference.append(0.15 + (H / area) / (H / area + 0.3) + 0.4 * np.where(fresh + C > 0, fresh / (fresh + C + tiny), 1.0))

    # Energy.
    mobilised = p["reserve_rate"] * R
    per_worm = mobilised * TWO_THIRDS[:, None] / (TWO_THIRDS @ n + tiny)
    need = 1e-3 * p["maintenance"] * arrhenius * THREE_QUARTERS[:, None]
    surplus = np.maximum(per_worm - need, 0.0)
    deficit = np.maximum(need - per_worm, 0.0)
    crowd = live / (area * layout.trays)
    heaviest = 1.6 / (1 + crowd / p["crowding_growth"])       # g
    use = np.minimum(1.0, 2 * np.maximum(0.0, 1 - CUBE_ROOT[:, None] / heaviest ** (1 / 3)))
    of_young = surplus * use
    of_adult = np.minimum((1 - p["laying_share"]) * of_young, 1e-3 * ADULT_GROWTH_MOST * GROWTH_COST * growth * TWO_THIRDS[:, None])
    gain = of_young + ADULT[:, None] * (of_adult - of_young)
    up = n * gain / (GROWTH_COST * GAP_UP[:, None])
    down = n * deficit / (SHRINK_YIELD * GAP_DOWN[:, None])
    dn = dat[S["n"]]
    dn -= up + down
    dn[1:] += up[:-1]
    dn[:-1] += down[1:]
    stored = up[:-1].T @ GAP_UP[:-1] - down.T @ GAP_DOWN
    per_adult = np.minimum((surplus - of_adult) / (GROWTH_COST * COCOON) * np.exp(-(crowd / p["crowding_laying"]) ** 2) * laying * air_share,
                           0.7 / 0.5e-3 * MASS[:, None])
    laid = (ADULT[:, None] * n * per_adult).sum(axis=0)
    breathed = mobilised - DRY_PER_LIVE * stored - DRY_PER_LIVE * COCOON * laid
    pool = DRY_PER_LIVE * live + R + DRY_PER_LIVE * COCOON * cocoons
    worm_share = at[S["worm_carbon"]] / (pool + tiny)
    respired = respired + breathed
    dat[S["R"]] += p["assimilation"] * eaten_all - mobilised
    dat[S["worm_carbon"]] += eaten_carbon - breathed * worm_share

    # Cocoons.
    stage = np.where((bed >= 8) & (bed <= 32), 4 * (bed - 6) / p["incubation"], 0.0)
    each = np.minimum(HATCHLING, COCOON / p["young"])
    upper = np.maximum(each - MASS[0], 0.0) / GAP_UP[0]
    lower = np.where(each < MASS[0], each / MASS[0], 1 - upper)
    young = p["hatch_success"] * p["young"]
    left = np.maximum(DRY_PER_LIVE * (COCOON - young * (lower * MASS[0] + upper * MASS[1])), 0.0)
    for t in range(layout.trays):
        tray, dt = layout.tray(y, t), layout.tray(d, t)
        E, dE = tray[T["E"]], dt[T["E"]]
        dE -= stage * E
        dE[1:] += stage * E[:-1]
        dE[0] += laid * tray[T["share"]]
        ended = stage * E[3]
        dn[0] += ended * young * lower
        dn[1] += ended * young * upper
        dt[T["H"]] += ended * left
        dt[T["carbon"]] += ended * left * worm_share
        dat[S["worm_carbon"]] -= ended * left * worm_share
        dt[T["water"]] += 0.6 * breathed * tray[T["share"]]

    # Death.
    unmet = (n * deficit).sum(axis=0) / ((n * need).sum(axis=0) + tiny)
    everywhere = p["death"] + 0.01 * unmet + heat_and_cold_death(bed)
    for t in range(layout.trays):
        tray, dt = layout.tray(y, t), layout.tray(d, t)
        rate = tray[T["share"]] * (everywhere + here_death[t])
        dead = rate * (R + DRY_PER_LIVE * live)
        dn -= rate * n
        dat[S["R"]] -= rate * R
        dt[T["H"]] += dead
        dt[T["carbon"]] += dead * worm_share
        dat[S["worm_carbon"]] -= dead * worm_share

    # Where worms are.
    open_trays = [t for t in range(layout.trays) if not trays[t]["drying"]]
    wanted = sum(preference[t] for t in open_trays) if open_trays else None
    staying = sum(layout.tray(y, t)[T["share"]] for t in open_trays)
    if open_trays:
        leaving = 0.0
        for t in range(layout.trays):
            if not trays[t]["drying"]:
                continue
            tray = layout.tray(y, t)
            capacity = p["field_capacity"] * (trays[t]["held"] @ tray[T["F"]] + HELD_SOFTENED * tray[T["H"]] + HELD_CASTINGS * tray[T["C"]])
            slow = np.where((not surroundings["lid_off"]) | (tray[T["water"]] > 1.05 * capacity), 1.5, 1.0)
            gone = tray[T["share"]] / (p["light_drying"] * slow)
            layout.tray(d, t)[T["share"]] -= gone
            leaving = leaving + gone
        for t in open_trays:
            part = preference[t] / wanted
            layout.tray(d, t)[T["share"]] += (part * staying - layout.tray(y, t)[T["share"]]) / 3 + leaving * part

    # Water: the highest tray evaporates, all drain. Own heat and evaporation depend on each other, since the air is read off the bed.
    conductance = 2.4 * (2 * area + 4 * np.sqrt(area) * surroundings["height"] * layout.trays)
    top = layout.tray(y, layout.trays - 1)
    dry = top[T["F"]].sum(axis=0) + top[T["H"]] + top[T["C"]]
    # What air-dry matter holds, 12 % of moisture, stays.
    free = np.maximum(top[T["water"]] - 0.136 * dry, 0.0) / np.maximum(0.60 * (top[T["water"]] + dry) - 0.136 * dry, tiny)
    k = 1.6 if surroundings["lid_off"] else p["evaporation"]
    evaporation = np.zeros_like(R)
    for _ in range(40):
        warmth = np.minimum((17e6 * respired - 2.45e6 * evaporation) / 86400 / conductance, 80.0)
        demand = np.maximum(vapour_pressure(bed) - surroundings["humidity"] * vapour_pressure(bed - warmth), 0.0)
        before, evaporation = evaporation, k * area * demand * np.minimum(1.0, free)
        if np.max(np.abs(evaporation - before)) < 1e-14:
            break
    layout.tray(d, layout.trays - 1)[T["water"]] -= evaporation
    for t in range(layout.trays - 1, -1, -1):
        tray, dt = layout.tray(y, t), layout.tray(d, t)
        capacity = p["field_capacity"] * (trays[t]["held"] @ tray[T["F"]] + HELD_SOFTENED * tray[T["H"]] + HELD_CASTINGS * tray[T["C"]])
        out = np.maximum(tray[T["water"]] - capacity, 0.0) / 0.5
        salts_out = tray[T["salts"]] * out / (tray[T["water"]] + tiny)
        dt[T["water"]] -= out
        dt[T["salts"]] -= salts_out
        if t > 0:
            below = layout.tray(d, t - 1)
            below[T["water"]] += out
            below[T["salts"]] += salts_out
        else:
            dat[S["into_sump"]] += out

    dat[S["bed"]] += (surroundings["temperature"] - at[S["mean_warmth"]] + warmth - bed) / 0.5
    dat[S["mean_warmth"]] += (warmth - at[S["mean_warmth"]]) / 30
    dat[S["evaporated"]] += evaporation
    dat[S["respired"]] += respired
    return d
