// A thread does not inherit the loader that lets the main thread read TypeScript: it takes its own.
import { register } from "tsx/esm/api";

register();
await import("./worker.ts");
