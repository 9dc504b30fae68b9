// Tells the course system how far a lesson is, by the script interface of SCORM 1.2: the lesson is
// completed when all its practice questions were answered, and its score is their mean, 0 to 100.
(() => {
  // The standard's way to the interface: up the frames, then the window that opened this one.
  const find = (from) => {
    let place = from;
    for (let step = 0; place && step < 12; step += 1) {
      try {
        if (place.API) return place.API;
      } catch {
        return undefined; // a frame of another origin
      }
      if (place.parent === place) return undefined;
      place = place.parent;
    }
    return undefined;
  };
  const api = find(window) ?? (window.opener && find(window.opener));
  if (!api || api.LMSInitialize("") !== "true") return;
  const begun = Date.now();
  const questions = [...document.querySelectorAll(".practice > [question]")];
  const name = (element) => element.getAttribute("question");
  let scores = {};
  try {
    scores = JSON.parse(api.LMSGetValue("cmi.suspend_data") || "{}");
  } catch {
    // Nothing that this lesson wrote: it begins anew.
  }
  const tell = () => {
    const given = questions.map((element) => scores[name(element)]);
    const answered = given.filter((score) => score !== undefined);
    if (questions.length) { // a lesson without questions is completed by being opened and has no score
      const mean = answered.reduce((sum, score) => sum + score, 0) / questions.length;
      api.LMSSetValue("cmi.core.score.min", "0");
      api.LMSSetValue("cmi.core.score.max", "100");
      api.LMSSetValue("cmi.core.score.raw", String(Math.round(100 * mean)));
    }
    api.LMSSetValue("cmi.core.lesson_status", answered.length === questions.length ? "completed" : "incomplete");
    api.LMSSetValue("cmi.suspend_data", JSON.stringify(scores));
    api.LMSCommit("");
  };
  for (const element of questions) {
    element.addEventListener("axle-score", ({ detail }) => {
      // The best of several tries counts.
      scores[name(element)] = Math.max(detail.score, scores[name(element)] ?? 0);
      tell();
    });
  }
  tell();
  let finished = false;
  addEventListener("pagehide", () => {
    if (finished) return;
    finished = true;
    const seconds = Math.round((Date.now() - begun) / 1000);
    const two = (value) => String(Math.floor(value)).padStart(2, "0");
    api.LMSSetValue("cmi.core.session_time", `${two(seconds / 3600).padStart(4, "0")}:${two((seconds / 60) % 60)}:${two(seconds % 60)}`);
    api.LMSSetValue("cmi.core.exit", api.LMSGetValue("cmi.core.lesson_status") === "completed" ? "" : "suspend");
    api.LMSFinish("");
  });
})();
