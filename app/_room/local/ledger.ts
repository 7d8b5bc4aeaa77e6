import type { RefusalCode } from "../../../shared/hub-message";
import { type KeptWork, keyText } from "./kept-work";

interface Entry {
  work: KeptWork;
  /** The update frame that handed it over; null while none has on this connection. */
  frame: number | null;
  /** The hub refused its frame, which held so many things. */
  blamed: number;
}

interface Refusal {
  readonly frame: number;
  readonly code: RefusalCode;
}

/** What was done in one document and is not known to be saved, in order. */
export interface Ledger {
  /** `frame`: the update frame that it left with; null while the line is away. */
  add(work: KeptWork, frame: number | null): void;
  /** The answer to the hub's first question left as this frame: it holds all that waited. */
  answered(frame: number): void;
  /** What was on its way to a line that fell is not known to have arrived. */
  lineFell(): void;
  /** The hub has committed so many frames; answers what that saves. */
  saved(frames: number): readonly KeptWork[];
  all(): readonly KeptWork[];
  /** All of it, once: nothing waits any more. */
  takeAll(): readonly KeptWork[];
  /** Something has not been handed over. */
  hasUnsent(): boolean;
  /** The hub refused a frame: whose fault that is must be known before the line falls and frames are forgotten. */
  refused(refusal: Refusal): void;
  /** What becomes of everything here, now that a frame was refused or the document is void. */
  setAside(): KeptWork[];
}

export function createLedger(): Ledger {
  let entries: Entry[] = [];
  let code: RefusalCode | null = null;
  return {
    add(work, frame) {
      entries = entries.filter((entry) => keyText(entry.work.key) !== keyText(work.key));
      entries.push({ work, frame, blamed: 0 });
    },
    answered(frame) {
      for (const entry of entries) entry.frame ??= frame;
    },
    lineFell() {
      for (const entry of entries) entry.frame = null;
    },
    saved(frames) {
      const isSaved = ({ frame }: Entry) => frame !== null && frame <= frames;
      const saved = entries.filter(isSaved);
      if (saved.length > 0) entries = entries.filter((entry) => !isSaved(entry));
      return saved.map(({ work }) => work);
    },
    all: () => entries.map(({ work }) => work),
    takeAll() {
      const taken = entries.map(({ work }) => work);
      entries = [];
      return taken;
    },
    hasUnsent: () => entries.some(({ frame }) => frame === null),
    refused(refusal) {
      const held = entries.filter(({ frame }) => frame === refusal.frame);
      for (const entry of held) entry.blamed = held.length;
      code = refusal.code;
    },
    setAside() {
      return entries.map((entry) => {
        const lost = code !== null && isLost(code, entry);
        return { ...entry.work, update: null, lost: lost ? code : null };
      });
    },
  };
}

/** Codes that speak of the whole document: what came after the refused frame would be refused too. */
const FOR_ALL: ReadonlySet<RefusalCode> = new Set(["role", "full"]);
/** Codes that speak of what the frame held: the same work would be refused again. */
const FOR_WORK: ReadonlySet<RefusalCode> = new Set(["content", "size"]);

/**
 * Is work lost to the sheet, or may it be done again? As PROTOCOL.md has it, code by code; whatever was
 * refused once when it was done again is not tried a third time.
 */
function isLost(code: RefusalCode, { work, blamed }: Entry): boolean {
  if (FOR_ALL.has(code)) return true;
  if (blamed === 0) return false;
  // Hours of work in one answer may be too large together, and fit one by one.
  if (FOR_WORK.has(code)) return blamed === 1 || work.again;
  return work.again;
}
