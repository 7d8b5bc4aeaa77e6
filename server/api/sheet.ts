import type { SheetSeen } from "../../shared/api-answers";
import type { SheetId } from "../../shared/sheet-id";
import { grantFor } from "../access/access";
import { notFound, sendJson } from "./answer";
import type { Call } from "./doors";

/** GET /api/sheets/:id: what this browser is on the sheet. */
export async function seeSheet(call: Call, sheet: SheetId) {
  const grant = await grantFor(call, sheet);
  if (grant === null) throw notFound();
  const answer: SheetSeen = { sheet, role: grant.role };
  sendJson(call.response, 200, answer);
}
