import { type CreateSheetRequest, readCreateSheet } from "../../shared/api";
import type { SheetCreated } from "../../shared/api-answers";
import { ROLES, type Role } from "../../shared/role";
import { doerOf } from "../access/access";
import { newLinkId, newSecret, newSheetId, sha256 } from "../access/secret";
import { ApiRefusal, holdToPace, sendJson } from "./answer";
import type { Call, MakeSheet } from "./doors";
import { parseWith } from "./parse";
import { readJson } from "./read-json";

/** What the links that a sheet is born with are called in its list, so that each can be told apart. */
const FIRST_LABEL = "made with the sheet";

/** POST /api/sheets: a new sheet, from a brief, an example or a sheet file. Anyone may. */
export async function createSheet(call: Call) {
  const { request, response, store, clock, makeSheet, limits, from } = call;
  const wish = parseWith(readCreateSheet, await readJson(request));
  holdToPace(limits.takeSheet(from), response, "new sheets");
  const documents = await make(makeSheet, wish);
  const sheet = newSheetId();
  const links = ROLES.map((role) => ({ role, link: newLinkId(), secret: newSecret() }));
  await store.createSheet({
    sheet,
    at: clock.now(),
    by: doerOf(request),
    documents,
    links: links.map(({ role, link, secret }) => ({
      ...{ link, role, label: FIRST_LABEL },
      secretSha256: sha256(secret),
    })),
  });
  const secrets = Object.fromEntries(links.map(({ role, secret }) => [role, secret]));
  const answer: SheetCreated = { sheet, links: secrets as Record<Role, string> };
  sendJson(response, 201, answer);
}

/** A file's own complaint is passed on in its own words. */
async function make(makeSheet: MakeSheet, wish: CreateSheetRequest) {
  try {
    return await makeSheet(wish);
  } catch (error) {
    if (!(error instanceof Error) || !("code" in error)) throw error;
    throw new ApiRefusal(422, String(error.code), error.message);
  }
}
