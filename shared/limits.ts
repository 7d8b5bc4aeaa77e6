const KIB = 1024;
const MIB = 1024 * KIB;

/** What a page may send, as the hub holds it and as HELLO tells it. Bytes, and numbers a second. */
export const LIMITS = {
  /** One update as people draw. A stroke of ten thousand points is about 25 KiB. */
  updateBytes: MIB,
  /** The answer to the hub's first question, which may hold hours of work done offline. */
  firstAnswerBytes: 8 * MIB,
  /** A whole document, as the sum of its updates. */
  documentBytes: 64 * MIB,
  awarenessBytes: 4 * KIB,
  awarenessPerSecond: 40,
  liveBytes: 16 * KIB,
  livePerSecond: 60,
  liveBurst: 30,
  messagesPerSecond: 300,
  messagesBurst: 600,
  bytesPerSecond: MIB,
  bytesBurst: 16 * MIB,
  connectionsPerDocument: 200,
} as const;

/** A sheet file may be this large; the library reads none that is larger. Bytes. */
export const SHEET_FILE_BYTES = 16 * MIB;

export type Limits = { readonly [Name in keyof typeof LIMITS]: number };

/** What only the hub needs to know. Bytes and milliseconds. */
export const HUB_LIMITS = {
  /** The largest frame a socket takes at all: the first answer and its few bytes of heading. */
  frameBytes: LIMITS.firstAnswerBytes + KIB,
  /** Above this much unsent, live ink and awareness are left out. */
  outboxSoftBytes: 256 * KIB,
  /** Above this much unsent, updates are left out and made up for later. */
  outboxHardBytes: MIB,
  readerStillMs: 20_000,
  beatAfterMs: 15_000,
  deadAfterMs: 45_000,
  badFrames: 20,
  batchUpdates: 512,
  batchBytes: MIB,
  /** Above this much waiting for the disk, no socket is read. */
  backlogBytes: 32 * MIB,
  roomLingerMs: 30_000,
  /** A sheet file goes inside JSON, where each of its quotes and line ends takes two bytes. */
  requestBytes: 2 * SHEET_FILE_BYTES + MIB,
} as const;
