import { gathered } from "../../gathered";
import type { Walk, WalkPanel } from "../walk";
import { walkLegLength } from "../walk-leg";
import { type Held, holdStill } from "./hold-still";
import { plantedMarks } from "./planted-marks";
import { withinOf } from "./within-of";

/** Where a panel's middle is on the ground, and what told: a hand, the travel, or the planted feet. */
export interface Place {
  readonly kind: "set" | "travel" | "solved";
  /** Leg lengths; not a number when the walk has no usable advance. */
  readonly x: number;
  /** Leg lengths, against the panel by which its chain hangs; 0 where it was set or follows the travel. */
  readonly plusMinus: number;
}

/** What tells a panel's place beside the panel itself: how the ground goes by, and the other panels. */
export type GroundPace = Pick<Walk, "travel" | "advance" | "ground" | "panels">;

/** A panel, or one that is only thought of and has no id yet. */
export type Asked = Pick<WalkPanel, "place" | "frame"> & Partial<Pick<WalkPanel, "id">>;

/**
 * Where each panel of a walk is on the ground.
 *
 * By travel, a panel is carried forward by the advance since frame 1, or, in a walk that travels, stands as
 * set by hand. So a walk on the spot, whose ground slides back under the walker, and one that travels are
 * read by one rule. On the spot a place left over from travelling is kept on the sheet and not followed:
 * nothing there shows it or could change it.
 *
 * Solved, each pose was drawn in the middle of its panel, and the planted feet tell how far the ground went
 * by: panels that share a footprint are placed so that it stays where it is. Places set by hand hold. A
 * chain with none hangs by its first panel, and a panel without planted marks goes on from the one before
 * it, both as the travel has them.
 *
 * Units:   leg lengths
 * Errors:  none
 */
export function placesOf(walk: GroundPace): (panel: Asked) => Place {
  if (walk.ground !== "solved") return (panel) => byTravel(panel, walk);
  return solvedFor(walk).placeOf;
}

/**
 * ± of how far apart two panels of a walk stand on the ground. It is not that of their places added up:
 * panels that hang on the same footprints err together.
 *
 * Units:   leg lengths; 0 unless places are solved, and between places that were set
 * Errors:  none
 */
export function placesWithin(walk: GroundPace): (from: WalkPanel, to: WalkPanel) => number {
  if (walk.ground !== "solved") return () => 0;
  return solvedFor(walk).within;
}

interface Solved {
  readonly advance: number;
  readonly placeOf: (panel: Asked) => Place;
  readonly within: (from: WalkPanel, to: WalkPanel) => number;
}

function solvedFor(walk: GroundPace): Solved {
  const known = solved.get(walk.panels);
  if (known !== undefined && known.advance === walk.advance) return known;
  const held = holdStill(plantedMarks(walk, walkLegLength(walk)), setPlaces(walk));
  const places = solvePlaces(walk, held);
  const placeOf = (panel: Asked): Place => {
    const own = panel.id === undefined ? undefined : places.get(panel.id);
    return own ?? byTravel(panel, { ...walk, travel: "travelling" });
  };
  const told = { advance: walk.advance, placeOf, within: withinOf(walk, held) };
  solved.set(walk.panels, told);
  return told;
}

/** Panels are never changed but replaced, so what was solved holds for as long as their list does. */
const solved = new WeakMap<readonly WalkPanel[], Solved>();

function byTravel({ place, frame }: Asked, { travel, advance }: GroundPace): Place {
  if (travel === "travelling" && place !== null) return { kind: "set", x: place, plusMinus: 0 };
  return { kind: "travel", x: advance * (frame - 1), plusMinus: 0 };
}

function solvePlaces(walk: GroundPace, held: Held): ReadonlyMap<string, Place> {
  const hungAt = new Map<WalkPanel, number>();
  const places = new Map<string, Place>();
  let ahead = 0; // how far the panel before lies from where the travel alone would have it
  for (const panel of walk.panels) {
    const travelled = walk.advance * (panel.frame - 1);
    const first = held.hungBy(panel);
    if (first !== null && !hungAt.has(first)) {
      hungAt.set(first, travelled + ahead - (held.at(panel) ?? 0));
    }
    const at = held.at(panel);
    const x =
      at === null ? travelled + ahead : at + (first === null ? 0 : (hungAt.get(first) ?? 0));
    places.set(panel.id, placed(panel, held, x));
    ahead = x - travelled;
  }
  return places;
}

/** The ± costs a solution of its own, and is worked out where somebody asks for it. */
function placed(panel: WalkPanel, held: Held, x: number): Place {
  if (panel.place !== null) return { kind: "set", x, plusMinus: 0 };
  if (held.at(panel) === null) return { kind: "travel", x, plusMinus: 0 };
  return {
    kind: "solved",
    x,
    get plusMinus() {
      return held.plusMinus(panel);
    },
  };
}

/** Ground x of the panels that a hand has placed. */
export function setPlaces({ panels }: Pick<Walk, "panels">): ReadonlyMap<WalkPanel, number> {
  return new Map(
    gathered(panels, (panel): [WalkPanel, number][] =>
      panel.place === null ? [] : [[panel, panel.place]],
    ),
  );
}
