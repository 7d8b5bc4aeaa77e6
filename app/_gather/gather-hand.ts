import type { Point } from "../../lib/geometry";
import { gatherStrokes, type Shaping, touchesStroke } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import type { PaperName } from "../_workspace";
import { boxRound, type Grip, gripAt, pulled } from "./gather-box";

/** Where a pointer is: on this paper, and on another if it is held over one. Panel units of each. */
export interface HandPlace {
  readonly at: Point;
  /** Where it was on its way there, since it was last heard of. */
  readonly by: readonly Point[];
  readonly over: (PaperName & { readonly at: Point }) | null;
}

export interface GatherHandDeps {
  /** The ink of this paper, and what of it is gathered. */
  ink(): readonly InkStroke[];
  gathered(): readonly InkStroke[];
  /** Panel units a CSS pixel. */
  pixel(): number;
  handles(): boolean;
  byBox(): boolean;
  showOutline(outline: readonly Point[] | null): void;
  showShaping(shaping: Shaping | null): void;
  /** The same on the other paper that the strokes are held over. */
  showOver(shaping: Shaping): void;
  holdOver(paper: PaperName | null): void;
  /** Something is under way, from down to up. */
  begin(): void;
  end(): void;
  gather(strokes: readonly InkStroke[]): void;
  shape(shaping: Shaping, to: PaperName | null): void;
}

export interface GatherHand {
  down(at: Point, adds: boolean): void;
  move(place: HandPlace): void;
  up(): void;
  cancel(): void;
}

type Underway =
  | { readonly kind: "outline"; readonly adds: boolean; readonly way: Point[] }
  | {
      readonly kind: "pull";
      readonly grip: Grip;
      readonly from: Point;
      shaping: Shaping | null;
      to: PaperName | null;
    };

const TAP_PX = 4; // a way that stays this near to its start is a tap
const TIP_PX = 6; // how near to a line a tap has to be

/** What a pointer does with the gather tool: draws round strokes, or pulls what is gathered. */
export function openGatherHand(deps: GatherHandDeps): GatherHand {
  let underway: Underway | null = null;

  function leave(): Underway | null {
    const was = underway;
    if (was === null) return null;
    underway = null;
    deps.showOutline(null);
    deps.showShaping(null);
    deps.holdOver(null);
    return was;
  }

  function finish(was: Underway): void {
    if (was.kind === "pull") {
      if (was.shaping !== null) deps.shape(was.shaping, was.to);
      return;
    }
    const found = foundBy(was.way);
    const before = was.adds ? deps.gathered() : [];
    deps.gather([...new Set([...before, ...found])]);
  }

  function foundBy(way: readonly Point[]): readonly InkStroke[] {
    const [start] = way;
    if (start === undefined) return [];
    const pixel = deps.pixel();
    const far = way.some(({ x, y }) => Math.hypot(x - start.x, y - start.y) > TAP_PX * pixel);
    if (far) return gatherStrokes(deps.ink(), way);
    const tip = { from: start, to: start, radius: TIP_PX * pixel };
    return deps
      .ink()
      .filter((stroke) => touchesStroke(stroke, tip))
      .slice(-1); // the topmost
  }

  return {
    down(at, adds) {
      deps.begin();
      const box = boxRound(deps.gathered());
      const grip = box === null || adds ? null : gripAt(box, at, deps.pixel(), deps.handles());
      underway =
        grip === null
          ? { kind: "outline", adds, way: [at] }
          : { kind: "pull", grip, from: at, shaping: null, to: null };
    },
    move({ at, by, over }) {
      if (underway === null) return;
      if (underway.kind === "outline") {
        const [start] = underway.way;
        if (deps.byBox() && start !== undefined) underway.way.splice(1, 4, ...boxTo(start, at));
        else underway.way.push(...by, at);
        deps.showOutline(underway.way);
        return;
      }
      const box = boxRound(deps.gathered());
      if (box === null) return;
      const { grip, from } = underway;
      const elsewhere = grip.kind === "move" ? over : null;
      // Over another paper the strokes lie under the pointer there.
      underway.shaping = pulled(box, grip, from, elsewhere?.at ?? at);
      underway.to = elsewhere === null ? null : { panel: elsewhere.panel, view: elsewhere.view };
      deps.holdOver(underway.to);
      if (elsewhere !== null) deps.showOver(underway.shaping);
      deps.showShaping(pulled(box, grip, from, at));
    },
    up() {
      const was = leave();
      if (was === null) return;
      finish(was);
      deps.end();
    },
    cancel() {
      if (leave() !== null) deps.end();
    },
  };
}

/** The other corners of a box drawn from its first. */
function boxTo(start: Point, end: Point): Point[] {
  return [{ x: end.x, y: start.y }, end, { x: start.x, y: end.y }];
}
