import { EventEmitter } from "node:events";
import type { WebSocket } from "ws";

/**
 * The hub's end of a line without a network: what it sends lies in `down` until somebody takes it, and
 * what is delivered to it waits while it does not read. Everything above the socket is as ever.
 */
export class MemorySocket extends EventEmitter {
  readonly OPEN = 1;
  readonly CLOSED = 3;
  readyState = 1;
  bufferedAmount = 0;
  /** Frames from the hub, oldest first. */
  readonly down: Uint8Array[] = [];
  /** The code the hub closed it with; null if it did not. */
  code: number | null = null;
  private parts: Uint8Array[] = [];
  private readonly unread: Uint8Array[] = [];
  private paused = false;

  /** The same, as the hub takes it. */
  asSocket(): WebSocket {
    return this as unknown as WebSocket;
  }

  send(data: Uint8Array, { fin }: { readonly fin: boolean }, flushed: () => void): void {
    this.parts.push(data);
    if (fin) this.down.push(Buffer.concat(this.parts.splice(0)));
    queueMicrotask(flushed);
  }

  /** A frame of the page's arrives. */
  deliver(frame: Uint8Array): void {
    if (this.readyState !== this.OPEN) return;
    if (this.paused) this.unread.push(frame);
    else this.emit("message", Buffer.from(frame), true);
  }

  pause(): void {
    this.paused = true;
  }

  resume(): void {
    this.paused = false;
    while (!this.paused && this.readyState === this.OPEN) {
      const next = this.unread.shift();
      if (next === undefined) return;
      this.emit("message", Buffer.from(next), true);
    }
  }

  ping(): void {
    if (this.readyState === this.OPEN) this.emit("pong");
  }

  /** The hub says goodbye: what it sent before arrives, and nothing after. */
  close(code: number): void {
    if (this.readyState === this.CLOSED) return;
    this.code = code;
    this.cut();
  }

  terminate(): void {
    this.cut();
  }

  /** The line falls. */
  cut(): void {
    if (this.readyState === this.CLOSED) return;
    this.readyState = this.CLOSED;
    queueMicrotask(() => this.emit("close"));
  }
}
