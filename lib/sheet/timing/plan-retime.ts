import { otherSide, SIDES, type Side } from "../../body";
import { type Frame, nearestDrawn } from "../../motion";
import { HEAD_FIELDS } from "../fields";
import { requireField } from "../require-field";
import type { PanelId, SheetHead } from "../sheet";
import { retimedHead } from "./retimed-head";
import { type Section, type Sections, sectionsOf } from "./sections";
import { leastLength, placeBehind, placeBetween } from "./stretch";
import { movedOnly, type TimedSheet, type TimePlan, type TimeScope } from "./time-plan";

type FramesPerStep = SheetHead["framesPerStep"];

/** A new tempo: for the whole strip each side's frames per step, or the frames of one step alone. */
export type NewTempo =
  | { readonly scope: "strip"; readonly framesPerStep: FramesPerStep }
  | { readonly scope: { readonly step: PanelId }; readonly frames: number };

type Frames = Map<PanelId, Frame>;

/**
 * The strip at another tempo. Every pose keeps its share of its step, on whole exposures, each on a frame
 * of its own; what follows is shifted, and so is the loop. With the whole strip the lead-in before the
 * first contact is stretched like the step it leads to; the first panel stays where it is. With one step
 * its contact stays, and only what comes after it moves.
 *
 * Units:   frames, counted from 1
 * Errors:  RangeError unless the frames are whole numbers 1 to 1000 and leave every panel of a step a
 *          drawn frame (see `leastFrames`)
 */
export function planRetime(sheet: TimedSheet, tempo: NewTempo): TimePlan {
  requireTempo(sheet, tempo);
  const cut = sectionsOf(sheet.panels);
  const frames: Frames = new Map();
  if (tempo.scope === "strip") stretchStrip(frames, cut, sheet, tempo.framesPerStep);
  else stretchStep(frames, cut, sheet, { step: tempo.scope.step, length: tempo.frames });
  const moved = movedOnly(sheet.panels, frames);
  const framesPerStep = tempo.scope === "strip" ? tempo.framesPerStep : agreedTempo(sheet, moved);
  return { frames: moved, head: retimedHead(sheet, moved, framesPerStep) };
}

/**
 * The least frames that leave each panel of a step a drawn frame of its own, by side: over the strip, or
 * of one step alone.
 */
export function leastFrames({ head, panels }: TimedSheet, scope: TimeScope): FramesPerStep {
  const { sections } = sectionsOf(panels);
  const asked =
    scope === "strip"
      ? sections.filter(({ isStep }) => isStep)
      : sections.filter(({ contact }) => contact.id === scope.step);
  const least = (side: Side): number =>
    asked
      .filter(({ weightOn }) => scope !== "strip" || (weightOn ?? side) === side)
      .reduce((most, { inner }) => Math.max(most, leastLength(inner.length, head.exposure)), 1);
  return { left: least("left"), right: least("right") };
}

function requireTempo(sheet: TimedSheet, tempo: NewTempo): void {
  const asked =
    tempo.scope === "strip" ? tempo.framesPerStep : { left: tempo.frames, right: tempo.frames };
  requireField("retime", "frames per step of", HEAD_FIELDS.framesPerStep, asked);
  const least = leastFrames(sheet, tempo.scope);
  for (const side of SIDES) {
    if (asked[side] < least[side]) {
      throw new RangeError(
        `retime needs ${least[side]} frames or more for a ${side} step, got ${asked[side]}`,
      );
    }
  }
}

function stretchStrip(
  frames: Frames,
  { lead, sections }: Sections,
  { head }: TimedSheet,
  framesPerStep: FramesPerStep,
): void {
  const { exposure } = head;
  const first = sections[0];
  if (first === undefined) return;
  const ratioOf = (side: Side | null): number =>
    side === null
      ? mean(framesPerStep) / mean(head.framesPerStep)
      : framesPerStep[side] / head.framesPerStep[side];
  let moment = stretchLead(frames, { lead, first, ratioOf, exposure });
  for (const { weightOn, contact, inner, next, isStep } of sections) {
    const from = nearestDrawn(moment, exposure);
    frames.set(contact.id, from);
    if (next === null) {
      placeBehind(frames, { contact, inner, from, exposure, ratio: ratioOf(weightOn) });
      return;
    }
    const own = weightOn === null ? mean(framesPerStep) : framesPerStep[weightOn];
    const length = isStep ? own : (next.frame - contact.frame) * ratioOf(null);
    moment += Math.max(length, leastLength(inner.length, exposure));
    placeBetween(frames, {
      contact,
      inner,
      next,
      from,
      to: nearestDrawn(moment, exposure),
      exposure,
    });
  }
}

interface Lead {
  readonly lead: Sections["lead"];
  readonly first: Section;
  readonly ratioOf: (side: Side | null) => number;
  readonly exposure: 1 | 2;
}

/** Answers where the first contact goes. */
function stretchLead(frames: Frames, { lead, first, ratioOf, exposure }: Lead): number {
  const [start, ...inner] = lead;
  const { contact, weightOn } = first;
  if (start === undefined) return nearestDrawn(contact.frame, exposure);
  // The other foot carries until the first contact.
  const ratio = ratioOf(weightOn === null ? null : otherSide(weightOn));
  const length = (contact.frame - start.frame) * ratio;
  const moment = start.frame + Math.max(length, leastLength(inner.length, exposure));
  const to = nearestDrawn(moment, exposure);
  placeBetween(frames, { contact: start, inner, next: contact, from: start.frame, to, exposure });
  return moment;
}

function stretchStep(
  frames: Frames,
  { sections }: Sections,
  { head, panels }: TimedSheet,
  { step, length }: { readonly step: PanelId; readonly length: number },
): void {
  const section = sections.find(({ contact }) => contact.id === step);
  const next = section?.next;
  if (section === undefined || next === null || next === undefined) return;
  const { exposure } = head;
  const { contact, inner } = section;
  const from = contact.frame;
  const to = nearestDrawn(from + length, exposure);
  placeBetween(frames, { contact, inner, next, from, to, exposure });
  const later = panels.slice(panels.findIndex(({ id }) => id === next.id));
  for (const panel of later) frames.set(panel.id, panel.frame + to - next.frame);
}

/** Frames per step that follow one retimed step: a side's own where all its steps now agree. */
function agreedTempo(
  { head, panels }: TimedSheet,
  moved: ReadonlyMap<PanelId, Frame>,
): FramesPerStep {
  const at = ({ id, frame }: { readonly id: PanelId; readonly frame: Frame }) =>
    moved.get(id) ?? frame;
  const agreed = { ...head.framesPerStep };
  for (const side of SIDES) {
    const lengths = sectionsOf(panels).sections.flatMap(({ weightOn, contact, next, isStep }) =>
      isStep && next !== null && weightOn === side ? [at(next) - at(contact)] : [],
    );
    const [only, ...others] = new Set(lengths);
    if (only !== undefined && others.length === 0 && only > 0) agreed[side] = only;
  }
  return agreed;
}

function mean({ left, right }: FramesPerStep): number {
  return (left + right) / 2;
}
