import { type LegLength, limbJoint } from "../../body";
import { rootSumSquare } from "../../geometry";
import { type Answer, answerOf, type NoReading } from "../answer";
import { bearingFeet, type FootPoint, footPoints, isWholeFoot } from "../foot";
import { type FrontMark, frontMark } from "../front-mark";
import type { WalkPanel } from "../walk";

/**
 * How broad a foot is, leg lengths: foot breadth 0.055, leg 0.530 of stature.
 * Source: Drillis & Contini (1966), as drawn in Winter (2009), fig. 4.1
 */
export const FOOT_BREADTH = 0.104;

const NO_SIDE: NoReading = { kind: "cannot-tell", needs: "the side that carries the weight" };

/**
 * Length of the base of support: from the rearmost heel to the foremost toe of the feet that bear weight.
 *
 * Units:   leg lengths along the walk
 * Errors:  none; a bearing foot without its heel, or its ball or toe, answers "cannot-tell"
 * Source:  mechanics: what stands is held by the ground between the points it stands on
 */
export function baseLength(panel: WalkPanel, leg: LegLength): Answer {
  const feet = bearingFeet(panel);
  if (leg.kind === "cannot-tell") return leg;
  if (feet === null) return NO_SIDE;
  const needs = "heel and ball or toe of each bearing foot marked in the side view";
  const soles = feet.map((side) => footPoints(panel, side, leg));
  if (!soles.every(isWholeFoot)) return { kind: "cannot-tell", needs };
  const points = soles.flat();
  const by = (pick: (a: FootPoint, b: FootPoint) => boolean) =>
    points.reduce((end, point) => (pick(point, end) ? point : end));
  const rear = by((a, b) => a.x < b.x);
  const fore = by((a, b) => a.x > b.x);
  return answerOf(fore.x - rear.x, rootSumSquare(rear.plusMinus, fore.plusMinus), "leg", needs);
}

/**
 * Width of the base of support: from the outer edge of one bearing foot to that of the other, or one foot's
 * breadth where one bears.
 *
 * Units:   leg lengths across the walk
 * Errors:  none; a bearing foot that is not marked from ahead answers "cannot-tell"
 * Source:  see `FOOT_BREADTH`
 */
export function baseWidth(panel: WalkPanel, leg: LegLength): Answer {
  const feet = bearingFeet(panel);
  if (leg.kind === "cannot-tell") return leg;
  if (feet === null) return NO_SIDE;
  const needs = "each bearing foot marked in the front view";
  const found = feet.map((side) =>
    (["ankle", "ball", "heel", "toe"] as const)
      .map((joint) => frontMark(panel, limbJoint(side, joint), leg))
      .find((mark) => mark !== null),
  );
  const marks = found.filter((mark): mark is FrontMark => mark !== undefined);
  if (marks.length < feet.length) return { kind: "cannot-tell", needs };
  const across = marks.map(({ z }) => z);
  const apart = Math.max(...across) - Math.min(...across);
  const plusMinus = feet.length < 2 ? 0 : rootSumSquare(...marks.map((mark) => mark.plusMinus));
  return answerOf(apart + FOOT_BREADTH, plusMinus, "leg", needs);
}
