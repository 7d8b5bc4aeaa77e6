import { StrokeError } from "./stroke-error";

/** Writes whole numbers as bytes, seven bits to each where they are of any size. */
export class ByteWriter {
  readonly #bytes: number[] = [];

  byte(value: number): void {
    this.#bytes.push(value & 255);
  }

  /** Shapes: 0 ≤ value < 2^35. */
  uint(value: number): void {
    let rest = value;
    while (rest >= 128) {
      this.byte((rest % 128) + 128);
      rest = Math.floor(rest / 128);
    }
    this.byte(rest);
  }

  done(): Uint8Array<ArrayBuffer> {
    return Uint8Array.from(this.#bytes);
  }
}

/** Reads what `ByteWriter` wrote. Errors: StrokeError "truncated" or "damaged", "trailing" in `end`. */
export class ByteReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get left(): number {
    return this.#bytes.length - this.#at;
  }

  byte(): number {
    const byte = this.#bytes[this.#at++];
    if (byte === undefined) throw new StrokeError("truncated", "the message ends too soon");
    return byte;
  }

  uint(): number {
    let value = 0;
    for (let scale = 1; scale <= 128 ** 4; scale *= 128) {
      const byte = this.byte();
      value += (byte % 128) * scale;
      if (byte < 128) return value;
    }
    throw new StrokeError("damaged", "a number in the message has no end");
  }

  end(): void {
    if (this.left > 0) throw new StrokeError("trailing", `${this.left} bytes follow the message`);
  }
}
