import * as decoding from "lib0/decoding";
import * as Y from "yjs";
import { isFinal } from "../../../shared/close-code";
import { readSaved } from "../../../shared/hub-message";
import { encodeSync, isUpdateFrame, MESSAGE, SYNC } from "../../../shared/protocol";
import type { MemorySocket } from "./memory-socket";

/** One thing a person did. */
interface Deed {
  readonly kind: "draw" | "erase";
  readonly stroke: string;
}

/** A frame on its way to the hub, with the deeds it carries. */
interface Outgoing {
  readonly frame: Uint8Array;
  readonly deeds: readonly Deed[];
}

/** Asked at every moment in which a page believes something. */
export interface Truth {
  /** Was the stroke ever committed? */
  wasCommitted(stroke: string): boolean;
  isThere(stroke: string): boolean;
  fault(what: string): void;
}

const HAND = "hand";

/** An honest page, as the protocol's page describes it, without a screen and without a clock. */
export class ModelPage {
  doc = new Y.Doc();
  /** What its person drew, and what of it they took back. */
  readonly drawn = new Set<string>();
  readonly erased = new Set<string>();
  /** Strokes that have reached the hub on some line. */
  readonly handedOver = new Set<string>();
  /** Sent away for good. */
  out = false;
  socket: MemorySocket | null = null;
  readonly up: Outgoing[] = [];
  private undoing = new Y.UndoManager(this.doc.getMap("strokes"), { captureTimeout: 0 });
  private unsaved: Deed[] = [];
  /** To be done again in a fresh document, once that is here. */
  private aside: Deed[] = [];
  private carried: (readonly Deed[])[] = [];
  private last: Outgoing | null = null;
  private answered = false;
  private synced = false;

  constructor(
    readonly name: string,
    private readonly truth: Truth,
  ) {
    this.listen();
  }

  isAtRest(): boolean {
    if (this.out) return true;
    const { socket, up, synced, unsaved, aside } = this;
    const quiet = up.length === 0 && unsaved.length === 0 && aside.length === 0;
    const isOpen = socket?.readyState === socket?.OPEN;
    return socket !== null && isOpen && socket.down.length === 0 && synced && quiet;
  }

  /** A line of which the hub will speak first. */
  join(socket: MemorySocket): void {
    this.socket = socket;
    this.up.push({ frame: encodeSync(SYNC.step1, Y.encodeStateVector(this.doc)), deeds: [] });
  }

  draw(): void {
    const stroke = `${this.name}${this.drawn.size}`;
    this.drawn.add(stroke);
    this.doc.transact(() => this.strokes().set(stroke, Uint8Array.of(1, 2, 3)), HAND);
  }

  undo(): void {
    this.undoing.undo();
  }

  /** Sends what it sent last once more. */
  repeat(): void {
    if (this.last !== null && this.answered) this.up.push(this.last);
  }

  /** The last two change places. */
  swap(): void {
    const [last, before] = [this.up.pop(), this.up.pop()];
    for (const frame of [last, before]) if (frame !== undefined) this.up.push(frame);
  }

  /** The next frame on its way up arrives at the hub. */
  deliverUp(): void {
    const next = this.up.shift();
    if (next === undefined || this.socket === null) return;
    if (isUpdateFrame(next.frame)) {
      this.carried.push(next.deeds);
      this.last = next;
    }
    for (const { stroke } of next.deeds) this.handedOver.add(stroke);
    this.socket.deliver(next.frame);
  }

  /** The next frame on its way down arrives here; behind the last one, the news that the line is closed. */
  deliverDown(): void {
    const { socket } = this;
    const next = socket?.down.shift();
    if (next !== undefined) this.hear(next);
    else if (socket?.readyState === socket?.CLOSED) this.lineFell(socket?.code ?? null);
  }

  /** All that was under way is lost, in both directions. */
  cut(): void {
    this.socket?.cut();
    this.lineFell(null);
  }

  private lineFell(code: number | null): void {
    if (code !== null && isFinal(code)) this.out = true;
    this.socket = null;
    this.up.length = 0;
    this.carried = [];
    this.answered = false;
    this.synced = false;
  }

  private strokes(): Y.Map<unknown> {
    return this.doc.getMap("strokes");
  }

  private listen(): void {
    const { doc, undoing } = this;
    undoing.addTrackedOrigin(HAND);
    let deeds: Deed[] = [];
    this.strokes().observe((event, { origin }) => {
      for (const [stroke, { action }] of event.changes.keys) {
        if (origin === this) this.see(stroke, action);
        else deeds.push({ kind: action === "delete" ? "erase" : "draw", stroke });
      }
    });
    doc.on("update", (update: Uint8Array, origin: unknown) => {
      if (origin === this) return;
      for (const { kind, stroke } of deeds) if (kind === "erase") this.erased.add(stroke);
      this.unsaved.push(...deeds);
      if (this.answered) this.up.push({ frame: encodeSync(SYNC.update, update), deeds });
      deeds = [];
    });
  }

  /** Nothing that comes from the hub may be missing from its disk. */
  private see(stroke: string, action: string): void {
    if (action !== "delete" && !this.truth.wasCommitted(stroke)) {
      this.truth.fault(`${this.name} was shown ${stroke}, which is not committed`);
    }
  }

  private hear(frame: Uint8Array): void {
    const decoder = decoding.createDecoder(frame);
    const type = decoding.readVarUint(decoder);
    if (type === MESSAGE.sync) this.hearSync(decoder);
    if (type === MESSAGE.saved) this.hearSaved(readSaved(decoder));
    if (type === MESSAGE.refused) this.startAfresh();
  }

  private hearSync(decoder: decoding.Decoder): void {
    const kind = decoding.readVarUint(decoder);
    const body = decoding.readVarUint8Array(decoder);
    if (kind === SYNC.step1) {
      this.answered = true;
      const frame = encodeSync(SYNC.step2, Y.encodeStateAsUpdate(this.doc, body));
      this.up.push({ frame, deeds: [...this.unsaved] });
      return;
    }
    Y.applyUpdate(this.doc, body, this);
    if (kind !== SYNC.step2) return;
    this.synced = true;
    this.doAgain();
  }

  private hearSaved(count: number): void {
    const saved = new Set(this.carried.slice(0, count).flat());
    for (const { kind, stroke } of saved) {
      const isTrue =
        kind === "draw" ? this.truth.wasCommitted(stroke) : !this.truth.isThere(stroke);
      if (!isTrue) this.truth.fault(`${this.name} was told that it is saved: ${kind} ${stroke}`);
    }
    this.unsaved = this.unsaved.filter((deed) => !saved.has(deed));
  }

  /** A refused update poisons all later ones: a fresh document, and the unsaved work done again in it. */
  private startAfresh(): void {
    this.socket?.cut();
    this.lineFell(null);
    this.aside = [...this.aside, ...this.unsaved.splice(0)];
    this.last = null;
    this.doc.destroy();
    this.doc = new Y.Doc();
    this.undoing = new Y.UndoManager(this.strokes(), { captureTimeout: 0 });
    this.listen();
  }

  private doAgain(): void {
    for (const { kind, stroke } of this.aside.splice(0)) {
      const there = this.strokes().has(stroke);
      if (kind === "erase" && there) this.strokes().delete(stroke);
      if (kind === "draw" && !there && !this.erased.has(stroke)) {
        this.doc.transact(() => this.strokes().set(stroke, Uint8Array.of(1, 2, 3)), HAND);
      }
    }
  }
}
