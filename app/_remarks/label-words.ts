import { amountOf } from "../../lib/export";
import type { Remark } from "../../lib/gait";
import { remarks as words } from "../_words";

/**
 * What stands beside a remark on the drawing: how much it is, and which way where that is not seen. A
 * narrow paper has room for the amount alone.
 */
export function labelWords(
  { check, measured }: Pick<Remark, "check" | "measured">,
  narrow: boolean,
): string {
  const amount = amountOf(measured);
  if (check === "slide" && !narrow) {
    return measured.value < 0 ? words.slidesBack(amount) : words.slips(amount);
  }
  return check === "hip-order" ? words.higherOrLower(measured.value < 0, amount) : amount;
}
