import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { describe, expect, it } from "vitest";
import { Awareness, encodeAwarenessUpdate } from "y-protocols/awareness";
import { writeSyncStep1, writeSyncStep2, writeUpdate } from "y-protocols/sync";
import * as Y from "yjs";
import {
  encodeGoing,
  encodeHello,
  encodeRefused,
  encodeRole,
  encodeSaved,
  encodeStorage,
  type Hello,
  readGoing,
  readHello,
  readRefused,
  readRole,
  readSaved,
  readStorage,
} from "../../shared/hub-message";
import { LIMITS } from "../../shared/limits";
import {
  encodeAwareness,
  encodeLive,
  encodeRelayedLive,
  encodeSync,
  isUpdateFrame,
  MESSAGE,
  readAwareness,
  readPageMessage,
  readRelayedLive,
  SYNC,
} from "../../shared/protocol";

/** Behind the type, where a page's handlers begin to read. */
function behindType(frame: Uint8Array): decoding.Decoder {
  const decoder = decoding.createDecoder(frame);
  decoding.readVarUint(decoder);
  return decoder;
}

/** A frame as y-protocols writes it. */
function written(write: (encoder: encoding.Encoder) => void): Uint8Array {
  return encoding.encode((encoder) => {
    encoding.writeVarUint(encoder, 0);
    write(encoder);
  });
}

const doc = new Y.Doc();
doc.getMap("strokes").set("a", Uint8Array.of(1, 2, 3));
const state = Y.encodeStateAsUpdate(doc);

describe("frames shared with y-protocols", () => {
  it("are written byte for byte alike", () => {
    expect(encodeSync(SYNC.step1, Y.encodeStateVector(doc))).toEqual(
      written((encoder) => writeSyncStep1(encoder, doc)),
    );
    expect(encodeSync(SYNC.step2, state)).toEqual(
      written((encoder) => writeSyncStep2(encoder, doc)),
    );
    expect(encodeSync(SYNC.update, state)).toEqual(
      written((encoder) => writeUpdate(encoder, state)),
    );
  });

  it("carry presence as y-protocols does", () => {
    const awareness = new Awareness(doc);
    awareness.setLocalState({ name: "Anna" });
    const theirs = encodeAwarenessUpdate(awareness, [doc.clientID]);
    const entries = readAwareness(theirs);
    expect(entries).toMatchObject([{ client: doc.clientID, state: '{"name":"Anna"}' }]);
    expect(readPageMessage(encodeAwareness(entries))).toEqual({ kind: "awareness", body: theirs });
    awareness.destroy();
  });

  it("are counted as update frames when they carry an update, and only then", () => {
    expect(isUpdateFrame(encodeSync(SYNC.step1, Uint8Array.of(0)))).toBe(false);
    expect(isUpdateFrame(encodeSync(SYNC.step2, state))).toBe(true);
    expect(isUpdateFrame(encodeSync(SYNC.update, state))).toBe(true);
    expect(isUpdateFrame(Uint8Array.of(0, 2))).toBe(true); // damaged, and counted by both sides
    expect(isUpdateFrame(encodeLive(Uint8Array.of(2)))).toBe(false);
    expect(isUpdateFrame(new Uint8Array())).toBe(false);
  });
});

describe("a page's frame", () => {
  it("is told by its type", () => {
    expect(readPageMessage(encodeSync(SYNC.step2, state))).toMatchObject({
      kind: "update",
      first: true,
    });
    expect(readPageMessage(encodeSync(SYNC.update, state))).toMatchObject({ first: false });
    expect(readPageMessage(Uint8Array.of(MESSAGE.queryAwareness))).toEqual({
      kind: "query-awareness",
    });
    expect(readPageMessage(encodeLive(Uint8Array.of(1, 2)))).toEqual({
      kind: "live",
      payload: Uint8Array.of(1, 2),
    });
  });

  it("is refused where it ends too soon or is of no type that pages send", () => {
    for (const bytes of [[], [0], [0, 1], [0, 2, 9, 1], [0, 7, 0], [1, 4, 1], [64, 0], [99]]) {
      expect(() => readPageMessage(Uint8Array.from(bytes)), `${bytes}`).toThrow();
    }
  });
});

describe("a hub's frame", () => {
  it("reads back as it was written", () => {
    const hello: Hello = {
      protocol: 1,
      role: "critique",
      document: "critique",
      generation: 3,
      instance: "abc",
      connection: 12,
      serverTime: 1_700_000_000_000,
      limits: LIMITS,
    };
    expect(readHello(behindType(encodeHello(hello)))).toEqual(hello);
    expect(readSaved(behindType(encodeSaved(300)))).toBe(300);
    const refused = { frame: 7, code: "resync", message: "änders" } as const;
    expect(readRefused(behindType(encodeRefused(refused)))).toEqual(refused);
    const storage = { state: "slow", behindMs: 1200 } as const;
    expect(readStorage(behindType(encodeStorage(storage)))).toEqual(storage);
    const going = { minMs: 500, maxMs: 3000, reason: "restart" };
    expect(readGoing(behindType(encodeGoing(going)))).toEqual(going);
    expect(readRole(behindType(encodeRole("draw")))).toBe("draw");
    const live = behindType(encodeRelayedLive(2 ** 32 - 1, Uint8Array.of(5, 6)));
    expect(readRelayedLive(live)).toEqual({ client: 2 ** 32 - 1, payload: Uint8Array.of(5, 6) });
  });

  it("from a newer hub falls back to what promises least", () => {
    const unknown = (type: number, word: string) =>
      behindType(
        encoding.encode((encoder) => {
          encoding.writeVarUint(encoder, type);
          encoding.writeVarString(encoder, word);
          encoding.writeVarUint(encoder, 0);
        }),
      );
    expect(readRole(unknown(MESSAGE.role, "king"))).toBe("view");
    expect(readStorage(unknown(MESSAGE.storage, "melting")).state).toBe("failing");
  });

  it("is no hello unless it says who one is", () => {
    const said = (text: string) =>
      behindType(
        encoding.encode((encoder) => {
          encoding.writeVarUint(encoder, MESSAGE.hello);
          encoding.writeVarString(encoder, text);
        }),
      );
    expect(() => readHello(said("{}"))).toThrow(TypeError);
    expect(() => readHello(said("null"))).toThrow(TypeError);
    expect(() => readHello(said('{"protocol":1'))).toThrow();
  });
});
