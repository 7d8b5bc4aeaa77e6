import { amountOf } from "../../lib/export";
import type { Remark } from "../../lib/gait";
import { remarks as words } from "../_words";

/**
 * What stands beside a remark on the drawing: how much it is, and which way where that is not seen. Where
 * the words do not fit on the paper, the amount stands alone.
 */
export function labelWords(
  { check, measured }: Pick<Remark, "check" | "measured">,
  fits: (text: string) => boolean,
): string {
  const amount = amountOf(measured);
  if (check === "slide") {
    const text = measured.value < 0 ? words.slidesBack(amount) : words.slips(amount);
    return fits(text) ? text : amount;
  }
  return check === "hip-order" ? words.higherOrLower(measured.value < 0, amount) : amount;
}
