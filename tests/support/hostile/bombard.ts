import { dice } from "../dice";
import { type Attempt, COSTLY, KINDS, type Kind, type Knowledge } from "./hostile-kinds";
import type { Id } from "./raw-update";
import { openStranger, type Stranger } from "./stranger";

export interface Bombardment {
  readonly url: string;
  readonly sheet: string;
  /** One cookie for each device that strangers come by. */
  readonly cookies: readonly string[];
  readonly frames: number;
  readonly seed: number;
  /** An honest page's client id, and how far it has written by now. */
  readonly victim: () => Id;
  /** After every few hundred frames, when all of them are answered: what is wrong, if anything. */
  readonly look: () => Promise<string | null>;
}

export interface Bombarded {
  readonly frames: number;
  readonly sockets: number;
  /** How many of each kind. */
  readonly kinds: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
}

const IN_ONE_GO = 25; // frames on their way before the answers to them are looked at
const A_SOCKET = 500; // within the burst that a socket may send without being read more slowly
const MOST_BAD = 20;
const A_COSTLY_ONE = 500; // frames; each is a megabyte, or makes the hub send one
const ENOUGH_FAULTS = 20;

/**
 * Sends frame after frame that no page would send, from strangers on several devices, one after another,
 * and holds each against what has to come of it.
 */
export async function bombard(plan: Bombardment): Promise<Bombarded> {
  const { frames, seed, cookies } = plan;
  const roll = dice(seed);
  const names = Object.keys(KINDS);
  const kinds: Record<string, number> = {};
  const faults: string[] = [];
  let sent = 0;
  let sockets = 0;
  let other: Id = { client: 1, clock: 0 };
  const next = (): readonly [string, Kind] => {
    const costly = sent % A_COSTLY_ONE === A_COSTLY_ONE - 1;
    // Each in its turn at first, so that also a short run has all of them.
    const from = costly ? COSTLY : KINDS;
    const name = costly ? roll.of(Object.keys(COSTLY)) : (names[sent % names.length] ?? "");
    sent++;
    kinds[name] = (kinds[name] ?? 0) + 1;
    const kind = from[name];
    if (kind === undefined) throw new Error(`there is no kind ${name}`);
    return [name, kind];
  };
  while (sent < frames && faults.length < ENOUGH_FAULTS) {
    const cookie = cookies[sockets++ % cookies.length] ?? "";
    const client = 1e6 + roll.below(1e6) * 1000 + sockets;
    const stranger = await openStranger({ ...plan, cookie, client });
    const visit = createVisit(stranger, client);
    for (let here = 0; here < A_SOCKET && sent < frames && stranger.closed() === null; ) {
      for (let turn = 0; turn < IN_ONE_GO && sent < frames; turn++, here++) {
        const [name, kind] = next();
        visit.try(name, kind, { roll, victim: plan.victim(), other });
      }
      await stranger.done();
      faults.push(...visit.check());
    }
    if (visit.self().clock > 0 && sockets % cookies.length !== 0) other = visit.self();
    if (stranger.closed() === null) await stranger.leave();
    const wrong = await plan.look();
    if (wrong !== null) faults.push(`after ${sent} frames: ${wrong}`);
  }
  return { frames: sent, sockets, kinds, faults };
}

interface Tried {
  readonly name: string;
  readonly attempt: Attempt;
  /** Its number among the update frames, 0 if it is none. */
  readonly number: number;
}

/** One socket's stay: what it tried, and what has to have come of it. */
function createVisit(stranger: Stranger, client: number) {
  const tried: Tried[] = [];
  let clock = 0;
  let surelyBad = 0;
  let perhapsBad = 0;
  return {
    self: () => ({ client, clock }),
    try(name: string, kind: Kind, knows: Omit<Knowledge, "self">): void {
      const attempt = kind({ ...knows, self: { client, clock } });
      if (attempt.bad === true) surelyBad++;
      if (attempt.bad === "any") perhapsBad++;
      clock += attempt.wrote ?? 0;
      tried.push({ name, attempt, number: stranger.send(attempt.frame) });
    },
    /** What was answered so far; after the last frame that a closed socket was heard of, nothing is known. */
    check(): string[] {
      const closed = stranger.closed();
      const heard = closed === null ? Number.POSITIVE_INFINITY : lastOf(stranger.refusals);
      const faults = tried.splice(0).flatMap(({ name, attempt, number }) => {
        const got = stranger.refusals.get(number) ?? null;
        if (number === 0 || attempt.refused === "any" || number > heard) return [];
        return got === attempt.refused
          ? []
          : [`${name}: should be refused as ${attempt.refused}, was as ${got}`];
      });
      if (closed === null && surelyBad > MOST_BAD)
        faults.push(`${surelyBad} bad frames were borne`);
      if (closed !== null && closed !== 4400) faults.push(`a stranger was closed with ${closed}`);
      if (closed === 4400 && surelyBad + perhapsBad <= MOST_BAD)
        faults.push(`closed after ${surelyBad} bad frames at most`);
      return faults;
    },
  };
}

function lastOf(refusals: ReadonlyMap<number, string>): number {
  return Math.max(0, ...refusals.keys());
}
