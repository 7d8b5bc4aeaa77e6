import {
  type Change,
  defaultBrief,
  doAgain,
  type HandedSheet,
  handOverChanges,
  layOut,
} from "../../lib/sheet";
import type { DocumentName } from "../../shared/document-name";
import type { RefusalCode } from "../../shared/hub-message";
import { mayWrite, type Role } from "../../shared/role";
import type { DocumentLine } from "./document-line";
import type { Drawer } from "./local/drawer";
import { byKey, type KeptWork, type LostWhy } from "./local/kept-work";
import type { Room } from "./open-room";
import { freshPanelId } from "./random-id";

/** Why a document was opened afresh: the hub refused a change, or put the sheet back to an older state. */
export type FallenWhy = RefusalCode | "generation";

/** How much work there is, in the words of who did it. */
export interface Tally {
  readonly strokes: number;
  readonly marks: number;
  /** Entries of the critique. */
  readonly entries: number;
  /** Everything else: panels, frames, labels, the head. */
  readonly others: number;
}

/** What became of work that was set aside. */
export interface Told {
  /** Why the sheet was opened afresh; null where the work lay here from another day. */
  readonly why: FallenWhy | null;
  readonly doneAgain: Tally;
  /** Kept in the drawer until it is saved as a file, or thrown away by hand. */
  readonly lost: readonly KeptWork[];
}

export interface AgainDeps {
  readonly drawing: Room["drawing"];
  readonly critique: Room["critique"];
  readonly lines: { readonly [Name in DocumentName]: DocumentLine };
  readonly drawer: Drawer;
  readonly role: Role;
  readonly fellBy: FallenWhy | null;
}

/**
 * Does again what was set aside, each thing as a step of its own, now that both documents are here. What
 * cannot be done again stays in the drawer, with the reason. Null: there is nothing to tell.
 */
export function doSetAsideAgain({ lines, drawer, role, fellBy, ...docs }: AgainDeps): Told | null {
  const aside = [lines.drawing, lines.critique].flatMap((line) => line.takeAside()).toSorted(byKey);
  if (aside.length === 0 && fellBy !== "generation") return null;
  const done: KeptWork[] = [];
  const lost: KeptWork[] = [];
  const lose = (work: KeptWork, changes: readonly Change[], why: LostWhy) => {
    const left: KeptWork = { ...work, update: null, changes, lost: why };
    lost.push(left);
    drawer.keep(left);
  };
  for (const work of aside) {
    const { document } = work;
    if (work.lost !== null) lose(work, work.changes, work.lost);
    else if (!mayWrite(role, document)) lose(work, work.changes, "role");
    else {
      lines[document].doingAgain(() => {
        const notDone = doAgain(docs[document], document, work.changes);
        const left = notDone.map(({ change }) => change);
        done.push({ ...work, changes: work.changes.filter((change) => !left.includes(change)) });
        const [first] = notDone;
        if (first === undefined) drawer.drop(work.key);
        else lose(work, left, first.why);
      });
    }
  }
  return { why: fellBy, doneAgain: tallyOf(done), lost };
}

/** What waited when the door was shut, added to what was told before. In the drawer it stays as it was. */
export function toldOfShut(before: Told | null, left: readonly KeptWork[]): Told {
  const lost = left.map((work): KeptWork => ({ ...work, lost: work.lost ?? "shut" }));
  return {
    why: before?.why ?? null,
    doneAgain: before?.doneAgain ?? tallyOf([]),
    lost: [...(before?.lost ?? []), ...lost],
  };
}

/** Counts what work is made of; what was done to one thing many times counts once. */
export function tallyOf(work: readonly KeptWork[]): Tally {
  const seen = { strokes: new Set(), marks: new Set(), entries: new Set(), others: new Set() };
  for (const { document, changes } of work) {
    for (const { part, panel, key } of changes) {
      const isMark = panel !== null && /^(side|front)\./.test(key);
      const kind =
        part === "strokes"
          ? "strokes"
          : document === "critique"
            ? "entries"
            : isMark
              ? "marks"
              : "others";
      if (!key.startsWith("redraw.")) seen[kind].add(`${part} ${panel} ${key}`);
    }
  }
  const { strokes, marks, entries, others } = seen;
  return {
    ...{ strokes: strokes.size, marks: marks.size, entries: entries.size, others: others.size },
  };
}

/** What lies in the drawer of a sheet that does not open, on a strip of its own. */
export function sheetOf(title: string, work: readonly KeptWork[]): HandedSheet {
  const { head } = layOut({ ...defaultBrief, title }, freshPanelId);
  return sheetWith({ head, panels: [], onPurpose: [] }, work);
}

/** A sheet with work on it that it could not take. */
export function sheetWith(sheet: HandedSheet, work: readonly KeptWork[]): HandedSheet {
  const of = (name: DocumentName) =>
    work.filter(({ document }) => document === name).flatMap(({ changes }) => changes);
  return handOverChanges(sheet, { drawing: of("drawing"), critique: of("critique") });
}
