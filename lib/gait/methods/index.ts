import type { Method } from "../method";

/** How each check measures, in the order of `CHECK_IDS`. A new check adds its own here. */
export const METHODS: readonly Method[] = [];
