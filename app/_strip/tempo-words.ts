import { tempo } from "../../lib/gait";
import type { SheetHead } from "../../lib/sheet";
import { strip } from "../_words";

/** The tempo in one line: frames, metres where the character has a height, and how it reads. */
export function tempoWords(head: SheetHead): string {
  const { left, right } = head.framesPerStep;
  const { framesPerSecond, stepLength, build } = head;
  const { metresPerSecond, reads } = tempo({
    framesPerStep: (left + right) / 2,
    framesPerSecond,
    stepLength,
    build,
  });
  return strip.head.tempo({
    fps: framesPerSecond,
    frames: left === right ? `${left}` : strip.head.uneven(left, right),
    step: stepLength.toFixed(2),
    speed: metresPerSecond === null ? null : metresPerSecond.toFixed(2),
    reads,
  });
}
