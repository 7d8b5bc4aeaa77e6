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
    for (let i = count - 1; i >= 0; i--) {
      this.#pending = (this.#pending << 1) | ((value >>> i) & 1);
      if (++this.#pendingBits === 8) {
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
    return Uint8Array.from(this.#bytes);
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
    if (count > this.left) throw new StrokeError("truncated", "the stroke's bytes end too soon");
    let value = 0;
    for (let i = 0; i < count; i++) {
      const byte = this.#bytes[this.#at >> 3] ?? 0;
      value = (value << 1) | ((byte >> (7 - (this.#at & 7))) & 1);
      this.#at++;
    }
    return value;
  }

  rice(k: number): number {
    let quotient = 0;
    while (quotient < ESCAPE && this.bits(1) === 1) quotient++;
    return quotient < ESCAPE ? (quotient << k) | this.bits(k) : this.bits(ESCAPED_BITS);
  }

  /** Says that all was read: only the zeros that fill the last byte may be left. */
  end(): void {
    const left = this.left;
    if (left >= 8 || this.bits(left) !== 0) {
      throw new StrokeError("trailing", `${left} bits follow the stroke's last point`);
    }
  }
}
