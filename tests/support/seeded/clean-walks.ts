import type { ViewMarks } from "../../../lib/body";
import { placedFigure, type Walk, type WalkPanel, type Yardstick } from "../../../lib/gait";
import { type Brief, defaultBrief, layOut, walkOf } from "../../../lib/sheet";
import reference from "../../reference/captured-strides.json";
import { capturedWalk } from "../captured";
import { mirroredWalk } from "../mirrored-walk";
import { ids } from "../peers";
import { travelling } from "../seeding";
import { walk } from "../walk";

/** A walk that faults are put into. Its panels go by the names of the built walk's; its marks are exact. */
export interface CleanWalk {
  readonly name: string;
  readonly walk: Walk;
  /** The yardsticks by which it is clean. */
  readonly yardsticks: readonly Yardstick[];
  /** Points of a sole that a foot model made are good to 3 % of a leg, and faults of a foot hide in that. */
  readonly soles: "drawn" | "modelled";
}

const BOTH: readonly Yardstick[] = ["trade", "life"];
const exact = (drawn: Parameters<typeof walk>[0] = {}) => walk({ precision: 0, ...drawn });

const built: readonly CleanWalk[] = [
  { name: "built", walk: exact() },
  { name: "built, on twos", walk: exact({ frames: { left: 16, right: 16 }, exposure: 2 }) },
  { name: "built, unlike steps", walk: exact({ frames: { left: 12, right: 13 } }) },
  { name: "built, travelling", walk: travelling(exact()) },
  { name: "built, right foot first", walk: mirroredWalk(exact()) },
].map((one) => ({ ...one, yardsticks: BOTH, soles: "drawn" }));

const computed: readonly CleanWalk[] = [
  { name: "computed by the trade", yardstick: "trade", brief: {} },
  { name: "computed by life", yardstick: "life", brief: { stepLength: 0.72 } },
  {
    name: "computed, a short build, slow",
    yardstick: "trade",
    brief: {
      build: { headsTall: 6.3, legShare: 0.5, statureMetres: null },
      framesPerStep: { left: 16, right: 16 },
      stepLength: 0.7,
    },
  },
].map(({ name, yardstick, brief }) => ({
  name,
  walk: computedWalk(brief, yardstick as Yardstick),
  yardsticks: [yardstick as Yardstick],
  soles: "drawn",
}));

const captured: readonly CleanWalk[] = reference.walks.map((one) => ({
  name: `captured ${one.clip}`,
  walk: named(capturedWalk(one)),
  yardsticks: ["life"],
  soles: "modelled",
}));

/** Built walks, walks computed from published angles, and captured strides. */
export const CLEAN_WALKS: readonly CleanWalk[] = [...built, ...computed, ...captured];

/** A laid-out strip with a figure placed on every panel, one after another. */
function computedWalk(brief: Partial<Brief>, yardstick: Yardstick): Walk {
  const empty = walkOf(layOut({ ...defaultBrief, ...brief }, ids()));
  let placed = empty;
  for (const { id } of empty.panels) {
    const figure = placedFigure(placed, id, yardstick);
    if (figure.kind === "cannot-tell") throw new Error(`a figure needs ${figure.needs}`);
    const put = (one: WalkPanel) => (one.id === id ? { ...one, marks: figure.marks } : one);
    placed = { ...placed, panels: placed.panels.map(put) };
  }
  return named({ ...placed, panels: placed.panels.map(exactly) });
}

function exactly(panel: WalkPanel): WalkPanel {
  const marks = (view: ViewMarks): ViewMarks =>
    Object.fromEntries(
      Object.entries(view).map(([joint, one]) => [joint, { ...one, precision: 0 }]),
    );
  return { ...panel, marks: { side: marks(panel.marks.side), front: marks(panel.marks.front) } };
}

/** A stride's panels by the names of the built walk's. */
function named(stride: Walk): Walk {
  const last = stride.panels.at(-1);
  const panels = stride.panels.map((panel) => ({
    ...panel,
    id: panel === last ? "end" : `${panel.weightOn} ${panel.pose}`,
  }));
  return { ...stride, panels };
}
