"""Drives the planar car again with scipy's solve_ivp, from the equations written out anew.

Reads cases as JSON from standard input and prints end states as JSON. The core takes fixed steps of a
method of order four; here one of order eight chooses its own. Loads and forces are made to agree by
Newton's steps with slopes found by small differences, and the time that the whole takes is printed to
the standard error.
"""

import json
import math
import sys
import time

try:
    from scipy.integrate import solve_ivp
    from scipy.optimize import brentq
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")

GRAVITY = 9.81
DAMPING_TIME, RENEWAL, HOLDING_TIME, LEAST_FACTOR = 0.005, 5e-4, 0.004, 0.1


class Car:
    """Wheels: front left, front right, rear left, rear right."""

    def __init__(self, c):
        self.c = c
        self.W = c["m"] * GRAVITY
        self.b = c["L"] - c["a"]
        self.theta = math.atan(c["grade"])
        self.place = [
            (c["a"], c["t_f"] / 2),
            (c["a"], -c["t_f"] / 2),
            (-self.b, c["t_r"] / 2),
            (-self.b, -c["t_r"] / 2),
        ]
        peak, sliding = c["peak_slip"], c["sliding"]

        def at_full_slip(shape):
            stiffness = math.tan(math.pi / (2.0 * shape)) / peak
            return math.sin(shape * math.atan(stiffness)) - sliding

        self.shape = brentq(at_full_slip, 1.001, 2.0, xtol=1e-15)
        self.stiffness = math.tan(math.pi / (2.0 * self.shape)) / peak
        front = 0.5 * self.W * self.b / c["L"]
        self.across = []
        for wheel in range(4):
            load = front if wheel < 2 else 0.5 * self.W - front
            grip = c["mu"][wheel % 2] * load * self.factor(load)
            slope = self.stiffness * self.shape * peak
            self.across.append(grip * slope / c["C"][wheel // 2])

    def factor(self, load):
        return max(1.0 - self.c["k"] * (load - self.c["N_0"]) / self.c["N_0"], LEAST_FACTOR)

    def loads(self, sx, sy, air):
        c = self.c
        drag, lift_f, lift_r = air
        weight = self.W * math.cos(self.theta)
        front = (weight * self.b - sx * c["h"] - drag * (c["h_d"] - c["h"])) / c["L"] - lift_f
        total = weight - lift_f - lift_r
        front = min(max(front, 0.0), total)
        half = [front / 2, (total - front) / 2]
        roll = sy * c["h"]
        moved = [c["phi"] * roll / c["t_f"], (1.0 - c["phi"]) * roll / c["t_r"]]
        tracks = [c["t_f"], c["t_r"]]
        for axle in (0, 1):
            held = min(max(moved[axle], -half[axle]), half[axle])
            if held != moved[axle]:
                moved[1 - axle] += (moved[axle] - held) * tracks[axle] / tracks[1 - axle]
                moved[axle] = held
        moved[0] = min(max(moved[0], -half[0]), half[0])
        return [half[0] - moved[0], half[0] + moved[0], half[1] - moved[1], half[1] + moved[1]]

    def rates(self, _, s):
        c = self.c
        psi, u, v, r = s[2], s[3], s[4], s[5]
        out = [0.0] * 18
        grips, pushes = [], []
        for w in range(4):
            cos, sin = math.cos(c["steer"][w]), math.sin(c["steer"][w])
            x, y = self.place[w]
            vx, vy = u - r * y, v + r * x
            tread = c["R"] * s[6 + w]
            slide_x, slide_y = tread - (cos * vx + sin * vy), sin * vx - cos * vy
            carry = max(abs(tread), math.hypot(slide_x, slide_y))
            sx, sy = s[10 + w], s[14 + w]
            px, py = c["peak_slip"], self.across[w]
            per_length = math.sqrt(1.0 + (sx / px) ** 2 + (sy / py) ** 2) / c["relaxation"]
            if carry > 0.0:
                per_length = min(per_length, 1.0 / (carry * RENEWAL))
            rx, ry = (slide_x - carry * sx) * per_length, (slide_y - carry * sy) * per_length
            out[10 + w], out[14 + w] = rx, ry
            lead = DAMPING_TIME
            if carry > 0.0:
                lead = min(lead, 1.0 / (carry * per_length))
            nx, ny = (sx + lead * rx) / px, (sy + lead * ry) / py
            size = math.hypot(nx, ny)
            if size > 0.0:
                share = math.sin(self.shape * math.atan(self.stiffness * size * px)) / size
            else:
                share = self.shape * self.stiffness * px
            gx, gy = (c["mu"][w % 2] * share * part for part in (nx, ny))
            grips.append(gx)
            pushes.append((cos * gx - sin * gy, sin * gx + cos * gy))
        speed = math.hypot(u, v)
        q = 0.5 * c["rho"] * speed * speed
        air = (q * c["CdA"], q * c["ClA_f"], q * c["ClA_r"])

        def made(sx, sy):
            loads = self.loads(sx, sy, air)
            fx = sum(n * self.factor(n) * p[0] for n, p in zip(loads, pushes))
            fy = sum(n * self.factor(n) * p[1] for n, p in zip(loads, pushes))
            return fx, fy

        sx = sy = 0.0
        for _ in range(30):
            fx, fy = made(sx, sy)
            ex, ey = fx - sx, fy - sy
            if abs(ex) + abs(ey) < 1e-12 * self.W:
                break
            e = 1e-5 * self.W
            ax, ay = made(sx + e, sy)
            bx, by = made(sx, sy + e)
            j11, j12 = 1.0 - (ax - fx) / e, -(bx - fx) / e
            j21, j22 = -(ay - fy) / e, 1.0 - (by - fy) / e
            det = j11 * j22 - j12 * j21
            sx += (ex * j22 - j12 * ey) / det
            sy += (j11 * ey - j21 * ex) / det
        loads = self.loads(sx, sy, air)
        total_x = total_y = moment = 0.0
        for w in range(4):
            grip = loads[w] * self.factor(loads[w])
            bx, by = grip * pushes[w][0], grip * pushes[w][1]
            x, y = self.place[w]
            total_x, total_y, moment = total_x + bx, total_y + by, moment + x * by - y * bx
            free = c["torque"][w] - c["R"] * grip * grips[w]
            capacity = c["brake"][w] + c["f_r"] * loads[w] * c["R"]
            wanted = -free - c["J"][w] * s[6 + w] / HOLDING_TIME
            held = min(max(wanted, -capacity), capacity)
            if held * s[6 + w] > 0.0:
                held = 0.0
            out[6 + w] = (free + held) / c["J"][w]
        drag = 0.5 * c["rho"] * c["CdA"] * speed
        downhill = self.W * math.sin(self.theta)
        out[0] = u * math.cos(psi) - v * math.sin(psi)
        out[1] = u * math.sin(psi) + v * math.cos(psi)
        out[2] = r
        out[3] = (total_x - drag * u - downhill * math.cos(psi)) / c["m"] + v * r
        out[4] = (total_y - drag * v + downhill * math.sin(psi)) / c["m"] - u * r
        out[5] = moment / c["I_z"]
        return out


def main():
    cases = json.load(sys.stdin)
    began = time.perf_counter()
    ends = []
    for case in cases:
        car = Car(case)
        run = solve_ivp(
            car.rates, (0.0, case["time"]), case["start"], method="DOP853", rtol=1e-7, atol=1e-9
        )
        if not run.success:
            sys.exit(run.message)
        ends.append([float(value) for value in run.y[:, -1]])
    taken = time.perf_counter() - began
    print(json.dumps({"ends": ends, "seconds": taken}))


main()
