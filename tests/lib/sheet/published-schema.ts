import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";

const FILE = new URL("../../../docs/heelstrip-sheet.schema.json", import.meta.url);

/** The schema of a sheet file, as it is published. */
export const schema = JSON.parse(readFileSync(FILE, "utf8"));

/** Whether a value is a sheet by it. */
export const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);
