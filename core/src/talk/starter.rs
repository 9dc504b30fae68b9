//! The talk that `axlewright talk new` writes.

/// A commented talk to start from: it can be given as it is.
pub const STARTER: &str = r##"# A talk for Axlewright. Check it:  axlewright talk check FILE
# Build one HTML file from it:      axlewright talk build FILE -o talk.html

title = "Where the weight goes"
lang = "en"            # en, de or es: numbers, and the words in the figures
vehicle = "esker"      # an invented vehicle; or give your own below
# [scenario]
# vehicle.mass = "1850 kg"

# Each step names a topic, what changes in the scenario, how it is shown, and what is said. What a step
# leaves out stays as it was in the step before.
[[steps]]
topic = "load_transfer"
set = { load_transfer.acceleration = "0 g" }
view = "side"          # side, plan, bars, chart or table
# The parts drawn so far, in any order; "all" for the whole figure: ground, wheels, body, motors, cg,
# inertial_force, axle_loads, tractive_forces, friction_circles, motion, dimensions, labels, headline;
# and, below the figure, the working.
parts = ["ground", "wheels", "body", "cg", "axle_loads", "labels"]
# Values stand in braces: the name of an output or an input, then, if wanted, digits and a unit.
say = "At rest the rear axle carries {rear_axle_load:3 kN}."
note = "Point at the centre of gravity, {vehicle.cg_height:2 cm} above the road."

[[steps]]
set = { load_transfer.acceleration = "0.6 g" }
parts = "all"
say = "At {load_transfer.acceleration:2 g} it carries {rear_to_front_ratio:3} times the front."

# The audience predicts before the answer is shown. What is right is computed: a `value`, or the
# `largest` or `smallest` of some, with `words` for the choices.
[steps.question]
text = "How many times the front axle load will the rear carry?"
value = "rear_to_front_ratio:2"
"##;
