import type { SheetSeen } from "../../shared/api-answers";
import type { SheetId } from "../../shared/sheet-id";
import { grantFor } from "../access/access";
import { notFound, sendJson } from "./answer";
import type { Call } from "./doors";

/** GET /api/sheets/:id: what this browser is on the sheet. */
export async function seeSheet({ request, response, store }: Call, sheet: SheetId) {
  const grant = await grantFor(store, request, sheet);
  if (grant === null) throw notFound();
  const answer: SheetSeen = { sheet, role: grant.role };
  sendJson(response, 200, answer);
}
