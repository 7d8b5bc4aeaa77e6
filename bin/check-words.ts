import type { Change, Kept, Lapsed, Level, Remark, Review } from "../lib/gait";
import { cannotTellOnce } from "./cannot-tell";
import type { Checked } from "./check";
import { counted } from "./counted";
import { inColumns } from "./in-columns";
import { onOneLine } from "./on-one-line";

type Answer = Review["stepReadings"][number]["length"];

const LEVELS: Readonly<Record<Level, string>> = {
  shows: "▲ will show",
  "may-show": "△ may show",
  tidy: "· tidy",
};

/** What `check` says of a file to a person. */
export function checkWords({ file, sheet, review }: Checked): string {
  const { title, framesPerSecond } = sheet.head;
  const facts = [
    `yardstick ${review.yardstick}`,
    `${counted(framesPerSecond, "frame")} a second`,
    counted(sheet.panels.length, "panel"),
    counted(review.steps.length, "step"),
  ];
  return [
    onOneLine(title === "" ? file : `${file}: ${title}`),
    `  ${facts.join(" · ")}`,
    ...legLines(review),
    ...block(stepLines(review)),
    ...block(remarkLines(review.remarks)),
    ...block(keptLines(review.kept)),
    ...block(lapsedLines(review.lapsed)),
    ...block(cannotTellLines(review)),
    ...block(review.quieted.map(({ check, why }) => `not judged: ${check}, for ${why}`)),
    "",
    `  ${summary(review)}`,
  ].join("\n");
}

/** Lines set off from what stands before them; nothing for none. */
function block(lines: readonly string[]): string[] {
  return lines.length === 0 ? [] : ["", ...lines.map((line) => `  ${line}`)];
}

const LEG_FROM = {
  panels: "the poses' hips, knees and ankles",
  heels: "the poses' hips, knees and heels",
} as const;

/** Without a stand the leg is read off the poses, which stray: said wherever it was so. */
function legLines({ legLength }: Review): string[] {
  if (legLength.kind === "cannot-tell" || legLength.from === "stand") return [];
  return [`  leg length from ${LEG_FROM[legLength.from]}: no stand is marked`];
}

function stepLines({ stepReadings }: Review): string[] {
  if (stepReadings.length === 0) return [];
  const rows = stepReadings.map(({ weightOn, frames, length, width, hipHeights }) => [
    weightOn ?? "?",
    ...[frames.contact, frames.down, frames.passing, frames.up, frames.next].map((frame) =>
      frame === null ? "–" : String(frame),
    ),
    leg(length),
    leg(width),
    [hipHeights.contact, hipHeights.down, hipHeights.passing, hipHeights.up].map(leg).join(" "),
  ]);
  const heading = ["step", "contact", "down", "passing", "up", "next", "length", "width"];
  return inColumns([[...heading, "hips at contact, down, passing, up (leg lengths)"], ...rows]);
}

function remarkLines(remarks: readonly Remark[]): string[] {
  return remarks.flatMap(({ level, check, side, frames, title, why }) => {
    const what = [LEVELS[level], check, side, framesOf(frames)].filter((part) => part !== null);
    return [`${what.join(" · ")}: ${title}`, `    ${why}`];
  });
}

function framesOf(frames: readonly number[]): string {
  return `frame${frames.length === 1 ? "" : "s"} ${frames.join(", ")}`;
}

/** What the team keeps, with its reason: no fault, so nothing else is said of it. */
function keptLines(kept: readonly Kept[]): string[] {
  return kept.flatMap(({ remark: { check, side, frames, title }, entry: { reason, by } }) => {
    const what = ["○ on purpose", check, side, framesOf(frames)].filter((part) => part !== null);
    const said = [reason, by].filter((part) => part !== "").map(onOneLine);
    const line = `${what.join(" · ")}: ${title}`;
    return said.length === 0 ? [line] : [line, `    ${said.join(" – ")}`];
  });
}

const CHANGES: Readonly<Record<Change, string>> = {
  reversed: "has reversed",
  halved: "is less than half of what it was",
  doubled: "is more than double what it was",
  elsewhere: "is read on another side as well",
};

function lapsedLines(lapsed: readonly Lapsed[]): string[] {
  return lapsed.map(
    ({ entry, change }) => `no longer on purpose: ${entry.check}, which ${CHANGES[change]}`,
  );
}

function cannotTellLines(review: Review): string[] {
  return inColumns(
    cannotTellOnce(review).map(({ check, side, needs }) => [
      "cannot tell",
      side === null ? check : `${check} (${side})`,
      `needs ${needs}`,
    ]),
  );
}

function summary({ remarks, kept }: Review): string {
  const counts = (["shows", "may-show", "tidy"] as const)
    .map((level) => ({ level, count: remarks.filter((one) => one.level === level).length }))
    .filter(({ count }) => count > 0)
    .map(({ level, count }) => `${count} ${LEVELS[level].slice(2)}`);
  const keeping = kept.length === 0 ? [] : [`${kept.length} on purpose`];
  return [...(counts.length === 0 ? ["nothing to remark"] : counts), ...keeping].join(", ");
}

function leg(answer: Answer): string {
  if (answer.kind === "cannot-tell") return "–";
  const shown = answer.value.toFixed(2);
  return shown === "-0.00" ? "0.00" : shown;
}
