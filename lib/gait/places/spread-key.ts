import { gathered } from "../../gathered";
import { areSame } from "../memory";
import type { WalkPanel } from "../walk";
import { walkLegLength } from "../walk-leg";
import type { GroundPace } from "./places-of";
import { plantedMarks } from "./planted-marks";

interface Known {
  readonly told: readonly unknown[];
  readonly key: object;
}

const ofList = new WeakMap<readonly WalkPanel[], object>();

/** What told the ± of a walk's places, for as long as somebody holds its first panel. */
const known = new WeakMap<WalkPanel, Known>();

/**
 * By what the ± of a walk's solved places are known: which marks hold which panels, and how exactly each was
 * placed, wherever it lies. Null where nothing was solved.
 */
export function spreadKey(walk: GroundPace): object | null {
  const [first] = walk.panels;
  if (walk.ground !== "solved" || first === undefined) return null;
  const key = ofList.get(walk.panels) ?? keyBy(first, walk);
  ofList.set(walk.panels, key);
  return key;
}

function keyBy(first: WalkPanel, walk: GroundPace): object {
  const marks = plantedMarks(walk, walkLegLength(walk));
  const told = [
    ...gathered(walk.panels, ({ id, place }) => [id, place === null]),
    ...gathered(marks, ({ panel, stance, joint, plusMinus }) => [
      panel.id,
      stance,
      joint,
      plusMinus,
    ]),
  ];
  const before = known.get(first);
  if (before !== undefined && areSame(before.told, told)) return before.key;
  const key = {};
  known.set(first, { told, key });
  return key;
}
