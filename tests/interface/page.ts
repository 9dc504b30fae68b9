// A page's script as somebody would write it with the types beside the module. The compiler must accept
// every line, and refuse each one that follows `@ts-expect-error`: types that accept all would say nothing.
import init, { schema, solve, topics, version } from "./axlewright.js";
import type { AxleIntrinsicElements, AxleProblem, Layout, TractionScenario } from "./axlewright.js";

const traction = document.querySelector("axle-traction")!;
const mass: string | null = traction.mass;
traction.mass = "4080 lb";
traction.mass = 1850;
traction.frictionPeak = 0.9;
traction.units = "us";
traction.scenario = { vehicle: { base: "corrie" }, layouts: ["F1", "R1"] };
traction.scenario = null;
const limit: number | undefined = traction.answer?.limits?.F1?.acceleration;
const equations: string[] = traction.answer?.working.map((step) => step.equation) ?? [];
const drawn: Promise<string | null> = traction.figure();
const picture: Promise<Blob | null> = traction.figure("png");
const ready: boolean = await traction.updateComplete;

traction.addEventListener("axle-change", (event) => {
  const friction: string | number | undefined = event.detail.surface?.friction_peak;
  console.log(friction, event.detail.layout);
});
traction.addEventListener("axle-problem", ({ detail }) => {
  const problem: AxleProblem = detail;
  console.log(problem.field, problem.allowed);
});
traction.addEventListener("click", (event) => console.log(event.clientX));
document.addEventListener("axle-answer", (event) => console.log(event.detail.topic));

const turning = document.createElement("axle-turn-in-place");
const energy: number | undefined = turning.answer?.energy_per_turn;

await init();
await init({ topics: ["traction", "load-transfer"] });
const scenario: TractionScenario = { vehicle: { base: "corrie", mass: "1500 kg" }, surface: { kind: "snow" } };
const answer = solve("traction", scenario);
const layout: Layout = "F2R2";
const best: number | undefined = answer.limits?.[layout]?.acceleration;
const turn: boolean | undefined = solve("turn-in-place", {}).layouts?.F2R2?.feasible;
const names: string[] = topics();
const title: unknown = schema("load-transfer")["title"];
const tag: AxleIntrinsicElements["axle-load-transfer"] = { acceleration: "0.6 g", "cg-height": 0.5, className: "wide" };
const classic: string | undefined = globalThis.axlewright?.version;

const talk = document.createElement("axle-talk");
talk.step = 2;
await talk.forward();
talk.addEventListener("axle-step", ({ detail }) => console.log(detail.step, detail.said, detail.question));
talk.addEventListener("axle-problem", ({ detail }) => console.log(detail.faults[0]?.field));
document.addEventListener("axle-step", (event) => console.log(event.detail.step));
const played: AxleIntrinsicElements["axle-talk"] = { src: "a.toml", frame: "16:9" };
turning.view = "bars";
const bars: AxleIntrinsicElements["axle-choice"] = { view: "bars" };

// @ts-expect-error traction has no bars
traction.view = "bars";
// @ts-expect-error a tag takes the views of its topic
const side: AxleIntrinsicElements["axle-choice"] = { view: "side" };
// @ts-expect-error the steps of a talk are counted, not set
talk.steps = 3;
// @ts-expect-error there is no such frame
const square: AxleIntrinsicElements["axle-talk"] = { frame: "1:1" };
// @ts-expect-error an element has no such input
traction.acceleration = "0.6 g";
// @ts-expect-error units are si or us
traction.units = "imperial";
// @ts-expect-error there is no such layout
traction.scenario = { layouts: ["F3"] };
// @ts-expect-error no such field
traction.scenario = { vehicle: { weight: "1 t" } };
// @ts-expect-error an answer is read only
traction.answer = null;
// @ts-expect-error there is no such topic
solve("flight", {});
// @ts-expect-error a tag takes its own inputs
const wrong: AxleIntrinsicElements["axle-load-transfer"] = { "friction-peak": 1 };

export { answer, best, classic, drawn, energy, equations, limit, mass, names, picture, ready, tag, title, turn, version, wrong };
