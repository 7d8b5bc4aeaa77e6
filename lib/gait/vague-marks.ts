import { JOINTS, type JointName, type LegLength } from "../body";
import { VIEWS } from "../geometry";
import type { CheckId, Finding } from "./finding";
import { perPanel } from "./per-panel";
import type { Walk, WalkPanel } from "./walk";
import { listed } from "./words";

/**
 * A mark that may lie farther off than this tells nothing of how a body stands. Leg lengths; twice the 3 % that
 * the roughest hand at the strip and the model of a foot have (our own choice).
 */
export const TOO_VAGUE_FROM = 0.06;

/** What these ask is told by labels and frames; no mark is read for it. */
const READ_NO_MARKS: ReadonlySet<CheckId> = new Set(["missing-pose", "gaps"]);

/**
 * Nothing is called sound where a panel that it was read from has a mark too vague to tell: it cannot be told
 * until that is marked more exactly. Remarks stay, for they lie beyond their limit by more than their ±.
 */
export function soundOnlyIfExact(
  findings: readonly Finding[],
  { panels }: Walk,
  leg: LegLength,
): readonly Finding[] {
  const vague = new Map<string, Vague>();
  for (const panel of panels) {
    const joints = vagueJoints(panel, leg);
    if (joints.length > 0) vague.set(panel.id, { panel, joints });
  }
  if (vague.size === 0) return findings;
  return findings.map((finding) => {
    if (finding.kind !== "sound" || READ_NO_MARKS.has(finding.check)) return finding;
    const first = finding.panels.map((id) => vague.get(id)).find((one) => one !== undefined);
    if (first === undefined) return finding;
    const { check, side, panels: read } = finding;
    return { kind: "cannot-tell", check, side, panels: read, needs: needsFor(first) };
  });
}

/** A panel, and its joints whose marks are too vague. */
interface Vague {
  readonly panel: WalkPanel;
  readonly joints: readonly JointName[];
}

function needsFor({ panel, joints }: Vague): string {
  const named = joints.slice(0, MOST_NAMED).map((joint) => joint.replace("-", " "));
  const more = joints.length > MOST_NAMED ? " and others" : "";
  return `the ${more === "" ? listed(named) : named.join(", ")}${more} marked more exactly at frame ${panel.frame}`;
}

const MOST_NAMED = 3;

/** The joints of a panel whose mark in either view is too vague, or whose ± is no number. */
const vagueJoints = perPanel((panel, leg): readonly JointName[] => {
  if (leg.kind === "cannot-tell") return NONE;
  const most = TOO_VAGUE_FROM * leg.value;
  const found = JOINTS.filter((joint) =>
    VIEWS.some((view) => {
      const mark = panel.marks[view][joint];
      return mark !== undefined && !(mark.precision <= most);
    }),
  );
  return found.length === 0 ? NONE : found;
});

const NONE: readonly JointName[] = [];
