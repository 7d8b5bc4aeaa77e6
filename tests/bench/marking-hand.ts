import type { Page } from "@playwright/test";
import {
  type JointName,
  type LimbJoint,
  limbJoint,
  markOf,
  PANEL,
  type ViewMarks,
} from "../../lib/body";
import { distance } from "../../lib/geometry";
import type { Pen } from "../support/pen";
import type { HandPace } from "./hand-pace";
import type { MarkedPaper } from "./marked-paper";

export const LEG = PANEL.plainLeg; // panel units: the captured walk's, too

/** Where each frame's joints are: the stride as it was captured, side view. */
export type Truth = ReadonlyMap<number, ViewMarks>;

/** A hand at work on an unmarked sheet. */
export interface Marking {
  readonly page: Page;
  readonly pen: Pen;
  readonly pace: HandPace;
  readonly truth: Truth;
}

export const both = (parts: readonly LimbJoint[]): readonly JointName[] =>
  parts.flatMap((part) => [limbJoint("right", part), limbJoint("left", part)]);

export function jointOf(truth: Truth, { frame }: MarkedPaper, joint: JointName) {
  const mark = markOf(truth.get(frame) ?? {}, joint);
  if (mark === null) throw new Error(`no ${joint} was captured on frame ${frame}`);
  return mark;
}

/** Shares of a leg; null where one of the two is not marked. */
export function offBy(truth: Truth, paper: MarkedPaper, joint: JointName): number | null {
  const mark = paper.marks[joint];
  const target = markOf(truth.get(paper.frame) ?? {}, joint);
  return mark === undefined || target === null ? null : distance(mark, target) / LEG;
}
