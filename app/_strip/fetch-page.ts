import type { ComponentType } from "react";

/** What lies open over the board, if anything. */
export type Page = "print" | "invite" | "help" | "sheet";

export type PageView = ComponentType<{ readonly onClose: () => void }>;
type Pages = Readonly<Record<Page, PageView>>;

let atHand: Pages | null = null;

/** A page that was fetched before; null where none was. */
export function pageAtHand(page: Page): PageView | null {
  return atHand === null ? null : atHand[page];
}

/**
 * The pages, all of them at once: each by itself would cost the board more than it saves, since what pages share
 * with it cannot be folded into it then.
 *
 * Errors:  rejects where the line is down and they were not fetched before
 */
export async function fetchPages(): Promise<Pages> {
  if (atHand !== null) return atHand;
  const { PrintDialog, InviteDialog, HelpPage, SheetDialog } = await import("./pages");
  atHand = { print: PrintDialog, invite: InviteDialog, help: HelpPage, sheet: SheetDialog };
  return atHand;
}
