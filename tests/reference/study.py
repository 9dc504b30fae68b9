"""The same study in numpy and scipy, for its numbers and for its time.

Standard input: {"study": "traction" | "launch", "rows": n}. Prints {"seconds": s, "first": v, "last": v}.

traction: largest acceleration of a rear-driven car (one motor, open differential, friction alike left
and right) over CG height and grade, with rolling resistance, by the closed form for every row at once:
the quickest way that numpy has. Equations: F_r = mu*N_r and N_r = W*(a*cos + h*sin)/L + m*a_x*h/L.
launch: time to 60 mph of an all-wheel-driven car whose tyres grip at once, one run of
scipy.integrate.solve_ivp a row, relative error 1e-8. Nothing spins up here; the program is asked with the
least inertia of a wheel that it takes, which is worth 2 parts in 10 000 of the car's mass.
"""
import json
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

G = 9.81
asked = json.load(sys.stdin)
n = asked["rows"]


def traction(height, grade):
    mass, wheelbase, a, mu, rolling = 1850.0, 2.86, 1.46, 1.0, 0.009
    cos = 1.0 / np.hypot(1.0, grade)
    sin = grade * cos
    # m*a_x = mu*N_r - W*sin - f_r*W*cos
    static = G * (a * cos + height * sin) / wheelbase
    return (mu * static - G * sin - rolling * G * cos) / (1.0 - mu * height / wheelbase)


def launch(height):
    mass, wheelbase, a, mu = 1850.0, 2.86, 1.46, 1.0
    torque, power, ratio, radius = 330.0, 180e3, 9.2, 0.335
    area, density, rolling = 0.56, 1.225, 0.009
    weight = mass * G

    def rate(_, state):
        speed = state[0]
        drag = 0.5 * density * area * speed * speed
        motor = min(torque * ratio / radius, power / max(speed, 1e-6))
        # The axles share what is needed as the load is shared; each gives at most its grip and its motor.
        acceleration = 0.0
        for _ in range(30):
            rear = (weight * a + (mass * acceleration + drag) * height) / wheelbase
            front = weight - rear
            push = min(mu * front, motor) + min(mu * rear, motor)
            found = (push - drag - rolling * weight) / mass
            if abs(found - acceleration) <= 1e-12 * abs(found):
                break
            acceleration = found
        return [acceleration]

    def fast(_, state):
        return state[0] - 60 * 0.44704

    fast.terminal = True
    run = solve_ivp(rate, (0.0, 60.0), [0.0], events=fast, rtol=1e-8, atol=1e-10)
    return float(run.t_events[0][0])


if asked["study"] == "traction":
    # As the program's grid: the last input varies first.
    side = int(round(n**0.5))
    start = time.perf_counter()
    height, grade = np.meshgrid(np.linspace(0.4, 0.7, side), np.linspace(0.0, 0.1, side), indexing="ij")
    found = traction(height, grade).ravel()
    solved = time.perf_counter() - start
    with open(asked["csv"], "w") as out:
        np.savetxt(out, np.column_stack([height.ravel(), grade.ravel(), found]), delimiter=",", fmt="%.17g")
else:
    start = time.perf_counter()
    found = [launch(height) for height in np.linspace(0.4, 0.7, n)]
    solved = time.perf_counter() - start
total = time.perf_counter() - start
print(json.dumps({"seconds": solved, "with_file": total, "rows": len(found), "first": float(found[0]), "last": float(found[-1])}))
