// A page that uses the elements as any React page would; a journey drives it by `page`. The elements
// are known before it renders: only then does React give an object as a property.
import { StrictMode, useState } from "react";
import { createRoot } from "react-dom/client";
import { flushSync } from "react-dom";

const heard = { changes: [], answers: [] };

function App() {
  const [state, setState] = useState({
    acceleration: "0.4 g",
    base: "kame",
    order: ["kame", "corrie", "moraine"],
    open: true,
  });
  const set = (change) => flushSync(() => setState((old) => ({ ...old, ...change })));
  globalThis.page = { set, heard, unmount: () => root.unmount() };
  const { acceleration, base, order, open } = state;
  return (
    <>
      <axle-load-transfer
        id="attributes"
        vehicle="esker"
        acceleration={acceleration}
        onaxle-change={(event) => heard.changes.push(event.detail)}
        onaxle-answer={(event) => heard.answers.push(event.detail.rear_to_front_ratio)}
      >
        <p>fixed picture</p>
      </axle-load-transfer>
      {open && <axle-traction id="property" scenario={{ vehicle: { base } }} />}
      <ul>
        {order.map((vehicle) => (
          <li key={vehicle}><axle-turn-in-place id={vehicle} vehicle={vehicle} /></li>
        ))}
      </ul>
    </>
  );
}

const root = createRoot(document.querySelector("#app"));
root.render(<StrictMode><App /></StrictMode>);
