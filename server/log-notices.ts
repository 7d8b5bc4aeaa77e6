import { type Log, saidBy } from "./log";
import { NO_NOTICES, type Notices } from "./notices";

const SHORT = 12; // enough of a device's hash to tell offenders apart

/** What of the hub's affairs is worth a line. Devices are named by the beginning of their hash. */
export function logNotices(log: Log): Notices {
  return {
    ...NO_NOTICES,
    refused: (code, { device }) => log.offence("refused", device.slice(0, SHORT), { code }),
    poisoned: (device) => log.offence("quarantined", device.slice(0, SHORT)),
    compacted({ documentId, outcome, error }) {
      if (outcome !== "failed") return;
      log.offence("compaction-failed", `document ${documentId}`, { error: saidBy(error) });
    },
    gap: (documentId) => log.error("gap", { documentId }),
    snapshotsDamaged: (documentId, count) => log.error("snapshot-damaged", { documentId, count }),
    slowReaderClosed: () => log.offence("slow-reader", "all"),
    fault: (where, error) => log.offence("fault", where, { error: saidBy(error) }),
  };
}

/** Tells several listeners of everything. */
export function noticesFor(...listeners: readonly Notices[]): Notices {
  const names = Object.keys(NO_NOTICES) as (keyof Notices)[];
  const tell = (name: keyof Notices) => {
    return (...said: readonly unknown[]) => {
      for (const listener of listeners) {
        (listener[name] as (...args: readonly unknown[]) => void)(...said);
      }
    };
  };
  return Object.fromEntries(names.map((name) => [name, tell(name)])) as unknown as Notices;
}
