"""Runs spin-ups again with scipy's solve_ivp, from the equations of motion written out anew.

Reads cases as JSON from standard input and prints times, places and the yaw rate as JSON. The core takes
explicit steps of order five; here LSODA does it with a tight tolerance and scipy's own event location.
The wheel loads are found here by iteration to a fixed point, not by Newton's steps.
"""

import json
import math
import sys

try:
    from scipy.integrate import solve_ivp
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")

GRAVITY = 9.81
WHEEL_TIME, DAMPING_TIME, RENEWAL, LEAST_SPINNING = 0.05, 0.005, 5e-4, 5e-4
# Front left, front right, rear left, rear right.
SIDES = (1.0, -1.0, 1.0, -1.0)


class Car:
    def __init__(self, case):
        self.c = c = case
        self.m, self.L, self.a, self.h = c["m"], c["L"], c["a"], c["h"]
        self.b = self.L - self.a
        self.W = self.m * GRAVITY
        tracks = (c["t_f"], c["t_f"], c["t_r"], c["t_r"])
        self.x = (self.a, self.a, -self.b, -self.b)
        self.y = [0.5 * side * track for side, track in zip(SIDES, tracks)]
        self.driven = [c["driven"][0]] * 2 + [c["driven"][1]] * 2
        least = LEAST_SPINNING * self.m * c["R"] ** 2
        self.J = [max(c["J_w"] + (c["J_m"] * c["i"] ** 2 if on else 0.0), least) for on in self.driven]
        self.I = self.m * self.a * self.b
        self.theta = math.atan(c["grade"])

    def loads(self, grips):
        """Wheel loads that fit the forces which they make; grips are forces over mu-corrected load."""
        c = self.c
        weight = self.W * math.cos(self.theta)
        front = weight * self.b / self.L
        S_x = S_y = 0.0
        for _ in range(200):
            moved = self.h / self.L * S_x
            half = (0.5 * (front - moved), 0.5 * (weight - front + moved))
            right = (c["phi"] * self.h / c["t_f"] * S_y, (1.0 - c["phi"]) * self.h / c["t_r"] * S_y)
            N = [half[0] - right[0], half[0] + right[0], half[1] - right[1], half[1] + right[1]]
            F = []
            for load, grip in zip(N, grips):
                n = load * max(1.0 - c["k"] * (load / c["N_0"] - 1.0), 0.1)
                F.append((n * grip[0], n * grip[1]))
            new_x, new_y = sum(f[0] for f in F), sum(f[1] for f in F)
            done = abs(new_x - S_x) + abs(new_y - S_y) < 1e-12 * self.W
            S_x, S_y = new_x, new_y
            if done:
                break
        return F

    def motor(self, omega):
        """Torque that a motor brings to its wheel."""
        speed = abs(omega) * self.c["i"]
        return self.c["i"] * self.c["eta"] * min(self.c["T"], self.c["P"] / speed if speed > 0.0 else math.inf)

    def rates(self, _, s):
        c = self.c
        x, y, psi, u, v, r = s[:6]
        R, lam, peak = c["R"], c["relaxation"], c["peak_slip"]
        dy = [0.0] * 18
        grips, slides = [], []
        for n in range(4):
            forward, left = u - r * self.y[n], v + r * self.x[n]
            tread = R * s[6 + n]
            # The tread's own motion over the ground, against which friction acts.
            e_x, e_y = tread - forward, -left
            carry = max(abs(tread), math.hypot(e_x, e_y))
            # The relaxation length falls as the slip grows.
            per = math.sqrt(1.0 + (s[10 + n] / peak) ** 2 + (s[14 + n] / peak) ** 2) / lam
            if carry * per * RENEWAL > 1.0:
                per = 1.0 / (carry * RENEWAL)
            rate = ((e_x - carry * s[10 + n]) * per, (e_y - carry * s[14 + n]) * per)
            dy[10 + n], dy[14 + n] = rate
            lead = min(DAMPING_TIME, 1.0 / (carry * per)) if carry > 0.0 else DAMPING_TIME
            slip = (s[10 + n] + lead * rate[0], s[14 + n] + lead * rate[1])
            size = math.hypot(*slip) / peak
            rest = 1.0 - min(size, 1.0)
            # Brush: all of it once the slip passes its peak.
            force = c["mu"][n % 2] * ((1.0 - rest**3) / size if size > 1e-9 else 3.0) / peak
            grips.append((force * slip[0], force * slip[1]))
            slides.append((e_x, e_y))
        F = self.loads(grips)
        moment = sum(px * f[1] - py * f[0] for px, py, f in zip(self.x, self.y, F))
        downhill = self.W * math.sin(self.theta)
        a_x = (sum(f[0] for f in F) - downhill * math.cos(psi)) / self.m
        a_y = (sum(f[1] for f in F) + downhill * math.sin(psi)) / self.m
        dy[0] = u * math.cos(psi) - v * math.sin(psi)
        dy[1] = u * math.sin(psi) + v * math.cos(psi)
        dy[2] = r
        dy[3], dy[4], dy[5] = a_x + v * r, a_y - u * r, moment / self.I
        for n in range(4):
            drag = -R * F[n][0]
            torque = 0.0
            if self.driven[n]:
                has = self.motor(s[6 + n])
                wanted = self.J[n] * (c["omega"][n] - s[6 + n]) / WHEEL_TIME - drag
                torque = min(max(wanted, -has), has)
            dy[6 + n] = (torque + drag) / self.J[n]
        return dy


def angle(value, last=False):
    def event(_, s):
        return s[2] - value

    event.terminal = last
    return event


def spin(case):
    """Times of 90, 180 and 360 degrees, and place and yaw rate at the last of them."""
    car = Car(case)
    events = [angle(0.5 * math.pi), angle(math.pi), angle(2.0 * math.pi, last=True)]
    run = solve_ivp(car.rates, (0.0, 60.0), [0.0] * 18, method="LSODA", rtol=1e-9, atol=1e-10, events=events, max_step=0.05)
    if not len(run.t_events[2]):
        return None
    end = run.y_events[2][0]
    times = [float(times[0]) for times in run.t_events]
    return {"times": times, "place": [float(end[0]), float(end[1])], "yaw": float(end[5])}


json.dump([spin(case) for case in json.load(sys.stdin)], sys.stdout)
