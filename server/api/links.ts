import { NewLinkRequest } from "../../shared/api";
import type { LinkCreated, LinksListed } from "../../shared/api-answers";
import type { SheetId } from "../../shared/sheet-id";
import { grantFor } from "../access/access";
import { newLinkId, newSecret, sha256 } from "../access/secret";
import { StoreError } from "../store/store-error";
import { ApiRefusal, notFound, sendJson } from "./answer";
import type { Call } from "./doors";
import { parse } from "./parse";
import { readJson } from "./read-json";

/** POST /api/sheets/:id/links: one more link. Only now is its secret told. */
export async function createLink(call: Call, sheet: SheetId) {
  await requireOwner(call, sheet);
  const { request, response, store, clock } = call;
  const { role, label } = parse(NewLinkRequest, await readJson(request));
  const link = newLinkId();
  const secret = newSecret();
  await store.addLink({
    ...{ link, sheet, role, label },
    secretSha256: sha256(secret),
    at: clock.now(),
  });
  const answer: LinkCreated = { link, role, label, secret };
  sendJson(response, 201, answer);
}

/** GET /api/sheets/:id/links: every link, without its secret. */
export async function listLinks(call: Call, sheet: SheetId) {
  await requireOwner(call, sheet);
  const answer: LinksListed = { links: await call.store.listLinks(sheet) };
  sendJson(call.response, 200, answer);
}

/** DELETE /api/sheets/:id/links/:link: whoever came by it is sent away at once. */
export async function revokeLink(call: Call, sheet: SheetId, link: string) {
  await requireOwner(call, sheet);
  const { store, hub, clock, response } = call;
  const outcome = await store.revokeLink(sheet, link, clock.now()).catch(asRefusal);
  if (outcome === "no-such-link") throw notFound();
  hub.revoke(link);
  response.writeHead(204, { "cache-control": "no-store" });
  response.end();
}

function asRefusal(error: unknown): never {
  if (error instanceof StoreError && error.code === "last-owner") {
    throw new ApiRefusal(409, error.code, error.message);
  }
  throw error;
}

async function requireOwner({ store, request }: Call, sheet: SheetId): Promise<void> {
  const grant = await grantFor(store, request, sheet);
  if (grant === null) throw notFound();
  if (grant.role !== "owner") {
    throw new ApiRefusal(
      403,
      "not-owner",
      "only an owner of the sheet may see and change its links",
    );
  }
}
