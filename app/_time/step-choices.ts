import { findSteps } from "../../lib/gait";
import type { PanelId, Sheet } from "../../lib/sheet";
import { common, time } from "../_words";

/** A step that can be timed by itself. Units: frames. */
export interface StepChoice {
  readonly id: PanelId;
  readonly frames: number;
  readonly name: string;
}

/** The steps of a strip that have their next contact. */
export function stepChoices({ panels }: Sheet): readonly StepChoice[] {
  return findSteps(panels).flatMap(({ contact, next, weightOn }) => {
    if (next === null || next.frame <= contact.frame) return [];
    const side = weightOn === null ? "" : common.side[weightOn];
    const name = time.step(side, contact.frame, next.frame);
    return [{ id: contact.id, frames: next.frame - contact.frame, name }];
  });
}
