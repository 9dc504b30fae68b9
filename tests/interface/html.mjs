// Judges pages by html-validate: the input is a list of files; printed is a line for each fault.
import { readFileSync } from "node:fs";
import { HtmlValidate, StaticConfigLoader } from "html-validate";

const loader = new StaticConfigLoader({
  extends: ["html-validate:standard"],
  elements: ["html5"],
  rules: {
    // House style, which the standard leaves open.
    "void-style": "off",
    "doctype-style": "off",
    "no-trailing-whitespace": "off",
    "attr-quotes": "off",
    "long-title": "off",
    "no-inline-style": "error",
    "wcag/h30": "error",
    "wcag/h37": "error",
    // A table that scrolls must be reached by keyboard.
    "no-redundant-role": "error",
    "prefer-native-element": "off",
  },
});
const validate = new HtmlValidate(loader);
for (const file of JSON.parse(readFileSync(0, "utf8"))) {
  const report = await validate.validateString(readFileSync(file, "utf8"), file);
  for (const { messages } of report.results) {
    for (const { line, column, ruleId, message, severity } of messages) {
      console.log(`${file}:${line}:${column}: ${severity === 2 ? "error" : "warning"} ${ruleId}: ${message}`);
    }
  }
}
