/** A paper of 360 px, so that a pixel is two panel units, 100 px in and 50 px down. */
export class FakePaper extends EventTarget {
  readonly captured = new Set<number>();
  getBoundingClientRect = () => ({ left: 100, top: 50, width: 360 });
  setPointerCapture = (pointer: number) => this.captured.add(pointer);
  hasPointerCapture = (pointer: number) => this.captured.has(pointer);
  releasePointerCapture = (pointer: number) => this.captured.delete(pointer);

  asElement(): HTMLElement {
    return this as unknown as HTMLElement;
  }
}

export interface FakePointer {
  readonly x?: number;
  readonly y?: number;
  readonly id?: number;
  readonly type?: "pen" | "mouse" | "touch";
  readonly pressure?: number;
  readonly button?: number;
  readonly buttons?: number;
  readonly at?: number;
  readonly coalesced?: readonly FakePointer[];
}

/** A pointer event as a browser would send it: a pen at the paper's corner, unless it says else. */
export function pointer(name: string, with_: FakePointer = {}): PointerEvent {
  const { x = 100, y = 50, id = 1, type = "pen", pressure = 0.5, at = 0 } = with_;
  const { button = 0, buttons = 1, coalesced = [] } = with_;
  const event = new Event(name);
  const fields = {
    ...{ clientX: x, clientY: y, pointerId: id, pointerType: type, pressure, button, buttons },
    ...{ timeStamp: at, isPrimary: id === 1 },
    getCoalescedEvents: () => coalesced.map((one) => pointer(name, { type, id, ...one })),
  };
  for (const [field, value] of Object.entries(fields))
    Object.defineProperty(event, field, { value });
  return event as PointerEvent;
}
