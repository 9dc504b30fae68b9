# %% [markdown]
# # One driven axle or two?
# A notebook in plain Python: each `# %%` is a cell in the editors that know them. All vehicles are
# invented. Results are for teaching and early comparison. Try limits on closed ground only.

# %%
from axlewright import Refused, answer, answers

# %% [markdown]
# The four vehicles on wet asphalt: how much harder does a second driven axle let them accelerate?

# %%
gain = {}
for base in ["kame", "esker", "moraine", "corrie"]:
    scenario = {
        "vehicle": {"base": base},
        "surface": {"kind": "asphalt_wet"},
        "layouts": ["F1", "R1", "F1R1"],
    }
    limits = answer("traction", scenario)["limits"]
    one = max(limits["F1"]["acceleration"], limits["R1"]["acceleration"])
    gain[base] = limits["F1R1"]["acceleration"] / one
    print(f"{base:8} {gain[base]:.2f} times")

# %% [markdown]
# At which CG height would a rear-driven Esker reach 0.7 g on dry asphalt? The limit rises with height,
# so halving the interval finds it.

# %%
def limit_g(height_m):
    scenario = {
        "vehicle": {"base": "esker", "cg_height": f"{height_m} m"},
        "surface": {"friction_peak": 1.0},
        "layout": "R1",
        "layouts": ["R1"],
    }
    return answer("traction", scenario)["limits"]["R1"]["acceleration"] / 9.81


low, high = 0.3, 1.2
while high - low > 1e-6:
    middle = 0.5 * (low + high)
    low, high = (middle, high) if limit_g(middle) < 0.7 else (low, middle)
print(f"{low:.3f} m")

# %% [markdown]
# Why? The working is the one that the elements show.

# %%
for step in answer("traction", {"vehicle": {"base": "esker"}}, working=True)["working"][:3]:
    print(step["equation"])

# %% [markdown]
# What cannot be is refused with field, value and range; in a sweep it is None.

# %%
try:
    answer("traction", {"vehicle": {"mass": "-5 kg"}})
except Refused as refused:
    print(refused.field, "|", refused.value, "|", refused.allowed)

masses = ["900 kg", "1200 kg", "heavy"]
sweep = answers("launch", ({"vehicle": {"base": "kame", "mass": m}, "layouts": ["F1"], "layout": "F1"} for m in masses))
times = [got and got["layouts"]["F1"]["time_to_60_mph"] for got in sweep]
print(times)
