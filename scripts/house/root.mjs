import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** The checkout these scripts belong to, wherever they are called from. */
export const ROOT = fileURLToPath(new URL("../..", import.meta.url));

/** An absolute path inside the checkout. */
export const inRoot = (...parts) => join(ROOT, ...parts);
