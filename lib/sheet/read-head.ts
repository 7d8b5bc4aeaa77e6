import type * as Y from "yjs";
import { advanceOf } from "./advance";
import { defaultBrief } from "./brief";
import type { Field } from "./field";
import { HEAD_FIELDS } from "./fields";
import { headOf } from "./schema";
import type { SheetHead } from "./sheet";

/** What stands in for a head that is not there yet, or a field of it that is not what it should be. */
const BLANK: SheetHead = {
  title: defaultBrief.title,
  shot: defaultBrief.shot,
  kind: defaultBrief.kind,
  framesPerSecond: defaultBrief.framesPerSecond,
  exposure: defaultBrief.exposure,
  yardstick: "trade",
  travel: defaultBrief.travel,
  framesPerStep: defaultBrief.framesPerStep,
  stepLength: defaultBrief.stepLength,
  advance: advanceOf(defaultBrief.stepLength, defaultBrief.framesPerStep),
  build: defaultBrief.build,
  loop: { from: 1, to: 25 },
  credit: "",
};

/** What every head has. */
type Always = Omit<SheetHead, "firstFrame" | "ground" | "load">;
const ALWAYS: { readonly [K in keyof Always]: Field<SheetHead[K]> } = HEAD_FIELDS;

/**
 * The head as a plain value. A field that is missing or makes no sense is taken from a plain brief.
 * @param skipped told the name of each field that is there and makes no sense
 */
export function readHead(doc: Y.Doc, skipped: (name: string) => void): SheetHead {
  const map = headOf(doc);
  const read = <K extends keyof Always>(name: K): SheetHead[K] => {
    const field: Field<SheetHead[K]> = ALWAYS[name];
    const value = map.get(name);
    if (field.fits(value)) return value;
    if (value !== undefined) skipped(name);
    return BLANK[name];
  };
  return {
    title: read("title"),
    shot: read("shot"),
    kind: read("kind"),
    framesPerSecond: read("framesPerSecond"),
    exposure: read("exposure"),
    yardstick: read("yardstick"),
    travel: read("travel"),
    ...groundOf(map.get("ground"), skipped),
    framesPerStep: read("framesPerStep"),
    stepLength: read("stepLength"),
    advance: read("advance"),
    build: read("build"),
    ...loadOf(map.get("load"), skipped),
    loop: read("loop"),
    ...shotNumbers(map.get("firstFrame"), skipped),
    credit: read("credit"),
  };
}

/** Sheets from before anything could be carried, and those where nothing is, have none. */
function loadOf(value: unknown, skipped: (name: string) => void): Pick<SheetHead, "load"> {
  if (value === undefined || value === 0) return {};
  if (HEAD_FIELDS.load.fits(value)) return { load: value };
  skipped("load");
  return {};
}

/** Sheets from before the shot had numbers of its own, and those that count from 1, carry none. */
function shotNumbers(
  value: unknown,
  skipped: (name: string) => void,
): Pick<SheetHead, "firstFrame"> {
  if (value === undefined || value === 1) return {};
  if (HEAD_FIELDS.firstFrame.fits(value)) return { firstFrame: value };
  skipped("firstFrame");
  return {};
}

/** Sheets from before places could be solved, and those whose places follow the travel, carry none. */
function groundOf(value: unknown, skipped: (name: string) => void): Pick<SheetHead, "ground"> {
  if (value === undefined || value === "by-travel") return {};
  if (HEAD_FIELDS.ground.fits(value)) return { ground: value };
  skipped("ground");
  return {};
}
