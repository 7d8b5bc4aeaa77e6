/** A sheet of paper, upright. Units: mm. */
export interface PaperSize {
  readonly width: number;
  readonly height: number;
}

/**
 * The papers that a sheet is printed on.
 *
 * Units:   mm, upright
 * Source:  ISO 216:2007, A series; ANSI/ASME Y14.1, formats A (8.5 × 11 in) and B (11 × 17 in), an inch
 *          being 25.4 mm
 */
export const PAPERS = {
  a4: { width: 210, height: 297 },
  a3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  tabloid: { width: 279.4, height: 431.8 },
} as const satisfies Readonly<Record<string, PaperSize>>;

export type PaperName = keyof typeof PAPERS;
export const PAPER_NAMES = [
  "a4",
  "a3",
  "letter",
  "tabloid",
] as const satisfies readonly PaperName[];

export type Orientation = "landscape" | "portrait";
