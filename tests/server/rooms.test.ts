import * as encoding from "lib0/encoding";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { createCommitter } from "../../server/committer";
import { NO_NOTICES } from "../../server/notices";
import type { Member, Offer, Room } from "../../server/room";
import { createRooms, type RoomName } from "../../server/rooms";
import type { NewBatch, RefusedUpdates, StoredDocument } from "../../server/store/document-records";
import { readPageMessage } from "../../shared/protocol";
import { readSheetId } from "../../shared/sheet-id";
import { gate, handClock } from "../support/hand-clock";

const SHEET = readSheetId("AAAAAAAAAAAA");
if (SHEET === null) throw new Error("twelve letters are an id");
const EMPTY = Uint8Array.of(0); // the state vector of an empty document
const NAME: RoomName = { sheet: SHEET, document: "drawing" };

const DEVICE = "aa";

function member(): Member & { dismissed: string | null } {
  return {
    dismissed: null,
    welcome: () => {},
    send: () => {},
    dismiss(why) {
      this.dismissed = why;
    },
  };
}

function setUp({ load }: { load?: () => Promise<StoredDocument | null> } = {}) {
  const clock = handClock();
  const disk = { open: gate() };
  disk.open.open();
  const stored: Uint8Array[] = [];
  const refused: RefusedUpdates[] = [];
  const poisoned: Offer[] = [];
  let loads = 0;
  const committer = createCommitter({
    gather: () => Promise.resolve(),
    append: async ({ updates }: NewBatch) => {
      await disk.open.passed;
      stored.push(...updates.map(({ bytes }) => bytes));
      return { stored: [], refused: refused.splice(0) };
    },
    clock,
    onState: () => {},
    onPressure: () => {},
    onFault: () => {},
  });
  const plainLoad = async () => ({
    ...{ documentId: 1, generation: 1, head: stored.length, updates: [...stored] },
    ...{ size: 0, owners: [], damagedSnapshots: 0 },
  });
  const rooms = createRooms({
    load: () => {
      loads++;
      return (load ?? plainLoad)();
    },
    prepareDocument: () => {},
    committer,
    clock,
    lingerMs: 1000,
    notices: NO_NOTICES,
    onPoison: (_documentId, offer) => poisoned.push(offer),
  });
  return { clock, disk, committer, rooms, stored, refused, poisoned, loads: () => loads };
}

function draw(room: Room, by: Member, id: string): void {
  const doc = new Y.Doc();
  doc.getMap("strokes").set(id, id);
  const update = Y.encodeStateAsUpdate(doc);
  expect(
    room.take({ member: by, device: DEVICE, update, mayWrite: true, committed: () => {} }),
  ).toBeNull();
}

async function enter(rooms: ReturnType<typeof setUp>["rooms"], who: Member): Promise<Room> {
  const room = await rooms.enter(NAME, who);
  if (room === null) throw new Error("the room is there");
  return room;
}

/** The strokes of a document as sync step 2 brings it. */
function strokesIn(frame: Uint8Array | undefined): string[] {
  const message = readPageMessage(frame ?? new Uint8Array());
  if (message.kind !== "update") throw new Error(`step 2 was expected, got ${message.kind}`);
  const doc = new Y.Doc();
  Y.applyUpdate(doc, message.update);
  return [...doc.getMap("strokes").keys()];
}

describe("rooms", () => {
  it("loads once for all who arrive meanwhile", async () => {
    const { rooms, loads } = setUp();
    const [first, second] = await Promise.all([enter(rooms, member()), enter(rooms, member())]);
    expect(first).toBe(second);
    expect(loads()).toBe(1);
    expect(first.people()).toBe(2);
  });

  it("lets a room go a while after the last has left", async () => {
    const { rooms, clock, committer } = setUp();
    const who = member();
    rooms.leave(NAME, await enter(rooms, who), who);
    clock.pass(999);
    expect(rooms.states()).toEqual(["open"]);
    clock.pass(1);
    await committer.idle();
    await Promise.resolve();
    expect(rooms.states()).toEqual([]);
  });

  it("keeps the room for whoever comes back in time", async () => {
    const { rooms, clock, loads } = setUp();
    const who = member();
    const room = await enter(rooms, who);
    rooms.leave(NAME, room, who);
    clock.pass(500);
    expect(await enter(rooms, member())).toBe(room);
    clock.pass(10_000);
    expect(rooms.states()).toEqual(["open"]);
    expect(loads()).toBe(1);
  });

  it("never lets a room go while something in it is not committed", async () => {
    const { rooms, clock, disk, committer } = setUp();
    const who = member();
    const room = await enter(rooms, who);
    disk.open = gate();
    draw(room, who, "held");
    rooms.leave(NAME, room, who);
    clock.pass(60_000);
    await Promise.resolve();
    expect(rooms.states()).toEqual(["draining"]);
    disk.open.open();
    await committer.idle();
    await Promise.resolve();
    expect(rooms.states()).toEqual([]);
  });

  it("makes someone who comes while a room is draining wait, and gives them everything", async () => {
    const { rooms, clock, disk, loads, committer } = setUp();
    const who = member();
    const room = await enter(rooms, who);
    disk.open = gate();
    draw(room, who, "held");
    rooms.leave(NAME, room, who);
    clock.pass(60_000);
    const sent: Uint8Array[] = [];
    const back: Member = { ...member(), send: (frame) => sent.push(frame) };
    const returning = enter(rooms, back);
    await Promise.resolve();
    expect(loads()).toBe(1);
    disk.open.open();
    const reopened = await returning;
    expect(reopened).not.toBe(room);
    expect(loads()).toBe(2);
    reopened.answer(back, EMPTY);
    await committer.idle();
    expect(strokesIn(sent.at(-1))).toEqual(["held"]);
  });

  it("sends everyone away from a sheet that was put back, and stores nothing of the past", async () => {
    const { rooms, refused, committer, loads } = setUp();
    const who = member();
    const room = await enter(rooms, who);
    refused.push({ documentId: 1, generation: 1, reason: "generation-changed" });
    draw(room, who, "of the past");
    await committer.idle();
    expect(who.dismissed).toBe("generation");
    const again = await enter(rooms, member());
    expect(again).not.toBe(room);
    expect(loads()).toBe(2);
  });

  it("sends everyone away when it hears that a sheet was put back, and no one else", async () => {
    const { rooms } = setUp();
    const who = member();
    await enter(rooms, who);
    rooms.void("BBBBBBBBBBBB");
    expect(who.dismissed).toBeNull();
    rooms.void(SHEET);
    expect(who.dismissed).toBe("generation");
  });

  it("keeps a room that is being let go apart from the one that follows it", async () => {
    const { rooms, clock, committer, loads } = setUp();
    const [old, young] = [member(), member()];
    const first = await enter(rooms, old);
    rooms.reload(1);
    const second = await enter(rooms, young);
    rooms.leave(NAME, first, old); // its socket closes only now
    clock.pass(60_000);
    await committer.idle();
    expect(rooms.states()).toEqual(["open"]);
    expect(second.people()).toBe(1);
    expect(loads()).toBe(2);
  });

  it("seats nobody in a room that cannot be loaded, and tries anew for the next", async () => {
    let works = false;
    const { rooms } = setUp({
      load: async () => {
        if (!works) throw new Error("the disk is away");
        return {
          documentId: 1,
          generation: 1,
          head: 0,
          size: 0,
          updates: [],
          owners: [],
          damagedSnapshots: 0,
        };
      },
    });
    await expect(rooms.enter(NAME, member())).rejects.toThrow("the disk is away");
    expect(rooms.states()).toEqual([]);
    works = true;
    expect((await enter(rooms, member())).people()).toBe(1);
  });

  it("answers null where there is no such document", async () => {
    const { rooms } = setUp({ load: async () => null });
    expect(await rooms.enter(NAME, member())).toBeNull();
    expect(rooms.states()).toEqual([]);
  });

  it("sends everyone away from a document that an update left unsound, and loads it again", async () => {
    const { rooms, loads, stored, poisoned } = setUp();
    const who = member();
    const room = await enter(rooms, who);
    draw(room, who, "sound");
    const refusal = room.take({
      ...{ member: who, device: DEVICE, mayWrite: true, committed: () => {} },
      update: circular(),
    });
    expect(refusal).not.toBeNull();
    expect(who.dismissed).toBe("reload");
    expect(poisoned).toHaveLength(1);
    const again = await enter(rooms, member());
    expect(again).not.toBe(room);
    expect(loads()).toBe(2);
    const doc = new Y.Doc();
    for (const bytes of stored) Y.applyUpdate(doc, bytes);
    expect(doc.store.pendingStructs).toBeNull();
    expect([...doc.getMap("strokes").keys()]).toEqual(["sound"]);
  });
});

/** Two clients whose items each stand on the other's: whole to read, impossible to apply. */
function circular(): Uint8Array {
  const [a, b] = [new Y.Doc(), new Y.Doc()];
  a.clientID = 1;
  b.clientID = 2;
  a.getMap("strokes").set("one", "a");
  Y.applyUpdate(b, Y.encodeStateAsUpdate(a));
  b.getMap("strokes").set("one", "b");
  const update = Y.encodeStateAsUpdate(b);
  const decoded = Y.decodeUpdate(update);
  const first = decoded.structs.find(({ id }) => id.client === 1);
  if (!(first instanceof Y.Item)) throw new Error("an item was inserted");
  first.origin = Y.createID(2, 0);
  const writer = new Y.UpdateEncoderV1();
  const clients = [2, 1];
  const { restEncoder } = writer;
  encoding.writeVarUint(restEncoder, clients.length);
  for (const client of clients) {
    encoding.writeVarUint(restEncoder, 1);
    writer.writeClient(client);
    encoding.writeVarUint(restEncoder, 0);
    decoded.structs.find(({ id }) => id.client === client)?.write(writer, 0);
  }
  encoding.writeVarUint(restEncoder, 0); // nothing deleted
  return writer.toUint8Array();
}
