import { tempo } from "../../lib/gait";
import type { Sheet } from "../../lib/sheet";
import { time } from "../_words";
import type { Timing } from "../_workspace";
import { MOST_FRAMES, type Planned } from "./timing-plan";

const MOST_MOVES = 4; // more than that nobody reads in one line

/** What a proposal would do, in one or two sentences. */
export function tellPlanned(sheet: Sheet, timing: Timing, planned: Planned): string {
  if (planned.kind === "no-number") return time.atMost(MOST_FRAMES);
  if (planned.kind === "too-few") return time.atLeast(planned.least);
  const { frames, head } = planned.plan;
  if (frames.size === 0 && Object.keys(head).length === 0) return time.nothing[timing.what];
  return timing.what === "even-out" ? tellMoves(sheet, frames) : tellTempo(sheet, planned);
}

function tellMoves({ panels }: Sheet, frames: ReadonlyMap<string, number>): string {
  const moves = panels.flatMap(({ id, frame }) => {
    const to = frames.get(id);
    return to === undefined ? [] : [time.move(frame, to)];
  });
  return time.moves(moves.slice(0, MOST_MOVES), Math.max(0, moves.length - MOST_MOVES));
}

const MOST_CONTACTS = 6;

function tellTempo(sheet: Sheet, { plan }: Extract<Planned, { readonly kind: "plan" }>): string {
  const { panels } = sheet;
  const contacts = panels
    .filter(({ pose }) => pose === "contact")
    .map(({ id, frame }) => plan.frames.get(id) ?? frame);
  const head = { ...sheet.head, ...plan.head };
  const { left, right } = head.framesPerStep;
  const { reads } = tempo({ ...head, framesPerStep: (left + right) / 2 });
  return [
    time.contacts(contacts.slice(0, MOST_CONTACTS)),
    time.loop(head.loop.from, head.loop.to),
    time.reads(reads),
  ].join(" ");
}
