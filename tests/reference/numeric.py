"""Solves traction limits and turns in place again, from other equations than the core's.

Reads cases as JSON from standard input and prints the solutions as JSON. The core takes moments about
the contact points and seeks the acceleration; here the balances are solved about the CG, as a linear
system, and the tractive force is sought. The core lets the turning centre fall out of a minimum of
lost power; here four wheels with velocity and force vectors are balanced in two equations.
"""

import json
import sys

try:
    import numpy as np
    from scipy.optimize import brentq, root
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")

GRAVITY = 9.81
EPS = float(np.finfo(float).eps)


def state(case, force):
    """Front load, rear load and acceleration for a tractive force."""
    m, a, b, h = case["m"], case["a"], case["L"] - case["a"], case["h"]
    weight, theta, f_r = m * GRAVITY, case["theta"], case["f_r"]
    drag, lift_f, lift_r = case["drag"], case["lift_front"], case["lift_rear"]
    # Unknowns: N_f, N_r, a_x. Across the road, along the road, about the CG (nose up positive).
    matrix = np.array(
        [
            [1.0, 1.0, 0.0],
            [-f_r, -f_r, -m],
            [a - f_r * h, -b - f_r * h, 0.0],
        ]
    )
    right = np.array(
        [
            weight * np.cos(theta) - lift_f - lift_r,
            drag + weight * np.sin(theta) - force,
            -force * h - drag * (case["drag_height"] - h) - lift_f * a + lift_r * b,
        ]
    )
    return np.linalg.solve(matrix, right)


def grip(case, load, motors, locked):
    """Most that an axle can push."""
    if motors == 0:
        return 0.0
    wheel = max(load, 0.0) / 2.0
    factor = 1.0 - case["k"] * (wheel / case["N_0"] - 1.0)
    left, right = (mu * factor * wheel for mu in (case["mu_left"], case["mu_right"]))
    return left + right if motors == 2 or locked else 2.0 * min(left, right)


def surplus(case, force):
    """What the axles can push beyond a tractive force; negative where a tyre would slip."""
    front_load, rear_load, _ = state(case, force)
    front = grip(case, front_load, case["motors"][0], case["locked"][0])
    rear = grip(case, rear_load, case["motors"][1], case["locked"][1])
    if case["share"] is None or 0 in case["motors"]:
        return front + rear - force
    return min(front - case["share"] * force, rear - (1.0 - case["share"]) * force)


def traction(case):
    """The largest acceleration, found from above on a grid and refined."""
    size = case["m"] * GRAVITY
    lift = brentq(lambda force: state(case, force)[0], -60.0 * size, 60.0 * size, xtol=1e-9, rtol=4 * EPS)
    if surplus(case, lift) >= 0.0:
        force = lift
    else:
        grid = np.linspace(lift, min(lift, 0.0) - 2.0 * size, 401)
        at = next(i for i, force in enumerate(grid) if surplus(case, force) >= 0.0)
        force = brentq(lambda f: surplus(case, f), grid[at], grid[at - 1], xtol=1e-10, rtol=4 * EPS)
    front_load, rear_load, acceleration = state(case, force)
    return {
        "acceleration": acceleration,
        "force": force,
        "front_load": front_load,
        "rear_load": rear_load,
        "front_lift": bool(force == lift),
    }


def wheels(case):
    """Position from the CG, share of the friction, direction and speed factor of each wheel."""
    a, b = case["a"], case["L"] - case["a"]
    weight = case["m"] * GRAVITY
    for x, load, track, mu, factor in (
        (a, weight * b / case["L"], case["t_f"], case["mu_f"], case["q"]),
        (-b, weight * a / case["L"], case["t_r"], case["mu_r"], 1.0),
    ):
        for side in (1.0, -1.0):
            # Yaw is anticlockwise: the left wheel (y > 0) runs backward.
            yield np.array([x, side * track / 2.0]), mu * load / 2.0, -side, factor


def patch_forces(case, centre, kappa):
    """Position and force of each patch, at one radian per second of yaw about (centre, 0)."""
    for position, friction, direction, factor in wheels(case):
        arm = position - np.array([centre, 0.0])
        hub = np.array([-arm[1], arm[0]])
        slip = hub - np.array([direction * factor * kappa, 0.0])
        yield position, -friction * slip / np.hypot(*slip), direction, slip, friction


def turn(case):
    """Turning centre and wheel speed ratio at which four patches balance."""
    length, track = case["L"], (case["t_f"] + case["t_r"]) / 2.0
    weight = case["m"] * GRAVITY

    def unbalanced(unknowns):
        lateral = moment = 0.0
        for position, force, *_ in patch_forces(case, unknowns[0] * length, unknowns[1] * length):
            lateral += force[1]
            moment += position[0] * force[1] - position[1] * force[0]
        return [lateral / weight, moment / weight / length]

    best = None
    for offset in (0.0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3):
        for stretch in (1.0, 0.7, 1.5):
            middle = case["a"] / length - 0.5
            start = [middle + offset, stretch * (track**2 + length**2) / (2.0 * track) / length]
            found = root(unbalanced, start, tol=1e-15)
            left = max(abs(rest) for rest in unbalanced(found.x))
            if best is None or left < best[0]:
                best = (left, found.x)
            if left < 1e-14:
                break
    left, unknowns = best
    if left > 1e-12:
        sys.exit(f"no balance found, {left} is left: {case}")
    centre, kappa = unknowns * length
    along, lost = [], 0.0
    for _, force, direction, slip, friction in patch_forces(case, centre, kappa):
        along.append(direction * force[0])
        lost += friction * np.hypot(*slip)
    return {
        "centre_behind_front": case["a"] - centre,
        "speed_ratio": kappa,
        "front_force": (along[0] + along[1]) / 2.0,
        "rear_force": (along[2] + along[3]) / 2.0,
        "energy": 2.0 * np.pi * lost,
    }


cases = json.load(sys.stdin)
answers = {
    "traction": [traction(case) for case in cases["traction"]],
    "turn_in_place": [turn(case) for case in cases["turn_in_place"]],
}
json.dump(answers, sys.stdout)
