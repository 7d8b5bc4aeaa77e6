import { StrokeError } from "./stroke-error";

/** Quotients of this many ones or more give way to the plain number: no value costs over 46 bits. */
const ESCAPE = 20;
/** Bits of an escaped number: enough for the second difference of any two points we keep. */
const ESCAPED_BITS = 26;

/** Folds a signed whole number into an unsigned one, small for small: 0 −1 1 −2 2 → 0 1 2 3 4. */
export function fold(value: number): number {
  return value < 0 ? -2 * value - 1 : 2 * value;
}

/** Takes `fold` back. */
export function unfold(folded: number): number {
  return folded % 2 === 0 ? folded / 2 : -(folded + 1) / 2;
}

/** Writes whole numbers as bits, the most significant first. */
export class BitWriter {
  readonly #bytes: number[] = [];
  #pending = 0;
  #pendingBits = 0;

  bits(value: number, count: number): void {
    for (let left = count; left > 0; ) {
      const take = Math.min(left, 8 - this.#pendingBits);
      left -= take;
      this.#pending = (this.#pending << take) | ((value >>> left) & ((1 << take) - 1));
      this.#pendingBits += take;
      if (this.#pendingBits === 8) {
        this.#bytes.push(this.#pending);
        this.#pending = 0;
        this.#pendingBits = 0;
      }
    }
  }

  /** A Rice code: `value` over 2^k in unary, the remainder in k bits. Shapes: 0 ≤ value < 2^26. */
  rice(value: number, k: number): void {
    const quotient = value >>> k;
    if (quotient < ESCAPE) {
      this.bits(((1 << quotient) - 1) << 1, quotient + 1);
      this.bits(value, k);
    } else {
      this.bits((1 << ESCAPE) - 1, ESCAPE);
      this.bits(value, ESCAPED_BITS);
    }
  }

  /** What was written, filled up with zeros to a whole byte. */
  done(): Uint8Array<ArrayBuffer> {
    if (this.#pendingBits > 0) this.bits(0, 8 - this.#pendingBits);
    return new Uint8Array(this.#bytes);
  }
}

/** Reads what `BitWriter` wrote. Errors: StrokeError "truncated" past the end, "trailing" in `end`. */
export class BitReader {
  readonly #bytes: Uint8Array;
  #at = 0;

  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  get left(): number {
    return this.#bytes.length * 8 - this.#at;
  }

  bits(count: number): number {
    if (count > this.left) throw cutShort();
    let value = 0;
    for (let left = count; left > 0; ) {
      const free = 8 - (this.#at & 7);
      const take = Math.min(left, free);
      const byte = this.#bytes[this.#at >> 3] ?? 0;
      value = (value << take) | ((byte >> (free - take)) & ((1 << take) - 1));
      this.#at += take;
      left -= take;
    }
    return value;
  }

  rice(k: number): number {
    const quotient = this.#ones();
    return quotient < ESCAPE ? (quotient << k) | this.bits(k) : this.bits(ESCAPED_BITS);
  }

  /** How many ones come next, at most ESCAPE; the zero that ends fewer is read with them. */
  #ones(): number {
    for (let ones = 0; ; ) {
      const free = 8 - (this.#at & 7);
      const byte = this.#bytes[this.#at >> 3];
      if (byte === undefined) throw cutShort();
      // The byte's unread bits at the top of a word: its zeros, counted, are their ones.
      const here = Math.min(free, Math.clz32(~(byte << (32 - free))), ESCAPE - ones);
      ones += here;
      this.#at += here;
      if (ones === ESCAPE) return ones;
      if (here < free) {
        this.#at++;
        return ones;
      }
    }
  }

  /** Says that all was read: only the zeros that fill the last byte may be left. */
  end(): void {
    const left = this.left;
    if (left >= 8 || this.bits(left) !== 0) {
      throw new StrokeError("trailing", `${left} bits follow the stroke's last point`);
    }
  }
}

function cutShort(): StrokeError {
  return new StrokeError("truncated", "the stroke's bytes end too soon");
}
