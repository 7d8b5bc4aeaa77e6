import type { Panel } from "../sheet";
import type { Note } from "./note";
import { fillColumns, layOutNotes, notesHeight } from "./notes-layout";
import { type PageFrame, RULE_GAP, SECTION_GAP, TITLE_GAP } from "./page-frame";
import type { PageLayout } from "./page-layout";
import { layOutStrip, stripHeight } from "./strip-layout";
import { choosePlans, emptyPlan, type PlanChoice, type StripPlan } from "./strip-plan";

/** Notes that must run on are begun only where at least this much height is left. Units: page units. */
const LEAST_NOTES = 130;

type Draft = Omit<PageLayout, "number" | "count">;
type Pages = StripPlan["pages"];

/**
 * Lays everything out on pages of one height: of all ways to break the strip, the one with the fewest
 * pages whose drawings are large enough; among those, the best one. Notes stand on the page of the panel
 * they speak of where they can, and run on to later pages where not.
 *
 * Units:   page units
 */
export function layOutPaper(frame: PageFrame, height: number): readonly PageLayout[] {
  const { format, inner, windows, needs, wish } = frame;
  const plans = choosePlans(
    { panels: wish.sheet.panels, windows, width: inner.width - format.gutter, needs },
    (closed) => (pages, page) => roomFor(frame, pages, page, closed, height),
  );
  const empty = { plan: emptyPlan(), closed: false };
  const prints = (plans.length > 0 ? plans : [empty]).map((plan) => pagesFor(frame, plan, height));
  const fewest = Math.min(...prints.map(({ length }) => length));
  const best = prints.find(({ length }) => length === fewest) ?? [];
  return best.map((draft, index) => ({ ...draft, number: index + 1, count: best.length }));
}

/** The height that the rows of a page may take: what its notes and the legend leave. */
function roomFor(
  frame: PageFrame,
  pages: Pages,
  page: number,
  closed: boolean,
  height: number,
): number {
  const last = page === pages.length - 1;
  const own = notesOfPage(frame.notes, pages, page);
  const notes = closed && own.length > 0 ? SECTION_GAP + notesHeight(own, frame.columns) : 0;
  const legend = last ? legendBlock(frame) : 0;
  return footOf(frame, height) - stripTop(frame, page) - Math.ceil(notes) - legend;
}

/** The notes that speak of a page's panels; on the last page with panels also those of the walk. */
function notesOfPage(notes: readonly Note[], pages: Pages, page: number): readonly Note[] {
  const panels = new Set((pages[page] ?? []).flat().map(({ id }: Panel) => id));
  const last = page >= pages.length - 1;
  return notes.filter(({ panel }) => (panel === null ? last : panels.has(panel)));
}

function footOf({ format }: PageFrame, height: number): number {
  return height - format.margin - format.foot;
}

/** Where what stands under the title begins. */
function stripTop({ title, slimTitle }: PageFrame, page: number): number {
  return (page === 0 ? title : slimTitle).bottom + TITLE_GAP;
}

/** What the legend takes at the foot of a page, with its rule and the room over it. */
function legendBlock({ legend, legendHeight }: PageFrame): number {
  return legend.size === 0 ? 0 : SECTION_GAP + RULE_GAP + legendHeight;
}

function pagesFor(frame: PageFrame, choice: PlanChoice, height: number): readonly Draft[] {
  const { pages } = choice.plan;
  const stripPages = Math.max(1, pages.length);
  const spare = spareOf(frame, choice, height);
  const drafts: Draft[] = [];
  let rest: readonly Note[] = [];
  for (let page = 0; page < stripPages || rest.length > 0; page += 1) {
    const own = page < stripPages ? notesOfPage(frame.notes, pages, page) : [];
    const draft =
      page < stripPages
        ? stripPage(frame, choice, page, spare, height)
        : blank(frame, page, height);
    const filled = withNotes(frame, draft, [...rest, ...own], height);
    drafts.push(filled.draft);
    rest = filled.rest;
  }
  return drafts;
}

/** The height that every row may take beyond its least: the same for all, so that charts compare. */
function spareOf(frame: PageFrame, { plan, closed }: PlanChoice, height: number): number {
  const { windows, needs } = frame;
  const spares = plan.pages.map((rows, page) => {
    const room = roomFor(frame, plan.pages, page, closed, height);
    return (room - stripHeight({ plan, windows, page, needs })) / rows.length;
  });
  return Math.max(0, Math.min(...spares));
}

function stripPage(
  frame: PageFrame,
  { plan }: PlanChoice,
  page: number,
  spare: number,
  height: number,
): Draft {
  const { format, inner, windows, needs, legend, legendHeight } = frame;
  const x = inner.left + format.gutter;
  const area = { x, y: stripTop(frame, page), width: inner.width - format.gutter };
  const strip = layOutStrip({ plan, windows, page, area, needs, spare });
  const last = page >= plan.pages.length - 1;
  const place = { ...inner, y: footOf(frame, height) - legendHeight };
  return {
    ...blank(frame, page, height),
    strip,
    legend: last && legend.size > 0 ? place : null,
  };
}

function blank(frame: PageFrame, page: number, height: number): Draft {
  const band = page === 0 ? frame.title : frame.slimTitle;
  const top = stripTop(frame, page);
  return {
    format: frame.format,
    width: frame.format.width,
    height,
    title: band.runs,
    titleRule: band.bottom,
    strip: { rows: [], windows: frame.windows, scale: 1, bottom: top },
    keyed: frame.keyed,
    kept: frame.kept,
    notes: { runs: [], signs: [], bottom: top },
    legend: null,
  };
}

/** A page with as many of the notes as it holds, and those that must run on. */
function withNotes(
  frame: PageFrame,
  draft: Draft,
  notes: readonly Note[],
  height: number,
): { readonly draft: Draft; readonly rest: readonly Note[] } {
  const { inner, columns } = frame;
  const bare = draft.strip.rows.length === 0;
  const top = draft.strip.bottom + (bare ? 0 : SECTION_GAP);
  const foot = footOf(frame, height) - (draft.legend === null ? 0 : legendBlock(frame));
  const area = { left: inner.left, top, columns };
  if (notesHeight(notes, columns) <= foot - top) {
    return { draft: { ...draft, notes: layOutNotes(notes, area) }, rest: [] };
  }
  if (!bare && foot - top < LEAST_NOTES) return { draft, rest: notes };
  const { layout, rest } = fillColumns(notes, area, foot - top);
  return { draft: { ...draft, notes: layout }, rest };
}
