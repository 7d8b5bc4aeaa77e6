import type { SheetId } from "../../shared/sheet-id";
import type { Clock } from "../clock";
import type { Connection } from "../connection";
import type { Notices } from "../notices";
import type { Store } from "../store/store";

const POLL_MS = 2000; // how late this instance may hear of what another one changed
const LONGEST_TIMER_MS = 2 ** 31 - 1;

/** Holds the rights of everyone connected to what the database says of them. */
export interface AccessWatch {
  /** How often rights have changed so far, as a mark: what was asked before an other mark may be void. */
  mark(): number;
  /** Asks anew for everyone on the sheet, or for one device on it. Nothing of theirs is done until then. */
  review(sheet: SheetId, device?: string): void;
  /** Looks after a newcomer, whose right was asked for under that mark. */
  greet(connection: Connection, mark: number): void;
  stop(): void;
}

export interface AccessWatchDeps {
  readonly store: Pick<Store, "grantOf" | "controlAfter">;
  readonly clock: Clock;
  readonly connections: ReadonlySet<Connection>;
  readonly notices: Notices;
  readonly onGeneration: (sheet: string) => void;
}

/**
 * A link may be revoked, change its role or expire, and a device may come in by a stronger one. What
 * this instance does itself it hears of at once; what others did it reads from the database's own list.
 */
export function createAccessWatch(deps: AccessWatchDeps): AccessWatch {
  const { store, clock, connections, notices, onGeneration } = deps;
  const unsettled = new Set<Connection>();
  const callOffs = new Map<Connection, () => void>();
  let marks = 0;
  let seen: number | null = null;
  let stopped = false;

  const expectEnd = (connection: Connection) => {
    callOffs.get(connection)?.();
    callOffs.delete(connection);
    const { expiresAt } = connection.grant();
    if (expiresAt === null || !connections.has(connection)) return;
    const left = Math.max(0, expiresAt - clock.now());
    // A timer holds three weeks at most; when it rings too early, the next one is set.
    const callOff = clock.after(Math.min(left, LONGEST_TIMER_MS), () => reviewAll([connection]));
    callOffs.set(connection, callOff);
  };
  const settle = async (connection: Connection) => {
    const { device, sheet } = connection.visitor;
    const under = marks;
    try {
      const grant = await store.grantOf(Buffer.from(device, "hex"), sheet, clock.now());
      if (under !== marks && connections.has(connection)) return settle(connection);
      unsettled.delete(connection);
      connection.settle(grant);
      if (grant !== null) expectEnd(connection);
    } catch (error) {
      notices.fault("access", error); // it stays in doubt, and is asked for again with the next poll
    }
  };
  const reviewAll = (some: Iterable<Connection>) => {
    const list = [...some];
    marks++;
    for (const connection of list) {
      connection.doubt();
      unsettled.add(connection);
    }
    for (const connection of list) void settle(connection);
  };
  const poll = async () => {
    const rows = await store.controlAfter(seen ?? 0);
    const isFirst = seen === null;
    seen = rows.at(-1)?.id ?? seen ?? 0;
    if (isFirst) return; // what happened before anyone was connected
    for (const row of rows) if (row.what === "generation-raised") onGeneration(row.subject);
    // A changed link may be any of those a device holds, so everyone is asked for.
    if (rows.some(({ what }) => what !== "generation-raised")) reviewAll(connections);
  };
  const pollAgain = () => {
    const again = () => {
      for (const connection of unsettled) {
        if (!connections.has(connection)) unsettled.delete(connection);
        else void settle(connection);
      }
      for (const [connection, callOff] of callOffs) {
        if (connections.has(connection)) continue;
        callOff();
        callOffs.delete(connection);
      }
      if (!stopped) callOffPoll = clock.after(POLL_MS, pollAgain);
    };
    poll()
      .catch((error: unknown) => notices.fault("control", error))
      .finally(again);
  };
  let callOffPoll = () => {};
  pollAgain();

  return {
    mark: () => marks,
    review(sheet, device) {
      reviewAll(
        [...connections].filter(
          ({ visitor }) =>
            visitor.sheet === sheet && (device === undefined || visitor.device === device),
        ),
      );
    },
    greet(connection, mark) {
      if (mark === marks) expectEnd(connection);
      else reviewAll([connection]);
    },
    stop() {
      stopped = true;
      callOffPoll();
      for (const callOff of callOffs.values()) callOff();
    },
  };
}
