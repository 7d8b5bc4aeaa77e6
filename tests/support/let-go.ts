import { setImmediate as nextTurn } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";

/**
 * Lets go of closed databases now. The driver keeps a file open until what was prepared on it has been
 * collected; a process that ends does that by ending.
 */
export async function letGo(): Promise<void> {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  for (let turns = 0; turns < 2; turns++) {
    collect();
    await nextTurn();
  }
}
