const KIB = 1024;
const MIB = 1024 * KIB;

/** What a page may send, as the hub holds it and as HELLO tells it. Bytes, and numbers a second. */
export const LIMITS = {
  /** One update as people draw. A stroke of ten thousand points is about 25 KiB. */
  updateBytes: MIB,
  /** The answer to the hub's first question, which may hold hours of work done offline. */
  firstAnswerBytes: 8 * MIB,
  /** One stroke's bytes. Our own choice: twenty times the largest that a hand draws in one go. */
  strokeBytes: 512 * KIB,
  /** The name of an entry in a map; ids have eight letters. Our own choice. Characters. */
  keyLength: 200,
  /** Lists and objects inside one value. Ours have two; every reader has to walk through all of them. */
  valueDepth: 8,
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

/** What one page may send a second: messages, and bytes. */
export type PageAllowance = Pick<Limits, "messagesPerSecond" | "bytesPerSecond">;

export type Limits = { readonly [Name in keyof typeof LIMITS]: number };

/**
 * What one address may have and do, unless the operator says otherwise: two hundred people behind one
 * address, with two sockets each and some to spare, are normal. Our own choice, no source.
 */
export const ADDRESS_LIMITS = {
  sockets: 1000,
  requestsPerMinute: 6000,
  sheetsPerHour: 240,
} as const;

/** What the database keeps and when it tidies. Sources: the hub's design, measured, where none is named. */
export const STORE_LIMITS = {
  /** So many updates after a snapshot, or so many bytes of them, make the next one due. Rows, bytes. */
  compactRows: 1000,
  compactBytes: 2 * MIB,
  /** How long a document that was just compacted is let be, unless its tail is so many times as long. Our own choice, no source. */
  compactRestMs: 5000,
  compactLongTail: 4,
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
  /** A larger frame is sent in pieces of this size, so that a slow reader's progress is seen. */
  fragmentBytes: 64 * KIB,
  /** Above this much unsent, live ink is left out, and awareness but for the newest. */
  outboxSoftBytes: 256 * KIB,
  /** Above this much unsent, updates are left out and made up for later, and the page is not read. */
  outboxHardBytes: MIB,
  readerStillMs: 20_000,
  beatAfterMs: 15_000,
  deadAfterMs: 45_000,
  /** For closing handshakes; whoever has not answered by then is cut off. Our own choice. */
  goodbyeMs: 500,
  badFrames: 20,
  /** So many updates from one device that each broke a document, and it is shut out. */
  strikes: 3,
  /** How often each connection is looked at. Our own choice, no source. */
  tickMs: 5000,
  /** A page whose document is not loaded by then is sent away, to try again. Our own choice. */
  loadMs: 30_000,
  /** After GOING, pages may still hand over what they hold for so long. */
  graceMs: 2000,
  /**
   * For all that the hub commits before it goes, of the ten seconds that a process manager usually
   * grants. The last try for a locked database may take two more.
   */
  drainMs: 7000,
  haltMs: 2300,
  /** The range in which pages come back after GOING: a restart takes about a second. Our own choice. */
  comeBackFirstMs: 500,
  comeBackLastMs: 3000,
  /** When the hub goes, so many sockets are closed in the same moment. Our own choice, no source. */
  closedAtOnce: 20,
  batchUpdates: 512,
  batchBytes: MIB,
  /** Above this much waiting for the disk, no socket is read. */
  backlogBytes: 32 * MIB,
  /** Nor when the oldest of it has waited this long. */
  backlogMs: 30_000,
  /**
   * A commit that takes longer is told to the pages, which have to know within a second: the other half is
   * left to a busy machine. Five times what a slow disk takes (15 ms) with a long line before it.
   */
  slowCommitMs: 500,
  /** How often they hear how long it has been. Our own choice, no source. */
  storageEveryMs: 2000,
  /** A commit that failed is tried again after this long, then twice as long, up to the longest. */
  retryFirstMs: 50,
  retryLongestMs: 2000,
  /** A batch that fails so often for no reason of the disk's is tried a document at a time. */
  brokenTries: 3,
  roomLingerMs: 30_000,
  /** A sheet file goes inside JSON, where each of its quotes and line ends takes two bytes. */
  requestBytes: 2 * SHEET_FILE_BYTES + MIB,
  /** All pictures of one sheet together, taken ones too, since undo brings those back. */
  blobBytes: 128 * MIB,
} as const;
