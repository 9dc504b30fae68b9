"""Shares torque between two axles again with scipy's minimisers, from the loss model written out anew.

Reads cases as JSON from standard input and prints the least loss (or, braking, the most power brought
back) and the torques as JSON. The core has a closed form; here each way of driving is searched.
"""

import json
import sys

try:
    from scipy.optimize import minimize, minimize_scalar
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")


def motor(case, kind, speed):
    """Loss of one motor as a function of its torque, and its most torque."""
    base = case["power"] / case["torque"]
    w = speed / base
    flux = min(1.0, 1.0 / w) if w > 0 else 1.0
    iron = case["power"] * (case["hysteresis"] * w + case["eddy"] * w**2)
    drag = case["power"] * (case["bearing"] * w + case["windage"] * w**3)

    def loss(torque):
        part = torque / case["torque"]
        if kind == "permanent_magnet":
            field = iron * flux**2 + case["power"] * case["weakening"] * (1.0 - flux) ** 2
            return case["power"] * case["copper_magnet"] * part**2 + field + drag
        if torque == 0.0:
            return drag
        field = (iron + case["power"] * case["magnetising"]) * flux**2
        return case["power"] * case["copper_induction"] * (part / flux) ** 2 + field + drag

    return loss, min(case["torque"], case["power"] / speed)


def axle(case, at, speed):
    count = case["motors"][at]
    if count == 0:
        return (lambda torque: 0.0), 0.0
    loss, most = motor(case, case["machines"][at], speed)

    def of(torque):
        if torque <= 0.0 and case["disconnect"][at]:
            return 0.0
        return count * loss(torque / count)

    return of, count * most


def running(loss):
    """The loss of an axle that runs, also where its torque goes to nothing."""
    tiny = 1e-12
    return lambda torque: loss(max(torque, tiny))


def drive(case):
    speed, torque = case["speed"], case["wanted"]
    (front, most_f), (rear, most_r) = (axle(case, at, speed) for at in (0, 1))
    ways = []
    if torque <= most_f:
        ways.append((front(torque) + rear(0.0), torque, 0.0))
    if torque <= most_r:
        ways.append((front(0.0) + rear(torque), 0.0, torque))
    low, high = max(0.0, torque - most_r), min(torque, most_f)
    if most_f > 0.0 and most_r > 0.0 and low < high:
        f, r = running(front), running(rear)
        found = minimize_scalar(
            lambda t: f(t) + r(torque - t), bounds=(low, high), method="bounded",
            options={"xatol": 1e-9 * torque},
        )
        ends = [(f(t) + r(torque - t), t) for t in (found.x, low, high)]
        loss, t = min(ends)
        ways.append((loss, t, torque - t))
    return min(ways) if ways else None


def brake(case):
    speed, torque = case["speed"], case["wanted"]
    (front, most_f), (rear, most_r) = (axle(case, at, speed) for at in (0, 1))

    def gain(f, r, lf, lr):
        return lf(f) + lr(r) - (f + r) * speed

    ways = [(gain(0.0, 0.0, front, rear), 0.0, 0.0)]
    for at, most in ((0, most_f), (1, most_r)):
        top = min(torque, most)
        if top <= 0.0:
            continue
        lf, lr = (running(front), rear) if at == 0 else (front, running(rear))

        def alone(t, at=at, lf=lf, lr=lr):
            return gain(t, 0.0, lf, lr) if at == 0 else gain(0.0, t, lf, lr)

        found = minimize_scalar(alone, bounds=(0.0, top), method="bounded", options={"xatol": 1e-9 * top})
        value, t = min((alone(x), x) for x in (found.x, top))
        ways.append((value, t, 0.0) if at == 0 else (value, 0.0, t))
    if most_f > 0.0 and most_r > 0.0:
        f, r = running(front), running(rear)
        scale = max(1.0, torque * speed)
        for start in (0.2, 0.5, 0.8):
            found = minimize(
                lambda x: gain(x[0] * torque, x[1] * torque, f, r) / scale,
                [start * min(1.0, most_f / torque), (1 - start) * min(1.0, most_r / torque)],
                method="SLSQP",
                bounds=[(0.0, most_f / torque), (0.0, most_r / torque)],
                constraints=[{"type": "ineq", "fun": lambda x: 1.0 - x[0] - x[1]}],
                options={"ftol": 1e-14, "maxiter": 500},
            )
            x = [max(0.0, v) * torque for v in found.x]
            over = max(1.0, (x[0] + x[1]) / torque)
            x = [v / over for v in x]
            ways.append((gain(x[0], x[1], f, r), x[0], x[1]))
    return min(ways)


cases = json.load(sys.stdin)
print(json.dumps([drive(case) if case["drives"] else brake(case) for case in cases]))
