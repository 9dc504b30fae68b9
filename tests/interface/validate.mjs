// Holds documents against JSON Schemas. Standard input: a list of [schema, document]; standard
// output: the list of complaints about each document, empty where it is valid. A schema is an object, or
// the name of a file that an npm package ships (draft 7), with a place in it after `#`.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";

const require = createRequire(new URL("../package.json", import.meta.url));
const [Ajv, Ajv2020] = [require("ajv").default, require("ajv/dist/2020.js").default];
const own = new Ajv2020({ strict: true, strictTypes: false, allErrors: true });
for (const name of ["x-symbol", "x-unit", "x-units", "x-digits"]) own.addKeyword(name);
const shipped = new Ajv({ strict: false, allErrors: true });

const fromPackage = (place) => {
  const [file] = place.split("#");
  if (!shipped.getSchema(file)) {
    const { $id, ...schema } = JSON.parse(readFileSync(require.resolve(file), "utf8"));
    shipped.addSchema(schema, file);
  }
  return shipped.compile({ $ref: place });
};

const validators = new Map();
const validator = (schema) => {
  const key = JSON.stringify(schema);
  if (!validators.has(key)) {
    validators.set(key, typeof schema === "string" ? fromPackage(schema) : own.compile(schema));
  }
  return validators.get(key);
};

const questions = JSON.parse(readFileSync(0, "utf8"));
const complaints = questions.map(([schema, document]) => {
  const validate = validator(schema);
  return validate(document) ? [] : validate.errors.map((error) => `${error.instancePath} ${error.message}`);
});
process.stdout.write(JSON.stringify(complaints));
