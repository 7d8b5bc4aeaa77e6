import { otherSide, type Side } from "../../body";
import type { Panel } from "../sheet";

/** What timing needs of a panel. */
export type TimedPanel = Pick<Panel, "id" | "frame" | "pose" | "weightOn">;

/** From one contact up to the next: what is timed as a whole. */
export interface Section {
  readonly weightOn: Side | null;
  readonly contact: TimedPanel;
  /** The panels between the contacts. */
  readonly inner: readonly TimedPanel[];
  /** The contact that ends it; null behind the last. */
  readonly next: TimedPanel | null;
  /** It ends on the other foot. Twice the same foot is a hop, or a contact was left out. */
  readonly isStep: boolean;
}

/** A strip cut at its contacts. */
export interface Sections {
  /** What stands before the first contact: stand and lead-in. */
  readonly lead: readonly TimedPanel[];
  readonly sections: readonly Section[];
}

/** Cuts a strip at its contacts. Shapes: panels in frame order, sections in the same order. */
export function sectionsOf(panels: readonly TimedPanel[]): Sections {
  const starts = panels.flatMap(({ pose }, index) => (pose === "contact" ? [index] : []));
  const sections = starts.flatMap((start, nth): Section[] => {
    const contact = panels[start];
    if (contact === undefined) return [];
    const end = starts[nth + 1] ?? panels.length;
    const inner = panels.slice(start + 1, end);
    const next = panels[end] ?? null;
    const weightOn =
      contact.weightOn ?? inner.find((panel) => panel.weightOn !== null)?.weightOn ?? null;
    const lands = next?.weightOn ?? null;
    const isStep =
      next !== null && (lands === null || weightOn === null || lands === otherSide(weightOn));
    return [{ weightOn, contact, inner, next, isStep }];
  });
  return { lead: panels.slice(0, starts[0] ?? panels.length), sections };
}
