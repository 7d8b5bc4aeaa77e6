import { layOutNotes } from "./notes-layout";
import { planOnePage } from "./one-page-plan";
import { MIN_PAGE_HEIGHT } from "./page-format";
import { type PageFrame, RULE_GAP, SECTION_GAP, TITLE_GAP } from "./page-frame";
import type { PageLayout } from "./page-layout";
import { layOutStrip } from "./strip-layout";
import { emptyPlan, type StripPlan } from "./strip-plan";

/** Lays everything out on one page that is as high as it must be. Units: page units. */
export function layOutOnePage(frame: PageFrame): PageLayout {
  const { format, inner, windows, wish } = frame;
  const { panels } = wish.sheet;
  const width = inner.width - format.gutter;
  const plan = planOnePage({ panels, windows, width }) ?? emptyPlan();
  const tight = withSpare(frame, plan, 0);
  return withSpare(
    frame,
    plan,
    (tight.height - tight.needed) / Math.max(1, tight.strip.rows.length),
  );
}

function withSpare(frame: PageFrame, plan: StripPlan, spare: number) {
  const { format, inner, windows, needs, title, notes, columns, legendHeight } = frame;
  const area = {
    x: inner.left + format.gutter,
    y: title.bottom + TITLE_GAP,
    width: inner.width - format.gutter,
  };
  const strip = layOutStrip({ plan, windows, page: 0, area, needs, spare });
  const top = strip.bottom + SECTION_GAP;
  const placed = layOutNotes(notes, { left: inner.left, top, columns });
  const beneath = SECTION_GAP + RULE_GAP + legendHeight + format.margin;
  const needed = Math.ceil(placed.bottom + beneath);
  const height = Math.max(MIN_PAGE_HEIGHT, needed);
  return {
    format,
    width: format.width,
    height,
    needed,
    number: 1,
    count: 1,
    title: title.runs,
    titleRule: title.bottom,
    strip,
    keyed: frame.keyed,
    kept: frame.kept,
    notes: placed,
    legend: frame.legend.size === 0 ? null : { ...inner, y: height - format.margin - legendHeight },
  } satisfies PageLayout & { needed: number };
}
