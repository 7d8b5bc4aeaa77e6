import type { RefusalCode } from "../../../shared/hub-message";
import { LIMITS } from "../../../shared/limits";
import type { Dice } from "../dice";
import { type Bytes, sized, text, varuint } from "./raw-bytes";
import { ANSWER, DRAWN, liveFrame, presenceFrame, syncFrame } from "./raw-frames";
import {
  anyDeep,
  anyObject,
  anyText,
  CONTENT,
  type Deletion,
  hole,
  type Id,
  item,
  type Place,
  plain,
  type Struct,
  stroke,
  TYPE,
  update,
} from "./raw-update";

/** What a stranger knows when it makes a frame. */
export interface Knowledge {
  readonly roll: Dice;
  /** Its own client id, and how far it has written under it. */
  readonly self: Id;
  /** An honest page's client id, and how far that has written. */
  readonly victim: Id;
  /** The client id of another stranger on another device, and how far that one has written. */
  readonly other: Id;
}

/** A frame, and what has to come of it. */
export interface Attempt {
  /** Text goes as a text message. */
  readonly frame: Bytes | Uint8Array | string;
  /** The code it is refused with; null: it is not; "any": chance decides. */
  readonly refused: RefusalCode | null | "any";
  /** It cannot be read as a frame: more than twenty of those, and the socket is closed. */
  readonly bad: boolean | "any";
  /** By how much the stranger's own clock moves if the frame is taken. */
  readonly wrote?: number;
}

export type Kind = (knows: Knowledge) => Attempt;

const drawn = (body: ArrayLike<number>) => syncFrame(DRAWN, body);
const says = (structs: readonly Struct[], at: Id, deletions: readonly Deletion[] = []) =>
  update([{ ...at, structs }], deletions);
const refused = (code: RefusalCode, body: ArrayLike<number>): Attempt => ({
  ...{ frame: drawn(body), refused: code, bad: false },
});
const unread = (frame: Attempt["frame"], code: RefusalCode | null = null): Attempt => ({
  ...{ frame, refused: code, bad: true },
});
const taken = (body: ArrayLike<number>, wrote = 0): Attempt => ({
  ...{ frame: drawn(body), refused: null, bad: false, wrote },
});
const ignored = (frame: Attempt["frame"]): Attempt => ({ frame, refused: null, bad: false });
const fresh = ({ roll }: Knowledge) => stroke(`s${roll.below(1e6)}`, roll.bytes(roll.below(60)));
const next = ({ client, clock }: Id, by: number): Id => ({ client, clock: clock + by });
const stranger = ({ roll }: Knowledge): Id => ({ client: 1e9 + roll.below(1e9), clock: 0 });

/** Something of a content or at a place that a sheet's document never has. */
const foreign = (content: number, body: Bytes, place: Place = { key: "k" }): Kind => {
  return ({ self }) => refused("content", says([item(content, body, place)], self));
};
const nullAny: Bytes = [126];
/** Deeper than the machine's own stack, and nothing deleted behind it. */
const BUCKET = new Uint8Array(LIMITS.liveBytes + 2).fill(4); // live ink is of type 4
const WELL = Uint8Array.from([...anyDeep(20_000), 0]);

/** What is noise to the hub already as a frame. */
const NOISE: Readonly<Record<string, Kind>> = {
  noise: ({ roll }) => ({
    ...{ frame: [...roll.bytes(1 + roll.below(200))], refused: "any", bad: "any" },
  }),
  nothing: () => unread([]),
  words: () => unread("hello"),
  "a type that there is not": ({ roll }) =>
    unread([5 + roll.below(120), ...roll.bytes(roll.below(20))]),
  "a frame cut short": (knows) => {
    const whole = drawn(says([fresh(knows)], knows.self));
    return unread(whole.slice(0, 2 + knows.roll.below(whole.length - 2)), "damaged");
  },
  "a length that lies": ({ roll }) =>
    unread([0, DRAWN, ...varuint(2 ** 32 + roll.below(1e6)), ...roll.bytes(20)], "damaged"),
  "a number without end": ({ roll }) =>
    unread([0, DRAWN, ...Array.from({ length: 12 + roll.below(80) }, () => 0xff)], "damaged"),
  "a kind of sync that there is not": ({ roll }) => unread([0, 3 + roll.below(100), 0]),
  "a question that is none": ({ roll }) =>
    unread([0, 0, ...sized([...varuint(2 ** 30), ...roll.bytes(9)])]),
  "a zero written the long way": (knows) => ({
    ...{ frame: [0x80, 0, ...drawn(says([fresh(knows)], stranger(knows))).slice(1)], bad: false },
    refused: "any",
  }),
};

/** Presence and live ink. */
const PASSING: Readonly<Record<string, Kind>> = {
  "presence of somebody else": ({ victim }) =>
    ignored(presenceFrame([{ client: victim.client, clock: 9e6, state: "null" }])),
  "presence that is no JSON": ({ self, roll }) =>
    unread(presenceFrame([{ client: self.client, clock: roll.below(1e9), state: '{"a":' }])),
  "presence that is far too long": ({ self }) =>
    ignored(
      presenceFrame([
        { client: self.client, clock: 1, state: `"${"a".repeat(LIMITS.awarenessBytes)}"` },
      ]),
    ),
  "more presence than there is": ({ self }) =>
    unread(presenceFrame([{ client: self.client, clock: 1, state: "{}" }], 2 ** 40)),
  "presence from the end of time": ({ self }) =>
    ignored(presenceFrame([{ client: self.client, clock: 2 ** 53 - 1, state: '{"__proto__":1}' }])),
  "a question who is here": () => ignored([3]),
  "live ink": ({ roll }) => ignored(liveFrame(roll.bytes(roll.below(60)))),
  "live ink by the bucket": () => ignored(BUCKET),
};

/** Updates that cannot be read, or not to their end. */
const DAMAGED: Readonly<Record<string, Kind>> = {
  "an update cut short": (knows) => {
    const whole = says([fresh(knows), fresh(knows)], knows.self);
    return refused("damaged", whole.slice(0, knows.roll.below(whole.length)));
  },
  "deletions cut short": ({ self, victim, roll }) => {
    const gone = { ...victim, clock: 0, length: 1 };
    const whole = says([], self, [gone, gone, gone]);
    return refused("damaged", whole.slice(0, whole.length - 1 - roll.below(6)));
  },
  "an update with bytes changed": (knows) => {
    const bytes = [...says([fresh(knows), plain(anyText("a"))], stranger(knows))];
    for (let turn = knows.roll.below(4); turn >= 0; turn--)
      bytes[knows.roll.below(bytes.length)] = knows.roll.below(256);
    return { frame: drawn(bytes), refused: "any", bad: false };
  },
  "more structs than there are": (knows) => {
    const { self } = knows;
    return refused("damaged", update([{ ...self, structs: [fresh(knows)], claims: 2 ** 31 }]));
  },
  "more clients than there are": ({ roll }) =>
    refused("damaged", [...varuint(2 ** 40 + roll.below(9)), ...roll.bytes(3)]),
  "a content that there is not": ({ self, roll }) =>
    refused("damaged", says([item(11 + roll.below(20), [1, 1, 1], { key: "k" })], self)),
  "a type that nobody knows": ({ self }) =>
    refused("damaged", says([item(CONTENT.type, [99], { key: "k" })], self)),
  "one client in two places": (knows) => {
    const { self } = knows;
    const twice = [self, next(self, 1)].map((at) => ({ ...at, structs: [fresh(knows)] }));
    return refused("damaged", update(twice));
  },
  "a struct of no length": (knows) => {
    const none = knows.roll.of([
      hole(CONTENT.gc, 0),
      item(CONTENT.deleted, [0], { key: "k" }),
      item(CONTENT.any, [0], { key: "k" }),
    ]);
    return refused("damaged", says([none, fresh(knows)], knows.self));
  },
  "a value as deep as a well": ({ self }) => {
    const head = says([item(CONTENT.any, [1], { key: "k" })], self).slice(0, -1);
    return { frame: frameOver(head, WELL), refused: "damaged", bad: false };
  },
};

/** Updates that build on what is not there. */
const UNGROUNDED: Readonly<Record<string, Kind>> = {
  "a gap": (knows) =>
    refused("resync", says([fresh(knows)], next(knows.self, 1 + knows.roll.below(1000)))),
  "a clock of the far future": (knows) =>
    refused("resync", says([fresh(knows)], next(knows.self, 2 ** 50))),
  "a gap that says so": (knows) =>
    refused("resync", says([hole(CONTENT.skip, 5), fresh(knows)], knows.self)),
  "something behind what is not there": (knows) => {
    const place = { origin: { ...stranger(knows), clock: 5 } };
    return refused("resync", says([item(CONTENT.binary, [1, 1], place)], knows.self));
  },
  "something behind itself": ({ self, roll }) => {
    const place = roll.of<Place>([
      { origin: self },
      { rightOrigin: self },
      { parent: self, key: "k" },
      { origin: next(self, 1) },
    ]);
    return refused("resync", says([item(CONTENT.binary, [1, 1], place), stroke("k", [1])], self));
  },
  "something within what is not there": (knows) => {
    const place = { parent: stranger(knows), key: "k" };
    return refused("resync", says([item(CONTENT.binary, [1, 1], place)], knows.self));
  },
  "a deletion of what is not there": (knows) =>
    refused("resync", update([], [{ ...stranger(knows), length: 1 }])),
  "a deletion of everything to come": ({ victim }) =>
    refused("resync", update([], [{ client: victim.client, clock: 0, length: 2 ** 50 }])),
};

/** Updates under somebody else's name. */
const STOLEN: Readonly<Record<string, Kind>> = {
  "a stroke in an honest page's name": (knows) =>
    refused("owner", says([fresh(knows)], knows.victim)),
  "a stroke in another stranger's name": (knows) =>
    knows.other.clock === 0 ? taken([0, 0]) : refused("owner", says([fresh(knows)], knows.other)),
  "an honest page's first stroke, but another": (knows) =>
    refused("owner", says([stroke("not what it was", [6, 6, 6])], { ...knows.victim, clock: 0 })),
};

/** Updates of what a sheet's document never holds. */
const FOREIGN: Readonly<Record<string, Kind>> = {
  "a document within the document": foreign(CONTENT.document, [...text("guid"), ...anyObject([])]),
  "a root of another name": foreign(CONTENT.any, [1, ...nullAny], { root: "attic", key: "k" }),
  "the other document's root": foreign(CONTENT.any, [1, ...nullAny], { root: "notes", key: "k" }),
  "a list at the root": foreign(CONTENT.any, [1, ...nullAny], {}),
  "a list within": foreign(CONTENT.type, [TYPE.list]),
  "a text within": foreign(CONTENT.type, [TYPE.text]),
  "an element within": foreign(CONTENT.type, [TYPE.element, ...text("script")]),
  letters: foreign(CONTENT.text, text("letters")),
  "values in the old way": foreign(CONTENT.json, [1, ...text("1")]),
  "something embedded": foreign(CONTENT.embed, text("{}")),
  "a format": foreign(CONTENT.format, [...text("bold"), ...text("true")]),
  "a name without end": foreign(CONTENT.binary, [0], { key: "k".repeat(LIMITS.keyLength + 1) }),
  "a value without a bottom": foreign(CONTENT.any, [1, ...anyDeep(LIMITS.valueDepth + 1)]),
};

/** What is fit, however odd it looks. */
const FIT: Readonly<Record<string, Kind>> = {
  "a stroke": (knows) => taken(says([fresh(knows)], knows.self), 1),
  "a stroke as an answer": (knows) => ({
    ...{ frame: syncFrame(ANSWER, says([fresh(knows)], knows.self)), refused: null, bad: false },
    wrote: 1,
  }),
  "nothing new": () => taken([0, 0]),
  "holes under its own name": ({ self, roll }) => {
    const length = 1 + roll.below(5);
    return taken(says([hole(CONTENT.gc, length)], self), length);
  },
  "names that mean something to the machine": ({ self, roll }) => {
    const name = roll.of(["__proto__", "constructor", "toString", "hasOwnProperty"]);
    return taken(says([plain(anyObject([[name, anyDeep(7) as unknown as Bytes]]), name)], self), 1);
  },
  "a deletion of a stroke": ({ self }) =>
    taken(update([], self.clock === 0 ? [] : [{ ...self, clock: 0, length: 1 }])),
};

/** Costly ones, which are thrown in now and then. */
export const COSTLY: Readonly<Record<string, Kind>> = {
  "an update above its size": ({ self }) => {
    const bytes = new Uint8Array(LIMITS.updateBytes + 1);
    return { frame: frameOver(says([], self), bytes), refused: "size", bad: false };
  },
  "bytes above their size": ({ self }) => {
    const bytes = new Uint8Array(LIMITS.strokeBytes + 1);
    const head = says([item(CONTENT.binary, varuint(bytes.length), { key: "k" })], self);
    const body = Uint8Array.from([...head.slice(0, -1), ...bytes, 0]);
    return { frame: frameOver([], body), refused: "content", bad: false };
  },
  "everything once more": () => ignored(syncFrame(0, [0])),
};

export const KINDS: Readonly<Record<string, Kind>> = {
  ...{ ...NOISE, ...PASSING, ...DAMAGED, ...UNGROUNDED, ...STOLEN, ...FOREIGN, ...FIT },
};

/** Large bodies are put together without spreading them. */
function frameOver(head: Bytes, rest: Uint8Array): Uint8Array {
  const length = head.length + rest.length;
  const start = [0, DRAWN, ...varuint(length), ...head];
  const frame = new Uint8Array(start.length + rest.length);
  frame.set(start);
  frame.set(rest, start.length);
  return frame;
}

/** Two clients whose entries each stand on the other's: whole to read, impossible to apply. */
export function circular(first: number, second: number): Bytes {
  const behind = (client: number) =>
    item(CONTENT.binary, [1, 1], { origin: { client, clock: 0 }, key: "k" });
  return drawn(
    update([
      { client: second, clock: 0, structs: [behind(first)] },
      { client: first, clock: 0, structs: [behind(second)] },
    ]),
  );
}
