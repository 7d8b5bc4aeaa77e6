import { RedrawSign } from "../_fixes";
import { KeptSign } from "../_purpose";
import type { SignHelp } from "../_remarks";
import { strip } from "../_words";

/** The signs of the features that meet here, for the help page. */
export const HELP_SIGNS: readonly SignHelp[] = [
  { sign: <KeptSign />, means: strip.signs.kept },
  { sign: <RedrawSign />, means: strip.signs.toRedraw },
];
