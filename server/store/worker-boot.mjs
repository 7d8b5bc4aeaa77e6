// A thread does not inherit the loader that lets the main thread read TypeScript: it takes its own, which
// keeps a processor busy for a second or more. Tests start hundreds of hubs, and name one made beforehand.
const made = process.env.HEELSTRIP_STORE_THREAD;
if (made === undefined) {
  const { register } = await import("tsx/esm/api");
  register();
}
await import(made ?? "./worker.ts");
