import { HUB_LIMITS } from "../shared/limits";

/** Which devices have sent what broke a document, and how often. */
export interface Strikes {
  /** Counts one more; true if that was one too many. */
  add(device: string): boolean;
  areOut(device: string): boolean;
}

export function createStrikes(): Strikes {
  const counts = new Map<string, number>();
  const areOut = (device: string) => (counts.get(device) ?? 0) >= HUB_LIMITS.strikes;
  return {
    add(device) {
      counts.set(device, (counts.get(device) ?? 0) + 1);
      return areOut(device);
    },
    areOut,
  };
}
