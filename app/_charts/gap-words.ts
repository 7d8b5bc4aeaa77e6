import type { GapCell } from "../../lib/gait";
import { charts } from "../_words";

/** What a gap's box says, the fullest first: "4 (3)", "4". */
export function gapWording({ frames, expected, level }: GapCell): readonly string[] {
  const plain = String(frames);
  if (level === null || expected === null || expected === frames) return [plain];
  return [`${plain} ${charts.expected(expected)}`, plain];
}
