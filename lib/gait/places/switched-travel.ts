import { JOINTS, type JointName, type Mark, PANEL } from "../../body";
import type { Travel, Walk, WalkPanel } from "../walk";
import { walkLegLength } from "../walk-leg";
import { placesOf } from "./places-of";

/** What becomes of a walk whose travel is switched, so that every drawing stays where it is on the ground. */
export interface TravelSwitch {
  readonly travel: Travel;
  /** Leg lengths a frame. */
  readonly advance: number;
  /** Panels that change, by id. */
  readonly panels: ReadonlyMap<string, SwitchedPanel>;
}

export interface SwitchedPanel {
  readonly place: number | null;
  /** How far the side view's drawing moves on its paper, panel units to the right. */
  readonly aside: number;
}

/**
 * A walk on the spot and the same walk travelling, told by each other. To travel it needs nothing: places
 * follow from the advance, and those left over from before are let go. On the spot no panel has a place of its own, so
 * the advance becomes the one that lies nearest to the places, and each drawing moves aside by what is left.
 * Where places are solved, travel does not enter, and nothing moves.
 *
 * Units:   see `TravelSwitch`
 * Errors:  none; without a leg length a plain figure's is taken
 */
export function switchedTravel(walk: Walk, travel: Travel): TravelSwitch {
  const { advance, panels } = walk;
  const placed = panels.filter(({ place }) => place !== null);
  if (walk.ground === "solved" || travel === walk.travel || placed.length === 0) {
    return { travel, advance, panels: new Map() };
  }
  if (travel === "travelling") {
    return {
      travel,
      advance,
      panels: new Map(placed.map(({ id }) => [id, { place: null, aside: 0 }])),
    };
  }
  const line = lineThrough(walk);
  const leg = walkLegLength(walk);
  const legUnits = leg.kind === "value" ? leg.value : PANEL.plainLeg;
  const placeOf = placesOf(walk);
  const moved = panels.map((panel): [string, SwitchedPanel] => {
    const left = placeOf(panel).x - (line.start + line.advance * (panel.frame - 1));
    return [panel.id, { place: null, aside: left * legUnits }];
  });
  return { travel, advance: line.advance, panels: new Map(moved) };
}

/** The walk as `switchedTravel` leaves it. */
export function withTravel(walk: Walk, travel: Travel): Walk {
  const { advance, panels } = switchedTravel(walk, travel);
  return {
    ...walk,
    travel,
    advance,
    panels: walk.panels.map((panel) => {
      const to = panels.get(panel.id);
      return to === undefined ? panel : switched(panel, to);
    }),
  };
}

function switched(panel: WalkPanel, { place, aside }: SwitchedPanel): WalkPanel {
  const side: Partial<Record<JointName, Mark>> = {};
  for (const joint of JOINTS) {
    const mark = panel.marks.side[joint];
    if (mark !== undefined) side[joint] = { ...mark, x: mark.x + aside };
  }
  return { ...panel, place, marks: { ...panel.marks, side } };
}

/** The even advance that lies nearest to a walk's places, by least squares. */
function lineThrough(walk: Walk): { readonly start: number; readonly advance: number } {
  const placeOf = placesOf(walk);
  const points = walk.panels.map((panel) => ({ at: panel.frame - 1, x: placeOf(panel).x }));
  const mean = (of: (point: { at: number; x: number }) => number) =>
    points.reduce((sum, point) => sum + of(point), 0) / points.length;
  const [at, x] = [mean((point) => point.at), mean((point) => point.x)];
  const spread = mean((point) => (point.at - at) ** 2);
  const advance =
    spread > 0 ? mean((point) => (point.at - at) * (point.x - x)) / spread : walk.advance;
  return { start: x - advance * at, advance };
}
