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

/**
 * A reference picture under the paper. Our own choice, no source. A view is 720 × 1200 panel units; at
 * 2048 pixels a picture that fills it has more than one for each pixel of a view drawn large.
 */
export const PICTURE_LIMITS = {
  /** What the page encodes it to, and the most the hub takes. Bytes. */
  bytes: 2 * MIB,
  /** Its longest side after encoding, and the most the hub takes. Pixels. */
  side: 2048,
  /** The largest file a page opens to encode it. Bytes. */
  fileBytes: 64 * MIB,
  /** The most a page decodes, four bytes of memory for each. Pixels. */
  filePixels: 100_000_000,
} as const;

export type Limits = { readonly [Name in keyof typeof LIMITS]: number };

/** What the database keeps and when it tidies. Sources: the hub's design, measured, where none is named. */
export const STORE_LIMITS = {
  /** So many updates after a snapshot, or so many bytes of them, make the next one due. Rows, bytes. */
  compactRows: 1000,
  compactBytes: 2 * MIB,
  /** The same when nobody is in the room any more. Rows. */
  compactRowsAtClose: 200,
  /** Old rows go in steps, so that nobody waits long for the database. Rows. */
  deleteStep: 1000,
  /** Whoever compacts and is not heard of for so long has died. Our own choice, no source. */
  leaseMs: 60_000,
  /** Of bytes a document could not take: so many pieces a document, so much of each. Pieces, bytes. */
  quarantined: 100,
  quarantinedBytes: 64 * KIB,
  /** How long an instance may be away and still hear of every revocation. Our own choice, no source. */
  controlKeptMs: 24 * 3600 * 1000,
} as const;

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
  /** All pictures of one sheet together, taken ones too, since undo brings those back. */
  blobBytes: 128 * MIB,
} as const;
