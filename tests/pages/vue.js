// A page that uses the elements as any Vue page would; a journey drives it by `page`. It runs before
// the elements are known: the dot (in a template, `:scenario.prop`) says that a property is meant.
import { createApp, h, nextTick, reactive } from "vue/dist/vue.runtime.esm-bundler.js";

const heard = { changes: [], answers: [] };
const state = reactive({
  acceleration: "0.4 g",
  scenario: { vehicle: { base: "kame" } },
  order: ["kame", "corrie", "moraine"],
  open: true,
});

const app = createApp({
  render: () => [
    h("axle-load-transfer", {
      id: "attributes",
      vehicle: "esker",
      acceleration: state.acceleration,
      "onAxle-change": (event) => heard.changes.push(event.detail),
      "onAxle-answer": (event) => heard.answers.push(event.detail.rear_to_front_ratio),
    }, [h("p", "fixed picture")]),
    state.open ? h("axle-traction", { id: "property", ".scenario": state.scenario }) : null,
    h("ul", state.order.map((vehicle) =>
      h("li", { key: vehicle }, [h("axle-turn-in-place", { id: vehicle, vehicle })]))),
  ],
});
app.mount("#app");

globalThis.page = {
  async set({ base, ...change }) {
    Object.assign(state, change);
    if (base) state.scenario = { vehicle: { base } };
    await nextTick();
  },
  heard,
  unmount: () => app.unmount(),
};
