import { groundToFront, groundToSide, type JointName, type Mark, type PoseMarks } from "../../body";
import type { NoReading } from "../answer";
import { placeOf } from "../ground-mark";
import { type Study, studyWalk } from "../study";
import type { Walk, WalkPanel, Yardstick } from "../walk";
import { type FigureSpots, standingSpots, walkingSpots } from "./figure-spots";
import { type FootGround, footGround } from "./foot-ground";
import { momentOf, type Timed } from "./moment-of";
import { type Sized, sizeIn } from "./sized";

/** How exactly a placed figure's marks are placed, a share of a leg: no mark is placed better. */
export const FIGURE_PRECISION = 0.005;

/** A whole figure's marks for a panel, and where they come from. */
export interface PlacedFigure {
  readonly kind: "figure";
  readonly marks: PoseMarks;
  /** What its sizes were measured on; `build`: nothing was marked yet. */
  readonly sizedBy: "stand" | "poses" | "build";
  /** What said where it stands: its own footprint, the one before or after it, or nothing. */
  readonly placedBy: FootGround["placedBy"];
}

/**
 * A whole figure for a panel's pose: every joint but the load, in both views. Sizes are those of the
 * stand, else of the poses that are marked, else the build's in published proportions; angles are the
 * published ones of that pose's share of the step, stretched so that its step is as long as the walk's;
 * by the trade the down and the up have the heights that handbooks ask for. The foot that carries is on
 * the ground and on its footprint where another panel has it, else a step from the other foot's, else the hips
 * are in the middle of the paper. A stand is upright, a lead-in half a step's passing.
 *
 * Shapes:  the walk, and the panel's id
 * Units:   panel units
 * Errors:  RangeError when the panel is none of the walk's; a panel whose weight is on nobody knows which
 *          foot answers "cannot-tell"
 * Source:  see `legAngles`, `bodySwing`, `figureSizeOf` and `poseMoment`
 */
export function placedFigure(
  walk: Walk,
  panelId: string,
  yardstick: Yardstick,
): PlacedFigure | NoReading {
  const panel = walk.panels.find(({ id }) => id === panelId);
  if (panel === undefined)
    throw new RangeError(`placedFigure needs a panel of the walk, got ${panelId}`);
  const others = walk.panels.filter((one) => one !== panel);
  return placedIn(studyWalk(walk, yardstick), panel, sizeIn(walk, others));
}

/** The same, of a walk that was laid out already. */
export function placedIn(
  study: Study,
  panel: WalkPanel,
  sized: Sized,
  by: Timed["by"] = "label",
): PlacedFigure | NoReading {
  const { sizedBy, legUnits } = sized;
  if (panel.pose === "stand") {
    const spots = standingSpots(sized.size);
    return figureOf(spots, middleOf(spots), { legUnits, sizedBy, placedBy: "middle" });
  }
  const side = panel.weightOn;
  if (side === null) return { kind: "cannot-tell", needs: "the side that carries the weight" };
  const ground = footGround(study, panel, sized);
  const spots = walkingSpots(
    sized.size,
    side,
    momentOf(study, panel, { stepLength: ground.stepLength, by }),
  );
  const offset =
    ground.print === null ? middleOf(spots) : ground.print - placeOf(panel, study.walk);
  return figureOf(spots, offset, { legUnits, sizedBy, placedBy: ground.placedBy });
}

/** What brings the hips to the middle of the paper. Leg lengths. */
function middleOf(spots: FigureSpots): number {
  const [left, right] = [spots.get("left-hip"), spots.get("right-hip")];
  return left === undefined || right === undefined ? 0 : -(left.x + right.x) / 2;
}

/** Spots as marks on the paper, so far ahead of its middle. */
function figureOf(
  spots: FigureSpots,
  ahead: number,
  { legUnits, ...told }: Omit<PlacedFigure, "kind" | "marks"> & { readonly legUnits: number },
): PlacedFigure {
  const precision = FIGURE_PRECISION * legUnits;
  const side: Partial<Record<JointName, Mark>> = {};
  const front: Partial<Record<JointName, Mark>> = {};
  for (const [joint, { x, y, z }] of spots) {
    const stretch = { place: 0, legLength: legUnits };
    side[joint] = { ...groundToSide({ x: x + ahead, y }, stretch), precision };
    front[joint] = { ...groundToFront({ z, y }, legUnits), precision };
  }
  return { kind: "figure", ...told, marks: { side, front } };
}
