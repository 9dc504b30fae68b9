"""Derives the closed forms of the core again, from the balances of forces and moments, with sympy.

Prints one line "OK name" for each form. Ends with an error where one does not follow.
"""

import sys

try:
    import sympy as sp
except ImportError as error:
    sys.exit(f"python module {error.name} is missing: pip install -r tests/requirements.txt")

m, g, a, b, h, mu = sp.symbols("m g a b h mu", positive=True)
F_f, F_r, N_f, N_r, a_x, f_r = sp.symbols("F_f F_r N_f N_r a_x f_r", real=True)
L = a + b
W = m * g


def check(name, difference):
    """Says OK where a difference is zero, whatever the symbols stand for."""
    if sp.simplify(difference) != 0:
        sys.exit(f"{name} does not follow: {sp.simplify(difference)} is left")
    print(f"OK {name}")


def solve_one(equations, unknowns):
    """The one solution of a system."""
    solutions = sp.solve(equations, unknowns, dict=True)
    if len(solutions) != 1:
        sys.exit(f"{len(solutions)} solutions instead of one")
    return solutions[0]


# Axle loads: forces across the road, moments about the CG (nose up positive).
def balance(force_front, force_rear, rolling=0):
    """The three balances of a car on the level without air."""
    along = force_front + force_rear - rolling * (N_f + N_r)
    return [
        sp.Eq(along, m * a_x),
        sp.Eq(N_f + N_r, W),
        sp.Eq(N_f * a - N_r * b + along * h, 0),
    ]


front = solve_one(balance(mu * N_f, 0), [N_f, N_r, a_x])[a_x]
check("front drive: a/g = mu (b/L)/(1 + mu h/L)", front / g - mu * (b / L) / (1 + mu * h / L))

rear = solve_one(balance(0, mu * N_r), [N_f, N_r, a_x])[a_x]
check("rear drive: a/g = mu (a/L)/(1 - mu h/L)", rear / g - mu * (a / L) / (1 - mu * h / L))

both = solve_one(balance(mu * N_f, mu * N_r), [N_f, N_r, a_x])
check("all-wheel drive, ideal split: a/g = mu", both[a_x] / g - mu)
share = mu * both[N_f] / (mu * both[N_f] + mu * both[N_r])
check("ideal front share: p_f = b/L - (a/g) h/L", share - (b / L - both[a_x] / g * h / L))

# A fixed split p: the axle that slips first ends it.
p = sp.symbols("p", positive=True)
F = sp.symbols("F", real=True)
split = balance(p * F, (1 - p) * F)
slip_f = solve_one([*split, sp.Eq(p * F, mu * N_f)], [N_f, N_r, a_x, F])[a_x]
check("fixed split, front slips: a/g = mu (b/L)/(p + mu h/L)", slip_f / g - mu * b / L / (p + mu * h / L))
slip_r = solve_one([*split, sp.Eq((1 - p) * F, mu * N_r)], [N_f, N_r, a_x, F])[a_x]
want = mu * a / L / (1 - p - mu * h / L)
check("fixed split, rear slips: a/g = mu (a/L)/(1 - p - mu h/L)", slip_r / g - want)

# W3: rolling resistance acts where the tyres touch the ground.
w3_rear = solve_one(balance(0, mu * N_r, f_r), [N_f, N_r, a_x])
want = mu * W * (a - f_r * h) / L / (1 - mu * h / L)
check("W3, rear drive: F = mu W (a - f_r h)/L/(1 - mu h/L)", mu * w3_rear[N_r] - want)
w3_front = solve_one(balance(mu * N_f, 0, f_r), [N_f, N_r, a_x])
want = mu * W * (b + f_r * h) / L / (1 + mu * h / L)
check("W3, front drive: F = mu W (b + f_r h)/L/(1 + mu h/L)", mu * w3_front[N_f] - want)

# Solid axle, open differential. The driveshaft torque T = F r/i loads one rear wheel and unloads the
# other. It also rolls the body, and the springs carry that roll moment back to the ground at both axles
# in proportion to their roll stiffness; the rear springs' part acts on the solid axle against T.
K_f, K_r, r, ratio, t = sp.symbols("K_f K_r r i t", positive=True)
dN = sp.symbols("dN", real=True)
torque = F * r / ratio
returned = torque * K_r / (K_f + K_r)
solid = solve_one(
    [
        sp.Eq(dN * t, torque - returned),
        sp.Eq(F, 2 * mu * (N_r / 2 - dN)),
        sp.Eq(N_r, W * a / L + F * h / L),
    ],
    [F, dN, N_r],
)[F]
want = mu * (W * a / L) / (1 - mu * h / L + 2 * mu * r / (ratio * t) * K_f / (K_f + K_r))
check("solid axle: F = mu W_r/(1 - mu h/L + 2 mu r/(i t) K_f/(K_f + K_r))", solid - want)

# Turning in place, a = b, one track: four point contacts with Coulomb friction that opposes the slip.
# By symmetry the centre is midway; kappa = R omega/r. One wheel at (X, -t/2), seen from the centre:
# it moves with (t/2, X), its tread with (t/2 - kappa, X) over the ground.
l, kappa, N = sp.symbols("l kappa N", positive=True)
X = l / 2
slip = sp.sqrt((kappa - t / 2) ** 2 + X**2)
along, across = mu * N * (kappa - t / 2) / slip, mu * N * X / slip
at = (t**2 + l**2) / (2 * t)
check("turn in place: the moments balance at kappa = (t^2 + L^2)/(2 t)", (along * t / 2 - across * X).subs(kappa, at))
diagonal = sp.sqrt(l**2 + t**2)
check("turn in place: F = mu N L/sqrt(L^2 + t^2)", along.subs(kappa, at) - mu * N * l / diagonal)
check("turn in place: F_x : F_y = L : t", (along * t - across * l).subs(kappa, at))
moment = 4 * across * X
check("turn in place: M_r = mu W L t/(2 sqrt(L^2 + t^2))", moment.subs(kappa, at) - mu * 4 * N * l * t / (2 * diagonal))
energy = 2 * sp.pi * 4 * mu * N * slip
want = sp.pi * mu * 4 * N * l * sp.sqrt(1 + l**2 / t**2)
check("turn in place: E = pi mu W L sqrt(1 + L^2/t^2)", energy.subs(kappa, at) - want)
wheels = 2 * sp.pi * 4 * along * kappa
check("turn in place: the wheels put in what sliding takes out", (wheels - energy).subs(kappa, at))
check("lateral scrub: M = mu W L/2, twice a track's mu W l/4", 4 * mu * N * X - 2 * (mu * 4 * N * l / 4))

# K5: mean distance from the centre of a patch of unit area.
rho, x, y = sp.symbols("rho x y", positive=True)
radius = 1 / sp.sqrt(sp.pi)
disc = sp.integrate(2 * sp.pi * rho**2, (rho, 0, radius))
check("K5, disc: 2/(3 sqrt(pi))", disc - 2 / (3 * sp.sqrt(sp.pi)))
# Eight triangles, in polar coordinates: 0 <= angle <= pi/4, 0 <= rho <= 1/(2 cos angle).
angle = sp.symbols("angle", positive=True)
inner = sp.integrate(rho**2, (rho, 0, 1 / (2 * sp.cos(angle))))
tangent = sp.symbols("u", positive=True)
# With u = tan(angle): d(angle)/cos^3 = sqrt(1 + u^2) du.
square = 8 * sp.integrate(sp.sqrt(1 + tangent**2), (tangent, 0, 1)) / 24
check("K5, square: the inner integral", inner - 1 / (24 * sp.cos(angle) ** 3))
check("K5, square: (sqrt(2) + ln(1 + sqrt(2)))/6", square.rewrite(sp.log) - (sp.sqrt(2) + sp.log(1 + sp.sqrt(2))) / 6)

# Like motors: the axles share load as the motors share torque at one acceleration.
n_f, n_r = sp.symbols("n_f n_r", positive=True)
still = solve_one(balance(sp.symbols("F_1"), 0)[1:] + [sp.Eq(sp.symbols("F_1"), m * a_x)], [N_f, N_r, sp.symbols("F_1")])
matched = sp.solve(sp.Eq(still[N_f] / (still[N_f] + still[N_r]), n_f / (n_f + n_r)), a_x)[0]
check("like motors match: a/g = (b/L - n_f/(n_f + n_r)) L/h", matched / g - (b / L - n_f / (n_f + n_r)) * L / h)

# P1, brush tyre with parabolic pressure: bristles stick over the front part of the patch, from the
# leading edge at 0 to where their deflection force reaches mu times the pressure, and slide behind it.
xi, s_n, half = sp.symbols("xi s_n a_h", positive=True)
pressure = sp.Rational(3, 4) / half * (1 - ((half - xi) / half) ** 2)  # per unit load; xi from the leading edge
# Normalised slip: at s_n = 1 the bristles slide from the leading edge on.
slope = sp.diff(pressure, xi).subs(xi, 0)
stick = s_n * slope * xi
meets = sp.solve(sp.Eq(stick / xi, sp.simplify(pressure / xi)), xi)[0]
used = sp.integrate(stick, (xi, 0, meets)) + sp.integrate(pressure, (xi, meets, 2 * half))
check("P1, brush: F/(mu N) = 3 s (1 - s + s^2/3)", sp.expand(used - 3 * s_n * (1 - s_n + s_n**2 / 3)))
moment = sp.integrate(stick * (half - xi), (xi, 0, meets)) + sp.integrate(pressure * (half - xi), (xi, meets, 2 * half))
check("P1, brush: M_z/(mu N a) = s (1 - s)^3", sp.expand(sp.simplify(-moment) / half - s_n * (1 - s_n) ** 3))
check("P1, brush: the aligning moment peaks with 27/256 at s = 1/4", (s_n * (1 - s_n) ** 3).subs(s_n, sp.Rational(1, 4)) - sp.Rational(27, 256))
