import { type Bytes, sized, text, varuint } from "./raw-bytes";

/** Where something stands in a document: whose, and its how-manieth. */
export interface Id {
  readonly client: number;
  readonly clock: number;
}

/** Where an item hangs: at an entry of a root, of another item, or (as in a list) at no entry at all. */
export interface Place {
  readonly origin?: Id;
  readonly rightOrigin?: Id;
  readonly root?: string;
  readonly parent?: Id;
  readonly key?: string;
}

/** One struct, as the bytes of it. */
export type Struct = Bytes;

/** The number of each content in a struct's first byte. */
export const CONTENT = {
  ...{ gc: 0, deleted: 1, json: 2, binary: 3, text: 4, embed: 5, format: 6, type: 7, any: 8 },
  ...{ document: 9, skip: 10 },
} as const;

/** The number of each shared type. */
export const TYPE = { list: 0, map: 1, text: 2, element: 3, fragment: 4 } as const;

const [HAS_ORIGIN, HAS_RIGHT, HAS_KEY] = [0x80, 0x40, 0x20];

export function item(content: number, body: Bytes, place: Place): Struct {
  const { origin, rightOrigin, root, parent, key } = place;
  const hangs = origin === undefined && rightOrigin === undefined;
  const flags =
    (origin ? HAS_ORIGIN : 0) | (rightOrigin ? HAS_RIGHT : 0) | (key === undefined ? 0 : HAS_KEY);
  return [
    content | flags,
    ...(origin ? idBytes(origin) : []),
    ...(rightOrigin ? idBytes(rightOrigin) : []),
    ...(hangs && parent ? [0, ...idBytes(parent)] : []),
    ...(hangs && !parent ? [1, ...text(root ?? "strokes")] : []),
    ...(hangs && key !== undefined ? text(key) : []),
    ...body,
  ];
}

/** Something that was and is no more, or never was: so many of it. */
export function hole(content: typeof CONTENT.gc | typeof CONTENT.skip, length: number): Struct {
  return [content, ...varuint(length)];
}

/** An entry of `strokes` that holds bytes: what an honest page draws. */
export function stroke(key: string, bytes: ArrayLike<number>): Struct {
  return item(CONTENT.binary, sized(bytes), { key });
}

/** One plain value, already written as `any…` writes it. */
export function plain(value: Bytes, key = "value"): Struct {
  return item(CONTENT.any, [1, ...value], { key });
}

export const anyText = (value: string): Bytes => [119, ...text(value)];
export const anyObject = (entries: readonly (readonly [string, Bytes])[]): Bytes => [
  118,
  ...varuint(entries.length),
  ...entries.flatMap(([name, value]) => [...text(name), ...value]),
];
/** Lists within lists, so deep. */
export function anyDeep(depth: number): Uint8Array {
  const bytes = new Uint8Array(depth * 2 + 1).fill(1);
  for (let at = 0; at < depth * 2; at += 2) bytes[at] = 117;
  bytes[depth * 2] = 126;
  return bytes;
}

/** What one client says, one struct after another from a clock on. */
export interface Section extends Id {
  readonly structs: readonly Struct[];
  /** How many structs the bytes claim that there are; as many as there are, unless they lie. */
  readonly claims?: number;
}

export interface Deletion extends Id {
  readonly length: number;
}

export function update(sections: readonly Section[], deletions: readonly Deletion[] = []): Bytes {
  return [
    ...varuint(sections.length),
    ...sections.flatMap(({ client, clock, structs, claims = structs.length }) => [
      ...varuint(claims),
      ...varuint(client),
      ...varuint(clock),
      ...structs.flat(),
    ]),
    ...varuint(deletions.length),
    ...deletions.flatMap(({ client, clock, length }) => [
      ...varuint(client),
      ...[1, ...varuint(clock), ...varuint(length)],
    ]),
  ];
}

function idBytes({ client, clock }: Id): Bytes {
  return [...varuint(client), ...varuint(clock)];
}
