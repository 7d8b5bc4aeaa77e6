import type { FigureSize } from "../../body";
import type { Point } from "../../geometry";

/**
 * How a foot lies on its footprint: flat, on its heel with the toe up, or on its ball and toe with the
 * heel up. Radians, toe up positive.
 */
export interface FootRoll {
  readonly pitch: number;
  readonly on: "heel" | "sole" | "ball";
}

/** A foot's points. Leg lengths, y up from the ground; x 0 is where its heel lies when it is flat. */
export interface FootSpots {
  readonly ankle: Point;
  readonly heel: Point;
  readonly ball: Point;
  readonly toe: Point;
}

/** A foot that pitches by less lies flat: a mark is placed no better. Radians (3°), our own choice. */
const FLAT_WITHIN = (3 * Math.PI) / 180;

/** The roll of a foot on the ground that pitches by so much. */
export function rollOf(pitch: number): FootRoll {
  if (Math.abs(pitch) <= FLAT_WITHIN) return { pitch: 0, on: "sole" };
  return { pitch, on: pitch > 0 ? "heel" : "ball" };
}

/** A foot on the ground: on its heel it turns whole, on its ball the toes stay down. */
export function plantedFoot(foot: FigureSize["foot"], { pitch, on }: FootRoll): FootSpots {
  const flat = flatFoot(foot);
  if (on === "sole") return flat;
  const about = on === "heel" ? flat.heel : flat.ball;
  const turned = (spot: Point) => turnedAbout(about, spot, pitch);
  const toes = on === "ball" ? { ball: flat.ball, toe: flat.toe } : null;
  return {
    ankle: turned(flat.ankle),
    heel: turned(flat.heel),
    ball: toes?.ball ?? turned(flat.ball),
    toe: toes?.toe ?? turned(flat.toe),
  };
}

/** A foot in the air, whole, its ankle where it is told. */
export function liftedFoot(foot: FigureSize["foot"], ankle: Point, pitch: number): FootSpots {
  const flat = flatFoot(foot);
  const [x, y] = [ankle.x - flat.ankle.x, ankle.y - flat.ankle.y];
  const at = (spot: Point) => {
    const turned = turnedAbout(flat.ankle, spot, pitch);
    return { x: turned.x + x, y: turned.y + y };
  };
  return { ankle, heel: at(flat.heel), ball: at(flat.ball), toe: at(flat.toe) };
}

export function flatFoot({ ankle, heel, ball, toe }: FigureSize["foot"]): FootSpots {
  return {
    ankle: { x: -heel, y: ankle },
    heel: { x: 0, y: 0 },
    ball: { x: ball - heel, y: 0 },
    toe: { x: toe - heel, y: 0 },
  };
}

function turnedAbout(about: Point, { x, y }: Point, angle: number): Point {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const [dx, dy] = [x - about.x, y - about.y];
  return { x: about.x + dx * cos - dy * sin, y: about.y + dx * sin + dy * cos };
}
