import { SIDES } from "../../body";
import { gathered } from "../../gathered";
import { VIEWS } from "../../geometry";
import { clearlyBeyond, greatestOf } from "../beyond";
import type { Finding, Remark } from "../finding";
import { type Apart, heightsApart } from "../heights-apart";
import { HEIGHT_LIMITS, VIEWS_SOURCE } from "../methods/views";
import { isQuiet } from "../quiet";
import type { Study } from "../study";
import type { WalkPanel } from "../walk";
import { percent } from "../words";
import { cannotTell, sound } from "./answers";

/**
 * With a larger ± a joint could stand two fifths of a leg apart and pass. Leg lengths; marks placed at the
 * strip (± 3 % of a leg and less) give ± 4.2 %, which still answers.
 */
const VAGUE_BEYOND = 0.2;

/**
 * Do side and front show one pose? Heights of joints that both views have marked.
 *
 * Shapes:  a remark for each panel whose views differ, on the joint that differs most; else one answer
 * Units:   leg lengths, higher from the side positive
 * Errors:  none; where no joint is marked in both views it answers "cannot-tell"
 * Source:  beside each limit, in `methods/views`
 */
export function views(study: Study): readonly Finding[] {
  const { leg, walk } = study;
  if (isQuiet(walk.kind, "views")) return [];
  const about = { check: "views", side: null, panels: [] } as const;
  if (leg.kind === "cannot-tell") return [cannotTell(about, leg.needs)];
  const told = study.inPanels(inPanel);
  const read = told.filter((one) => one.worst !== undefined);
  if (read.length === 0) return [cannotTell(about, "a joint marked in both views of a panel")];
  const remarks = gathered(read, (one) => one.remarks);
  const panels = read.map(({ panel }) => panel);
  if (read.every(({ isVague }) => isVague)) {
    return [...remarks, cannotTell({ ...about, panels }, "marks placed more exactly")];
  }
  if (remarks.length > 0) return remarks;
  const farthest = worst(read.map((one) => one.worst).filter((one) => one !== undefined));
  return [sound({ ...about, panels }, farthest?.measured ?? null)];
}

/** What one panel alone tells of its two views. */
interface InPanel {
  readonly panel: WalkPanel;
  /** The joint that differs most; undefined where none is marked in both views. */
  readonly worst: Apart | undefined;
  readonly isVague: boolean;
  readonly remarks: readonly Remark[];
}

function inPanel(study: Study, panel: WalkPanel): InPanel {
  const joints = heightsApart(panel, study.leg);
  const isVague = joints.every(({ measured }) => !(measured.plusMinus <= VAGUE_BEYOND));
  return { panel, worst: worst(joints), isVague, remarks: remark(study, panel, joints) };
}

function worst(joints: readonly Apart[]): Apart | undefined {
  return greatestOf(joints, surely);
}

function surely({ measured: { value, plusMinus } }: Apart): number {
  return Math.abs(value) - plusMinus;
}

/** The gravest limit that a joint breaks. */
function broken({ measured: { value, plusMinus } }: Apart) {
  return HEIGHT_LIMITS.find((limit) => clearlyBeyond(Math.abs(value), plusMinus, limit.value));
}

function remark(study: Study, panel: WalkPanel, joints: readonly Apart[]): Remark[] {
  const found = worst(joints);
  const limit = found === undefined ? undefined : broken(found);
  if (found === undefined || limit === undefined) return [];
  const { joint, measured } = found;
  const others = joints.filter((one) => one !== found && broken(one) !== undefined).length;
  const more = others === 0 ? "" : `, and ${others} more ${others === 1 ? "joint" : "joints"} too`;
  const passes = percent({ value: limit.value, plusMinus: 0 });
  const sees =
    limit.level === "tidy"
      ? "Nobody will see it, but the two drawings are not of one pose"
      : "Cut from one view to the other, the figure may be seen to jump";
  return [
    {
      kind: "remark",
      check: "views",
      level: limit.level,
      yardstick: study.yardstick,
      side: SIDES.find((one) => joint.startsWith(`${one}-`)) ?? null,
      panels: [panel.id],
      frames: [panel.frame],
      spots: VIEWS.map((view) => ({ panel: panel.id, view, joints: [joint] })),
      measured,
      expected: { value: Math.sign(measured.value) * limit.value, plusMinus: 0, unit: "leg" },
      title: "Side and front differ",
      why: `At frame ${panel.frame} the ${joint.replace("-", " ")} stands ${percent(measured)} of a leg ${measured.value > 0 ? "higher" : "lower"} from the side than from ahead${more}; up to ${passes} passes as one height. ${sees}.`,
      source: VIEWS_SOURCE,
      beyond: (Math.abs(measured.value) - limit.value) / limit.value,
    },
  ];
}
