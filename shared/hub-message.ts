import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { type DocumentName, isDocumentName } from "./document-name";
import type { Limits } from "./limits";
import { frameOf, MESSAGE } from "./protocol";
import { isRole, type Role } from "./role";

/** The hub's first frame: who the page is here, and what it may do. */
export interface Hello {
  readonly protocol: number;
  readonly role: Role;
  readonly document: DocumentName;
  /** Raised when the sheet was put back to an older state: what the page knew is void. */
  readonly generation: number;
  /** Which process this is; another one after a restart. */
  readonly instance: string;
  /** A number for this connection, for log lines. */
  readonly connection: number;
  /** ms since 1970 by the hub's clock. */
  readonly serverTime: number;
  readonly limits: Limits;
}

export const REFUSALS = ["role", "damaged", "resync", "owner", "content", "size", "full"] as const;
export type RefusalCode = (typeof REFUSALS)[number];

/** Update frame `frame` of this connection changed nothing. */
export interface Refused {
  readonly frame: number;
  readonly code: RefusalCode;
  readonly message: string;
}

export const STORAGE_STATES = ["ok", "slow", "failing", "full"] as const;
export type StorageState = (typeof STORAGE_STATES)[number];

/** How the disk does, and for how many ms the oldest waiting work has waited. */
export interface Storage {
  readonly state: StorageState;
  readonly behindMs: number;
}

/** The hub closes soon; come back after a random time between the two. */
export interface Going {
  readonly minMs: number;
  readonly maxMs: number;
  readonly reason: string;
}

export function encodeHello(hello: Hello): Uint8Array {
  return frameOf(MESSAGE.hello, (to) => encoding.writeVarString(to, JSON.stringify(hello)));
}

/** Errors: TypeError on anything but a HELLO of a version this page knows how to read. */
export function readHello(decoder: decoding.Decoder): Hello {
  const said: unknown = JSON.parse(decoding.readVarString(decoder));
  if (!isHello(said)) throw new TypeError("the hub's hello does not read as one");
  return said;
}

function isHello(said: unknown): said is Hello {
  if (typeof said !== "object" || said === null) return false;
  const hello = said as Partial<Record<keyof Hello, unknown>>;
  const numbers = [hello.protocol, hello.generation, hello.connection, hello.serverTime];
  return (
    numbers.every((value) => typeof value === "number") &&
    isRole(hello.role) &&
    isDocumentName(hello.document) &&
    typeof hello.instance === "string" &&
    typeof hello.limits === "object" &&
    hello.limits !== null
  );
}

export function encodeSaved(frames: number): Uint8Array {
  return frameOf(MESSAGE.saved, (to) => encoding.writeVarUint(to, frames));
}

/** How many of this connection's update frames are committed. */
export function readSaved(decoder: decoding.Decoder): number {
  return decoding.readVarUint(decoder);
}

export function encodeRefused({ frame, code, message }: Refused): Uint8Array {
  return frameOf(MESSAGE.refused, (to) => {
    encoding.writeVarUint(to, frame);
    encoding.writeVarString(to, code);
    encoding.writeVarString(to, message);
  });
}

export function readRefused(decoder: decoding.Decoder): Refused {
  const frame = decoding.readVarUint(decoder);
  const code = oneOf(REFUSALS, decoding.readVarString(decoder), "damaged");
  return { frame, code, message: decoding.readVarString(decoder) };
}

export function encodeStorage({ state, behindMs }: Storage): Uint8Array {
  return frameOf(MESSAGE.storage, (to) => {
    encoding.writeVarString(to, state);
    encoding.writeVarUint(to, Math.max(0, Math.round(behindMs)));
  });
}

export function readStorage(decoder: decoding.Decoder): Storage {
  const state = oneOf(STORAGE_STATES, decoding.readVarString(decoder), "failing");
  return { state, behindMs: decoding.readVarUint(decoder) };
}

export function encodeGoing({ minMs, maxMs, reason }: Going): Uint8Array {
  return frameOf(MESSAGE.going, (to) => {
    encoding.writeVarUint(to, minMs);
    encoding.writeVarUint(to, maxMs);
    encoding.writeVarString(to, reason);
  });
}

export function readGoing(decoder: decoding.Decoder): Going {
  const minMs = decoding.readVarUint(decoder);
  const maxMs = decoding.readVarUint(decoder);
  return { minMs, maxMs, reason: decoding.readVarString(decoder) };
}

export function encodeRole(role: Role): Uint8Array {
  return frameOf(MESSAGE.role, (to) => encoding.writeVarString(to, role));
}

/** A role this page has never heard of is held to be the weakest. */
export function readRole(decoder: decoding.Decoder): Role {
  const said = decoding.readVarString(decoder);
  return isRole(said) ? said : "view";
}

export function encodeBeat(): Uint8Array {
  return frameOf(MESSAGE.beat, () => {});
}

/** A word from a newer hub falls back to the one that promises least. */
function oneOf<Word extends string>(words: readonly Word[], said: string, fallback: Word): Word {
  return words.find((word) => word === said) ?? fallback;
}
