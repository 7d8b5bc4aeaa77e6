import { existsSync, readFileSync } from "node:fs";
import { type JointName, SIDES } from "../../lib/body";
import { CLIPS, type Clip, type ClipStep, type SpacePoint } from "./captured-motion";

const MARKERS = new URL("forceplate/bmc_walk1.csv", CLIPS);
const PLATES = new URL("forceplate/bmc_walk1.json", CLIPS);

export const PLATES_ARE_THERE = existsSync(MARKERS) && existsSync(PLATES);

const LEG = 0.97; // metres: thigh and shank 0.8985, times 1.079
/** When people pass the poses of a step, as shares of it. */
const SHARES = { down: 0.07, up: 0.5, passing: 0.6 } as const;
const MARKED = ["hip", "knee", "ankle", "heel", "ball"] as const;

/**
 * The walker over force plates, from hips to balls: markers on the skin, contacts as the plates measured
 * them. Nothing in the library was set by this walker.
 */
export function plateWalker(): Clip {
  const { events }: { events: readonly PlateEvent[] } = JSON.parse(readFileSync(PLATES, "utf8"));
  const [head = "", ...lines] = readFileSync(MARKERS, "utf8").trim().split("\n");
  const names = head.split(",");
  const rows = lines.map((line) => line.split(",").map(Number));
  const value = (frame: number, name: string) =>
    (rows[frame - 1]?.[names.indexOf(name)] ?? Number.NaN) / LEG;
  const point = (frame: number, marker: string): SpacePoint => ({
    x: value(frame, `${marker}_x`),
    y: value(frame, `${marker}_y`),
    z: -value(frame, `${marker}_z`), // the file stores z to the left
  });
  const contacts = events.filter(({ kind }) => kind === "contact");
  return {
    name: "bmc_walk1",
    framesPerSecond: 150,
    steps: contacts.slice(0, -1).map((from, nth): ClipStep => {
      const to = contacts[nth + 1]?.frame ?? Number.NaN;
      const at = (share: number) => Math.round(from.frame + share * (to - from.frame));
      return {
        lead: from.foot === "L" ? "left" : "right",
        contact: at(0),
        down: at(SHARES.down),
        passing: at(SHARES.passing),
        up: at(SHARES.up),
        next: at(1),
      };
    }),
    figure: (frame) =>
      new Map(
        SIDES.flatMap((side) =>
          MARKED.map((joint): [JointName, SpacePoint] => [
            `${side}-${joint}`,
            point(frame, `${side.charAt(0)}_${joint}`),
          ]),
        ),
      ),
  };
}

interface PlateEvent {
  readonly foot: "L" | "R";
  readonly kind: "contact" | "off";
  readonly frame: number;
}
