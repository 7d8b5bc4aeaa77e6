import type { Point } from "../../lib/geometry";
import { type Bounds, gatherStrokes, type Shaping, touchesStroke } from "../../lib/ink";
import type { InkStroke } from "../../lib/sheet";
import type { PaperName } from "../_workspace";
import { boxRound, type Grip, gripAt, pulled } from "./gather-box";

/** Where a pointer is: on this paper, and on another if it is held over one. Panel units of each. */
export interface HandPlace {
  readonly at: Point;
  /** Where it was on its way there, since it was last heard of. */
  readonly by: readonly Point[];
  over(): (PaperName & { readonly at: Point }) | null;
}

/** How a pointer comes down. */
export interface Press {
  /** What it gathers comes to what is gathered already. */
  readonly adds: boolean;
  readonly finger: boolean;
}

export interface GatherHandDeps {
  /** The ink of this paper, and what of it is gathered. */
  ink(): readonly InkStroke[];
  gathered(): readonly InkStroke[];
  /** Panel units a CSS pixel. */
  pixel(): number;
  handles(): boolean;
  byBox(): boolean;
  /** Adding was chosen beforehand, for hands without a Shift key. */
  adding(): boolean;
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
  down(at: Point, press: Press): void;
  move(place: HandPlace): void;
  up(): void;
  cancel(): void;
}

type Underway =
  | { readonly kind: "outline"; readonly adds: boolean; readonly way: Point[] }
  | {
      readonly kind: "pull";
      readonly grip: Grip;
      readonly box: Bounds;
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
    const before = was.adds ? deps.gathered() : [];
    if (!isTap(was.way)) {
      deps.gather([...new Set([...before, ...gatherStrokes(deps.ink(), was.way)])]);
      return;
    }
    const tapped = strokeAt(was.way[0]);
    const others = before.filter((stroke) => stroke !== tapped);
    // With what is there already kept, a tap on one of it lets that one go.
    if (tapped === null || others.length < before.length) deps.gather(others);
    else deps.gather([...before, tapped]);
  }

  const isNear = (to: Point, from: Point) =>
    Math.hypot(to.x - from.x, to.y - from.y) <= TAP_PX * deps.pixel();

  function isTap([start, ...way]: readonly Point[]): boolean {
    return start === undefined || way.every((point) => isNear(point, start));
  }

  /** The topmost stroke at a point. */
  function strokeAt(at: Point | undefined): InkStroke | null {
    if (at === undefined) return null;
    const tip = { from: at, to: at, radius: TIP_PX * deps.pixel() };
    return deps.ink().findLast((stroke) => touchesStroke(stroke, tip)) ?? null;
  }

  return {
    down(at, press) {
      deps.begin();
      const adds = press.adds || deps.adding();
      const box = adds ? null : boxRound(deps.gathered());
      const hold = { pixel: deps.pixel(), handles: deps.handles(), finger: press.finger };
      const grip = box === null ? null : gripAt(box, at, hold);
      underway =
        box === null || grip === null
          ? { kind: "outline", adds, way: [at] }
          : { kind: "pull", grip, box, from: at, shaping: null, to: null };
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
      const { grip, box, from } = underway;
      if (underway.shaping === null && isNear(at, from)) return; // a hand that only rests
      const elsewhere = grip.kind === "move" ? over() : null;
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
