import type { AwarenessEntry } from "../shared/protocol";

/**
 * Who is here, by client id. Each client belongs to one connection: it alone speaks for it, and takes
 * it along when it goes.
 */
export interface PresenceTable<Owner> {
  /** Takes one entry; false if it is not newer than what is known. */
  set(entry: AwarenessEntry, owner: Owner): boolean;
  /** Removes what the connection spoke for, and says how to tell the others. */
  leave(owner: Owner): AwarenessEntry[];
  all(): AwarenessEntry[];
}

export function createPresenceTable<Owner>(): PresenceTable<Owner> {
  const states = new Map<number, { readonly entry: AwarenessEntry; readonly owner: Owner }>();
  return {
    set(entry, owner) {
      const known = states.get(entry.client)?.entry;
      const goes = entry.state === "null";
      if (known === undefined && goes) return false;
      // The rule of y-protocols: a higher clock, or the same clock to say that one has gone. A page
      // whose line was cut and is back may repeat itself under its old clock.
      const again = states.get(entry.client)?.owner !== owner;
      const newer = known === undefined || entry.clock > known.clock;
      if (!newer && !(entry.clock === known?.clock && (goes || again))) return false;
      if (goes) states.delete(entry.client);
      else states.set(entry.client, { entry, owner });
      return true;
    },
    leave(owner) {
      const mine = [...states.values()].filter((held) => held.owner === owner);
      for (const { entry } of mine) states.delete(entry.client);
      return mine.map(({ entry }) => ({ ...entry, state: "null" }));
    },
    all: () => [...states.values()].map(({ entry }) => entry),
  };
}
