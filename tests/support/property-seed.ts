import fc from "fast-check";

/**
 * Properties try the same cases every day, so that a change alone turns a test red. `SEED=12` tries
 * others, and the soak's part `properties` new ones each round.
 */
fc.configureGlobal({ seed: Number(process.env.SEED ?? 2026) });
