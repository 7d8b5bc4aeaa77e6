import { applyFix, type CheckId, fixFor, type Remark, reviewWalk } from "../../../lib/gait";
import { againstOf, nameOf, type Outcome, type Seeding } from "./seeding";

/** Checks that offer no fix, each with the reason. */
export const LEFT_TO_THE_ARTIST: Readonly<Partial<Record<CheckId, string>>> = {
  "foot-roll": "how a foot lands, lies and leaves is drawn: a rolled foot has no one right shape",
  hitch: "which pose of a step is to stand higher or farther ahead, nobody but the artist knows",
  snap: "each drawing may be right, and what is to be drawn between them is for the artist to say",
  opposition: "arms that swing the other way are drawn anew, in every pose between the contacts",
};

/** What a fix does to a seeded walk. */
export interface Fixed {
  readonly offered: boolean;
  /** The remark is still drawn after it. */
  readonly stays: boolean;
  /** What shows after it and did not before. */
  readonly shows: readonly Remark[];
}

/** Takes the fix that is offered for the remark that names the fault, and reads the walk again. */
export function fixed({ walk, named }: Outcome, seeding: Seeding): Fixed {
  const { yardstick } = seeding;
  const against = againstOf(seeding);
  const fix = named === null ? null : fixFor(walk, named, against);
  if (named === null || fix === null) return { offered: false, stays: true, shows: [] };
  const before = new Set(
    reviewWalk(walk, yardstick, [], against).remarks.filter(shown).map(nameOf),
  );
  const { remarks } = reviewWalk(applyFix(walk, fix), yardstick, [], against);
  return {
    offered: true,
    stays: remarks.some((one) => nameOf(one) === nameOf(named)),
    shows: remarks.filter((one) => shown(one) && !before.has(nameOf(one))),
  };
}

/** A loop that is opened by mending the pose at one of its ends is closed by its own fix. */
const shown = ({ level, check }: Remark) => level === "shows" && check !== "loop";
