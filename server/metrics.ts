import { Counter, Gauge, Histogram, Registry } from "prom-client";
import { ROLES } from "../shared/role";
import type { Clock } from "./clock";
import type { Figures } from "./hub";
import type { LoopWatch } from "./loop-watch";
import { NO_NOTICES, type Notices } from "./notices";
import type { RoomState } from "./room-life";

const PREFIX = "heelstrip_";
const ROOM_STATES: readonly RoomState[] = ["loading", "open", "draining"];
const SECONDS = [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2, 5, 10, 30];
const BYTES = [1e3, 1e4, 1e5, 1e6, 1e7, 1e8];
const COUNTS = [1, 2, 5, 10, 20, 50, 100, 200, 512];

/** What the hub counts of itself, in the text format that Prometheus reads. No sheet is named in it. */
export interface Metrics {
  readonly notices: Notices;
  readonly contentType: string;
  read(): Promise<string>;
}

export interface MetricsDeps {
  /** Asked each time somebody reads; nothing is measured for nobody. */
  readonly figures: () => Figures;
  readonly clock: Clock;
  readonly loop: LoopWatch;
}

export function createMetrics({ figures, clock, loop }: MetricsDeps): Metrics {
  const registry = new Registry();
  describeFigures(registry, figures, clock.now);
  gauge(registry, "event_loop_lag_seconds", "the worst lag of the last seconds", (set) =>
    set(loop.lagMs() / 1000),
  );
  gauge(registry, "resident_memory_bytes", "memory of the process", (set) =>
    set(process.memoryUsage.rss()),
  );
  return {
    notices: countNotices(registry),
    contentType: registry.contentType,
    read: () => registry.metrics(),
  };
}

function describeFigures(registry: Registry, figures: () => Figures, now: () => number): void {
  new Gauge({
    ...{ name: `${PREFIX}sockets`, help: "open sockets, by role", labelNames: ["role"] },
    registers: [registry],
    collect() {
      const { connections } = figures();
      for (const role of ROLES) {
        this.set({ role }, connections.filter((each) => each.grant().role === role).length);
      }
    },
  });
  new Gauge({
    ...{ name: `${PREFIX}rooms`, help: "documents in memory, by state", labelNames: ["state"] },
    registers: [registry],
    collect() {
      const { rooms } = figures();
      for (const state of ROOM_STATES) {
        this.set({ state }, rooms.filter((each) => each === state).length);
      }
    },
  });
  gauge(registry, "storage_ok", "1 while commits pass, else 0", (set) =>
    set(figures().storage === "ok" ? 1 : 0),
  );
  gauge(registry, "backlog_updates", "updates that wait for the disk", (set) =>
    set(figures().waiting),
  );
  gauge(registry, "backlog_bytes", "bytes that wait for the disk", (set) =>
    set(figures().waitingBytes),
  );
  gauge(registry, "document_bytes", "bytes of all documents in memory", (set) =>
    set(figures().documentBytes.reduce((sum, each) => sum + each, 0)),
  );
  gauge(registry, "document_bytes_max", "the same, of the largest", (set) =>
    set(Math.max(0, ...figures().documentBytes)),
  );
  gauge(registry, "commit_age_seconds", "how long ago the last commit passed", (set) => {
    const { committedAt } = figures();
    if (committedAt !== null) set((now() - committedAt) / 1000);
  });
  gauge(registry, "unsent_bytes", "bytes that readers have not taken yet, of all", (set) =>
    set(figures().connections.reduce((sum, each) => sum + each.unsent(), 0)),
  );
  gauge(registry, "unsent_bytes_max", "the same, of the slowest reader", (set) =>
    set(figures().connections.reduce((most, each) => Math.max(most, each.unsent()), 0)),
  );
}

function countNotices(registry: Registry): Notices {
  const registers = [registry];
  const counter = (name: string, help: string) =>
    new Counter({ name: `${PREFIX}${name}`, help, registers });
  const histogram = (name: string, help: string, buckets: number[]) =>
    new Histogram({ name: `${PREFIX}${name}`, help, buckets, registers });
  const updates = counter("updates_total", "updates that were taken");
  const refused = new Counter({
    ...{ name: `${PREFIX}refused_total`, help: "updates that were refused, by code" },
    ...{ labelNames: ["code"], registers },
  });
  const seconds = histogram("commit_seconds", "how long commits took", SECONDS);
  const batch = histogram("commit_updates", "updates in one commit", COUNTS);
  const bytes = counter("committed_bytes_total", "bytes that were committed");
  const compactions = histogram("compaction_seconds", "how long compactions took", SECONDS);
  const joins = histogram("join_seconds", "from a socket's opening to its seat", SECONDS);
  const answers = histogram("join_bytes", "what a page was sent that it lacked, bytes", BYTES);
  const broadcasts = histogram(
    "broadcast_seconds",
    "from an update's coming to its being handed to the others",
    SECONDS,
  );
  const caughtUp = counter("catch_ups_total", "readers that were slow and have caught up");
  const slow = counter("slow_readers_closed_total", "readers that stood still and were closed");
  const poisoned = counter("quarantined_total", "updates that left a document unsound");
  const awareness = counter("awareness_total", "awareness that was passed on");
  const coalesced = new Counter({
    ...{ name: `${PREFIX}coalesced_total`, help: "passing things replaced by newer ones, by kind" },
    ...{ labelNames: ["what"], registers },
  });
  const faults = new Counter({
    ...{ name: `${PREFIX}faults_total`, help: "what should not fail and did, by place" },
    ...{ labelNames: ["where"], registers },
  });
  return {
    ...NO_NOTICES,
    updateTaken: () => updates.inc(),
    refused: (code) => refused.inc({ code }),
    committed(commit) {
      seconds.observe(commit.ms / 1000);
      batch.observe(commit.updates);
      bytes.inc(commit.bytes);
    },
    compacted: ({ ms }) => compactions.observe(ms / 1000),
    joined: (ms) => joins.observe(ms / 1000),
    answered: (size) => answers.observe(size),
    broadcast: (ms) => broadcasts.observe(ms / 1000),
    caughtUp: () => caughtUp.inc(),
    slowReaderClosed: () => slow.inc(),
    poisoned: () => poisoned.inc(),
    awarenessPassed: () => awareness.inc(),
    coalesced: (what) => coalesced.inc({ what }),
    fault: (where) => faults.inc({ where }),
  };
}

function gauge(
  registry: Registry,
  name: string,
  help: string,
  read: (set: (value: number) => void) => void,
): void {
  new Gauge({
    ...{ name: `${PREFIX}${name}`, help, registers: [registry] },
    collect() {
      read((value) => this.set(value));
    },
  });
}
