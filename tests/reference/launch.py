"""Runs launches again with scipy's solve_ivp, from the equations of motion written out anew.

Reads cases as JSON from standard input and prints times as JSON. The core solves with an explicit
method of order five and its own dense output; here LSODA does, with a tight tolerance and scipy's own
event location. The acceleration is found here by bracketing, not by Newton's steps.
"""

import json
import math
import sys

try:
    from scipy.integrate import solve_ivp
    from scipy.optimize import brentq
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")

GRAVITY = 9.81
SLIP_TIME, WHEEL_TIME, LEAST_SPINNING, LIFT_ROOM = 0.03, 0.01, 5e-4, 0.05


class Car:
    """A car with its layout; ends are (front, rear)."""

    def __init__(self, case):
        self.c = case
        c = case
        self.m, self.L, self.h = c["m"], c["L"], c["h"]
        self.a, self.b = c["a"], c["L"] - c["a"]
        self.W = self.m * GRAVITY
        self.level = (self.W * self.b / self.L, self.W * self.a / self.L)
        self.moved = self.m * self.h / self.L
        self.driven = [n > 0 for n in c["motors"]]
        self.slip = c["peak_slip"] is not None
        self.spinning = []
        for n in c["motors"]:
            inertia = (2.0 * c["J_w"] + n * c["J_m"] * c["i"] ** 2) / c["R"] ** 2
            self.spinning.append(max(inertia, LEAST_SPINNING * self.m) if self.slip else inertia)
        if self.slip:
            self.shape, self.stiffness = self.curve(c["peak_slip"], c["sliding"])
        self.springs = None
        if c["springs"]:
            s = c["springs"]
            self.springs = [
                (2.0 * math.pi * s["f_front"], s["zeta"], 1.0 - s["anti_lift"]),
                (2.0 * math.pi * s["f_rear"], s["zeta"], 1.0 - s["anti_squat"]),
            ]

    @staticmethod
    def curve(peak, sliding):
        """Shape and stiffness of sin(C atan(B s)) with its peak and its value at full slip."""

        def at_full_slip(shape):
            stiffness = math.tan(math.pi / (2.0 * shape)) / peak
            return math.sin(shape * math.atan(stiffness)) - sliding

        shape = brentq(at_full_slip, 1.001, 2.0, xtol=1e-15)
        return shape, math.tan(math.pi / (2.0 * shape)) / peak

    def grip(self, load):
        """Peak friction force of an axle."""
        load = max(load, 0.0)
        wheel = load / 2.0
        factor = max(1.0 - self.c["k"] * (wheel / self.c["N_0"] - 1.0), 0.1)
        return self.c["mu"] * factor * load

    def motor(self, end, tread):
        """Force at the rims that the motors of an axle have."""
        omega = tread / self.c["R"] * self.c["i"]
        torque = self.c["T"]
        if omega * torque > self.c["P"]:
            torque = self.c["P"] / omega
        return self.c["motors"][end] * self.c["eta"] * self.c["i"] * torque / self.c["R"]

    def rates(self, _, y):
        c = self.c
        s, v, u_f, s_f, u_r, s_r, x_f, dx_f, x_r, dx_r = y
        q = 0.5 * c["rho"] * v * v
        drag, lift = q * c["CdA"], (q * c["ClA_f"], q * c["ClA_r"])
        cos, sin = math.cos(c["theta"]), math.sin(c["theta"])
        couple = self.W * sin * self.h + drag * c["h_d"]
        still = (
            (self.W * cos * self.b - couple) / self.L - lift[0],
            (self.W * cos * self.a + couple) / self.L - lift[1],
        )
        sign = (-1.0, 1.0)
        if self.springs:
            base, slope = [], []
            for end, (x, dx) in enumerate(((x_f, dx_f), (x_r, dx_r))):
                omega, zeta, share = self.springs[end]
                mass = self.level[end] / GRAVITY
                spring = mass * (omega * omega * x + 2.0 * zeta * omega * dx)
                linked = (1.0 - share) * (still[end] - self.level[end])
                base.append(self.level[end] + sign[end] * spring + linked)
                slope.append(sign[end] * self.moved * (1.0 - share))
        else:
            base, slope = list(still), [-self.moved, self.moved]

        def loads(a):
            return [max(base[end] + slope[end] * a, 0.0) for end in (0, 1)]

        resistance = drag + self.W * sin + c["f_r"] * max(base[0] + base[1], 0.0)
        treads = (u_f, u_r) if self.slip else (v, v)
        slips = (s_f, s_r)
        rims = [self.motor(end, treads[end]) for end in (0, 1)]

        def tyre(end, a, rims):
            spun = rims[end] - self.spinning[end] * a
            if not self.driven[end]:
                return -self.spinning[end] * a
            grip = self.grip(loads(a)[end])
            if self.slip:
                return grip * math.sin(self.shape * math.atan(self.stiffness * slips[end]))
            return min(spun, grip)

        def balance(rims):
            def surplus(a):
                return tyre(0, a, rims) + tyre(1, a, rims) - resistance - self.m * a

            return brentq(surplus, -60.0, 60.0, xtol=1e-14, rtol=1e-14)

        a = balance(rims)
        if not self.slip:
            a = min(a, still[0] / self.moved)
        if self.slip:
            forces = [tyre(end, a, rims) for end in (0, 1)]
            held = max(a, 0.0) if v <= 0.0 else a
            for end in (0, 1):
                if self.driven[end] and c["target"] is not None:
                    wanted = abs(treads[end]) * slips[end] + c["relaxation"] * (c["target"] - slips[end]) / SLIP_TIME
                    change = (wanted - (treads[end] - v)) / WHEEL_TIME
                    hold = forces[end] + self.spinning[end] * (held + change)
                    rims[end] = min(rims[end], max(hold, 0.0))
                room = (still[0] / self.moved - a) / (LIFT_ROOM * still[0] / self.moved)
                if self.driven[end] and room < 1.0:
                    steady = max(forces[end] + self.spinning[end] * held, 0.0)
                    rims[end] = min(rims[end], steady + max(room, 0.0) * (rims[end] - steady))
        else:
            rims = [tyre(end, a, rims) + self.spinning[end] * a if self.driven[end] else 0.0 for end in (0, 1)]
        asked = sum(rim * tread for rim, tread in zip(rims, treads)) / c["eta"]
        if asked > c["P_b"]:
            rims = [rim * c["P_b"] / asked for rim in rims]
            if not self.slip:
                a = balance(rims)
        if v <= 0.0 and a < 0.0:
            a = 0.0
        dy = [v, a, 0.0, 0.0, 0.0, 0.0, dx_f, 0.0, dx_r, 0.0]
        if self.slip:
            for end in (0, 1):
                if self.driven[end]:
                    dy[2 + 2 * end] = (rims[end] - forces[end]) / self.spinning[end]
                    dy[3 + 2 * end] = (treads[end] - v - abs(treads[end]) * slips[end]) / c["relaxation"]
        if self.springs:
            for end, (x, dx) in enumerate(((x_f, dx_f), (x_r, dx_r))):
                omega, zeta, share = self.springs[end]
                mass = self.level[end] / GRAVITY
                gained = sign[end] * (still[end] - self.level[end]) + self.moved * a
                dy[7 + 2 * end] = share * gained / mass - omega * omega * x - 2.0 * zeta * omega * dx
        return dy

    def start(self):
        """At rest, the body on its springs as the slope has it."""
        y = [0.0] * 10
        if self.springs:
            cos, sin = math.cos(self.c["theta"]), math.sin(self.c["theta"])
            couple = self.W * sin * self.h
            still = ((self.W * cos * self.b - couple) / self.L, (self.W * cos * self.a + couple) / self.L)
            for end, sign in ((0, -1.0), (1, 1.0)):
                omega, _, share = self.springs[end]
                mass = self.level[end] / GRAVITY
                y[6 + 2 * end] = share * sign * (still[end] - self.level[end]) / (mass * omega * omega)
        return y


def crossing(at, value, last=False):
    """An event of scipy: a number of the state passes a value."""

    def event(_, y):
        return y[at] - value

    event.terminal = last
    return event


def launch(case):
    """Times of rollout, 60 mph, 100 km/h and the quarter mile."""
    car = Car(case)
    events = [crossing(0, 0.3048), crossing(1, 26.8224), crossing(1, 100.0 / 3.6), crossing(0, 402.336, last=True)]
    scale = [1.0, 1.0, 1.0, 0.01, 1.0, 0.01, 0.01, 0.1, 0.01, 0.1]
    run = solve_ivp(
        car.rates,
        (0.0, 60.0),
        car.start(),
        method="LSODA",
        rtol=1e-8,
        atol=[1e-8 * size for size in scale],
        events=events,
        max_step=0.25,
    )
    return [float(times[0]) if len(times) else None for times in run.t_events]


json.dump([launch(case) for case in json.load(sys.stdin)], sys.stdout)
