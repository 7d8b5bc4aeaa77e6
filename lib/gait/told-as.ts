import type { Remark } from "./finding";

/** What a remark is known by from one review to the next. */
export function toldAs({ check, side, subject, panels, title }: Remark): string {
  return [check, side, subject, panels.at(-1), title].join(" ");
}
