import type { handover } from "../_words";

export type PrintFormat = keyof typeof handover.formats;

interface FileKind {
  readonly extension: ".png" | ".svg";
  /** How wide a picture is, pixels; SVG has the page's own size. */
  readonly width: number | null;
}

export const FORMATS: Readonly<Record<PrintFormat, FileKind>> = {
  "png-1920": { extension: ".png", width: 1920 },
  "png-3840": { extension: ".png", width: 3840 },
  svg: { extension: ".svg", width: null },
};
