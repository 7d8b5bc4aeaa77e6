import { gathered } from "../gathered";
import { applyFix } from "./apply-fix";
import type { CheckId, Remark } from "./finding";
import type { Fix } from "./fix";
import { fixClearance } from "./fixes/fix-clearance";
import { fixFeet } from "./fixes/fix-feet";
import { fixGaps } from "./fixes/fix-gaps";
import { fixHips } from "./fixes/fix-hips";
import { fixKnee } from "./fixes/fix-knee";
import { fixLabels } from "./fixes/fix-labels";
import { fixLeadIn } from "./fixes/fix-lead-in";
import { fixLimbs } from "./fixes/fix-limbs";
import { fixLoop } from "./fixes/fix-loop";
import { fixMissing } from "./fixes/fix-missing";
import { fixRange } from "./fixes/fix-range";
import { fixReach } from "./fixes/fix-reach";
import { fixSides } from "./fixes/fix-sides";
import { fixSlide } from "./fixes/fix-slide";
import { fixSymmetry } from "./fixes/fix-symmetry";
import { fixTempo } from "./fixes/fix-tempo";
import { fixViews } from "./fixes/fix-views";
import { fixWeight } from "./fixes/fix-weight";
import { fixWidth } from "./fixes/fix-width";
import type { Proposal } from "./fixes/proposal";
import type { Against } from "./pattern";
import { reviewWalk } from "./review-walk";
import { type Study, studyWalk } from "./study";
import type { Walk, Yardstick } from "./walk";

/** What may settle a check's remark, the likeliest first; null where only the artist can. */
const FIXES: Readonly<
  Record<CheckId, ((study: Study, remark: Remark) => readonly Proposal[]) | null>
> = {
  "missing-pose": fixMissing,
  "pose-order": fixLabels,
  "hip-order": fixHips,
  "hip-range": fixRange,
  "weight-side": fixWeight,
  "weight-front": fixWeight,
  slide: fixSlide,
  float: fixFeet,
  sink: fixFeet,
  "foot-roll": null,
  clearance: fixClearance,
  "limb-length": fixLimbs,
  reach: fixReach,
  knee: fixKnee,
  snap: null,
  gaps: fixGaps,
  symmetry: fixSymmetry,
  loop: fixLoop,
  hitch: null,
  opposition: null,
  tempo: fixTempo,
  width: fixWidth,
  views: fixViews,
  sides: fixSides,
  "lead-in": fixLeadIn,
};

/** Whether anything is known that may settle a remark of this check. */
export function hasFix(check: CheckId): boolean {
  return FIXES[check] !== null;
}

/**
 * What would settle a remark, or null where nothing known does. Each way is tried on the walk: it must
 * make the remark go and bring no other that shows, save that a loop opens whose end was mended: that has
 * a fix of its own. One that brings none at all goes first.
 *
 * Shapes:  a remark of a review of this walk
 * Units:   see `FixChange`
 * Errors:  none; a remark of another walk answers null
 * Cost:    a review for each way that is tried: ask for the remark in hand, not for all of them
 */
export function fixFor(walk: Walk, remark: Remark, against: Against = NOTHING): Fix | null {
  const propose = FIXES[remark.check];
  if (propose === null) return null;
  const proposals = propose(studyWalk(walk, remark.yardstick, against), remark);
  const before = remarksBefore(walk, remark.yardstick, against);
  const settling = gathered(proposals, (fix) => {
    const { remarks } = reviewWalk(applyFix(walk, fix), remark.yardstick, [], against);
    if (remarks.some((one) => nameOf(one) === nameOf(remark))) return [];
    const fresh = remarks.filter((one) => !before.has(leveled(one)));
    return fresh.some(({ level, check }) => level === "shows" && check !== "loop")
      ? []
      : [{ fix, fresh: fresh.length }];
  });
  return (settling.find(({ fresh }) => fresh === 0) ?? settling[0])?.fix ?? null;
}

/** What was remarked on a walk before any fix. */
interface Before {
  readonly yardstick: Yardstick;
  readonly against: Against;
  readonly remarks: ReadonlySet<string>;
}

/** Known for as long as somebody holds the walk; of the review that was last asked for. */
const knownRemarks = new WeakMap<Walk, Before>();

function remarksBefore(walk: Walk, yardstick: Yardstick, against: Against): ReadonlySet<string> {
  const known = knownRemarks.get(walk);
  if (known?.yardstick === yardstick && known.against === against) return known.remarks;
  const remarks = new Set(reviewWalk(walk, yardstick, [], against).remarks.map(leveled));
  knownRemarks.set(walk, { yardstick, against, remarks });
  return remarks;
}

/** What a fix that goes by no other walk is asked with: the same each time, so that its review is known. */
const NOTHING: Against = {};

/** What two reviews know a remark by: its check, its side, and the panel where it is seen. */
function nameOf({ check, side, panels }: Remark): string {
  return [check, side, panels.at(-1)].join(" ");
}

function leveled(remark: Remark): string {
  return `${nameOf(remark)} ${remark.level}`;
}
