import type { Remark, Walk, Yardstick } from "../../lib/gait";
import { type PanelName, push, raise, retime, without } from "./walk";

/** A fault put into one step, `times` as large as its threshold beyond what is drawn. */
export interface StepFault {
  readonly name: string;
  readonly yardstick: Yardstick;
  readonly check: Remark["check"];
  readonly level: Remark["level"];
  /** Panels the remark must name; `@` stands for the side. */
  readonly panels: readonly string[];
  readonly put: (into: Walk, side: "left" | "right", times: number) => Walk;
  /** Marks the fault is tried on: exact, and placed with a pencil (0.5 % of a leg). */
  readonly precisions: readonly number[];
}

const EXACT_AND_PENCIL = [0, 0.005];

const named = (side: "left" | "right", pose: "contact" | "down" | "passing" | "up"): PanelName =>
  `${side} ${pose}`;

export const SLIDES: StepFault[] = (["trade", "life"] as const).flatMap(
  (yardstick): StepFault[] => [
    {
      name: "ball slips",
      yardstick,
      check: "slide",
      level: "shows",
      panels: ["@ down", "@ passing"],
      precisions: EXACT_AND_PENCIL,
      put: (into, side, times) =>
        push(into, named(side, "passing"), [`${side}-ball`], times * 0.05),
    },
    {
      name: "heel slips",
      yardstick,
      check: "slide",
      level: "shows",
      panels: ["@ contact", "@ passing"],
      precisions: EXACT_AND_PENCIL,
      put: (into, side, times) =>
        push(into, named(side, "passing"), [`${side}-heel`], times * 0.05),
    },
    {
      name: "foot slides back",
      yardstick,
      check: "slide",
      level: "shows",
      panels: ["@ contact", "@ passing"],
      precisions: EXACT_AND_PENCIL,
      put: (into, side, times) =>
        push(into, named(side, "passing"), [`${side}-heel`], times * -0.02),
    },
  ],
);

/** Trade's limits are 0, so "its threshold" is the least that can be told: ± of the difference. */
const LEAST_TOLD = 0.0055;

export const HEIGHTS: StepFault[] = [
  {
    name: "down over contact",
    yardstick: "trade",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ down"],
    precisions: EXACT_AND_PENCIL,
    put: (into, side, times) => raise(into, named(side, "down"), 0.02 + signed(times) * LEAST_TOLD),
  },
  {
    name: "passing under contact",
    yardstick: "trade",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    precisions: EXACT_AND_PENCIL,
    put: (into, side, times) =>
      raise(into, named(side, "passing"), -0.02 - signed(times) * LEAST_TOLD),
  },
  {
    name: "up under passing",
    yardstick: "trade",
    check: "hip-order",
    level: "shows",
    panels: ["@ passing", "@ up"],
    precisions: EXACT_AND_PENCIL,
    put: (into, side, times) => raise(into, named(side, "up"), -0.01 - signed(times) * LEAST_TOLD),
  },
  {
    name: "passing under contact",
    yardstick: "life",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    precisions: [0], // a pencil's ± of 0.5 % is as large as this limit
    put: (into, side, times) => raise(into, named(side, "passing"), -0.02 - times * 0.005),
  },
  {
    name: "down over contact",
    yardstick: "life",
    check: "hip-order",
    level: "shows",
    panels: ["@ contact", "@ down"],
    precisions: EXACT_AND_PENCIL,
    put: (into, side, times) =>
      raise(raise(into, named(side, "down"), 0.02 + times * 0.02), named(side, "passing"), 0.05),
  },
];

/** 2 → 2, 0.5 → −0.5: half of a limit of 0 is the other side of it. */
function signed(times: number): number {
  return times > 1 ? times : -times;
}

export const GAPS: StepFault[] = [
  {
    name: "passing two frames late",
    yardstick: "trade",
    check: "gaps",
    level: "may-show",
    panels: ["@ down", "@ passing", "@ up"],
    precisions: [0],
    put: (into, side, times) => retimed(into, side, "passing", Math.floor(times)),
  },
  {
    name: "passing far from the middle of its span",
    yardstick: "life",
    check: "gaps",
    level: "shows",
    panels: ["@ contact", "@ passing"],
    precisions: [0],
    // Life's span is 0.55 ± 0.15, so twice that is 0.85 and half of it 0.625: 10.2 and 7.5 frames.
    put: (into, side, times) =>
      retimed(
        without(into, named(side, "up")),
        side,
        "passing",
        Math.floor((0.05 + times * 0.15) * 12),
      ),
  },
];

function retimed(into: Walk, side: "left" | "right", pose: "passing", by: number): Walk {
  const name = named(side, pose);
  const frame = into.panels.find(({ id }) => id === name)?.frame ?? Number.NaN;
  return retime(into, name, frame + by);
}
