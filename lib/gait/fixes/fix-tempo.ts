import type { Remark } from "../finding";
import type { FixChange } from "../fix";
import { groundPassed } from "../readings/ground-passed";
import type { Study } from "../study";
import type { Proposal } from "./proposal";

/**
 * Feet that skate: the ground made to go by as far as the steps are drawn, by the advance, or by the places
 * of panels that have one. A step's own length and pace are drawn and timed, not moved.
 */
export function fixTempo(study: Study, { side, measured }: Remark): readonly Proposal[] {
  if (side !== null || measured.unit !== "share") return [];
  const asked = groundPassed(study).flatMap(({ step, next, passed }) =>
    passed === null ? [] : [{ ...passed, frames: next.frame - step.contact.frame }],
  );
  const frames = asked.reduce((sum, one) => sum + one.frames, 0);
  const missing = asked.reduce((sum, { drawn, ground }) => sum + drawn - ground, 0);
  const more = missing / frames; // leg lengths a frame
  if (!Number.isFinite(more)) return [];
  return [onTheGround(study, more)];
}

function onTheGround({ walk }: Study, more: number): Proposal {
  const advance = rounded(walk.advance + more);
  const placed =
    walk.travel === "travelling" ? walk.panels.filter(({ place }) => place !== null) : [];
  if (placed.length === 0) {
    const title = `Let the ground go by at ${advance.toFixed(3)} of a leg a frame`;
    return { title, changes: [{ kind: "advance", advance }] };
  }
  const first = placed[0]?.frame ?? 1;
  const places = placed.map(
    ({ id, frame, place }): FixChange => ({
      kind: "place",
      panel: id,
      place: rounded((place ?? 0) + more * (frame - first)),
    }),
  );
  const unplaced = placed.length < walk.panels.length;
  return {
    title: `Move the panels ${more > 0 ? "farther apart" : "closer together"} on the ground`,
    changes: unplaced ? [...places, { kind: "advance", advance }] : places,
  };
}

/** A hundred-thousandth of a leg: far below what can be seen. */
function rounded(legs: number): number {
  return Math.round(legs * 1e5) / 1e5;
}
