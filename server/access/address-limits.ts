import type { Clock } from "../clock";
import { createPace, type Pace } from "../pace";

/** What one address may have or do. Two hundred people behind one address are a school, not an attack. */
export interface AddressAllowance {
  readonly sockets: number;
  readonly requestsPerMinute: number;
  readonly sheetsPerHour: number;
}

/** Counts what comes from each address, and forgets an address that has been quiet. */
export interface AddressLimits {
  /** Counts one more socket until what it returns is called; null if the address has as many as it may. */
  takeSocket(address: string): (() => void) | null;
  /** Counts a request; answers for how many ms the address has to wait first, 0 for none. */
  takeRequest(address: string): number;
  takeSheet(address: string): number;
}

const FORGET_EVERY_MS = 60_000;

export function createAddressLimits(allowance: AddressAllowance, clock: Clock): AddressLimits {
  const { sockets, requestsPerMinute, sheetsPerHour } = allowance;
  const open = new Map<string, number>();
  const requests = createCounts(requestsPerMinute, 60, clock);
  const sheets = createCounts(sheetsPerHour, 3600, clock);
  return {
    takeSocket(address) {
      const count = open.get(address) ?? 0;
      if (count >= sockets) return null;
      open.set(address, count + 1);
      return () => {
        const left = (open.get(address) ?? 1) - 1;
        if (left === 0) open.delete(address);
        else open.set(address, left);
      };
    },
    takeRequest: requests.take,
    takeSheet: sheets.take,
  };
}

/** So many in so many seconds, and as many at once after a quiet while. */
function createCounts(count: number, seconds: number, clock: Clock) {
  const paces = new Map<string, Pace>();
  let forgottenAt = clock.now();
  const forget = () => {
    if (clock.now() - forgottenAt < FORGET_EVERY_MS) return;
    forgottenAt = clock.now();
    for (const [address, pace] of paces) if (pace.isFull()) paces.delete(address);
  };
  return {
    take(address: string): number {
      forget();
      const known = paces.get(address);
      // One is kept back: a bucket that holds none is not below zero yet.
      const pace = known ?? createPace({ perSecond: count / seconds, burst: count - 1 }, clock);
      if (known === undefined) paces.set(address, pace);
      const waitMs = pace.waitMs();
      if (waitMs === 0) pace.take(1);
      return waitMs;
    },
  };
}
