import type { SheetCreated } from "../../shared/api-answers";
import { askHub } from "../_room/ask-hub";

/**
 * Has the hub create a sheet and takes its owner's link at once, so that the page may open it.
 * Answers with the sheet's address, or with what to tell the person.
 */
export async function createSheet(
  request: unknown,
): Promise<{ readonly address: string } | { readonly problem: string | null }> {
  const created = await askHub<SheetCreated>("POST", "/api/sheets", request);
  if (created.kind === "unreachable") return { problem: null };
  if (created.kind === "refused") return { problem: created.message };
  const { sheet, links } = created.value;
  const entered = await askHub<null>("POST", "/api/enter", { sheet, secret: links.owner });
  if (entered.kind === "answer") return { address: `/sheet/${sheet}` };
  // The sheet is there: its link opens it even though this try at the door failed.
  return { address: `/sheet/${sheet}#${links.owner}` };
}
