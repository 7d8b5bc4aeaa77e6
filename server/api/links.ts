import { LinkChangeRequest, NewLinkRequest } from "../../shared/api";
import type { AuditListed, LinkCreated, LinksListed } from "../../shared/api-answers";
import type { SheetId } from "../../shared/sheet-id";
import { doerOf, grantFor } from "../access/access";
import { newLinkId, newSecret, sha256 } from "../access/secret";
import { StoreError } from "../store/store-error";
import { ApiRefusal, notFound, sendJson } from "./answer";
import type { Call } from "./doors";
import { parse } from "./parse";
import { readJson } from "./read-json";

const AUDIT_ROWS = 500; // what an owner may want to look back on; our own choice, no source

/** POST /api/sheets/:id/links: one more link. Only now is its secret told. */
export async function createLink(call: Call, sheet: SheetId) {
  await requireOwner(call, sheet);
  const { request, response, store, clock } = call;
  const { role, label, expiresAt } = parse(NewLinkRequest, await readJson(request));
  requireFuture(expiresAt, clock.now());
  const link = newLinkId();
  const secret = newSecret();
  await store.addLink({
    ...{ link, sheet, role, label, expiresAt },
    secretSha256: sha256(secret),
    at: clock.now(),
    by: doerOf(request),
  });
  const answer: LinkCreated = { link, role, label, expiresAt, secret };
  sendJson(response, 201, answer);
}

/** GET /api/sheets/:id/links: every link, without its secret. */
export async function listLinks(call: Call, sheet: SheetId) {
  await requireOwner(call, sheet);
  const answer: LinksListed = { links: await call.store.listLinks(sheet) };
  sendJson(call.response, 200, answer);
}

/** PATCH /api/sheets/:id/links/:link: another role, label or end. Who came by it keeps the place. */
export async function changeLink(call: Call, sheet: SheetId, link: string) {
  await requireOwner(call, sheet);
  const { request, response, store, hub, clock } = call;
  const change = parse(LinkChangeRequest, await readJson(request));
  requireFuture(change.expiresAt ?? null, clock.now());
  const outcome = await store
    .changeLink({ sheet, link, ...change, at: clock.now(), by: doerOf(request) })
    .catch(asRefusal);
  if (outcome === "no-such-link") throw notFound();
  hub.reviewAccess(sheet);
  response.writeHead(204, { "cache-control": "no-store" });
  response.end();
}

/** DELETE /api/sheets/:id/links/:link: whoever came by it is sent away at once. */
export async function revokeLink(call: Call, sheet: SheetId, link: string) {
  await requireOwner(call, sheet);
  const { store, hub, clock, request, response } = call;
  const outcome = await store
    .revokeLink({ sheet, link, at: clock.now(), by: doerOf(request) })
    .catch(asRefusal);
  if (outcome === "no-such-link") throw notFound();
  hub.reviewAccess(sheet);
  response.writeHead(204, { "cache-control": "no-store" });
  response.end();
}

/** GET /api/sheets/:id/audit: who changed links, or what is there, the newest first. */
export async function listAudit(call: Call, sheet: SheetId) {
  await requireOwner(call, sheet);
  const answer: AuditListed = { rows: await call.store.listAudit(sheet, AUDIT_ROWS) };
  sendJson(call.response, 200, answer);
}

function requireFuture(expiresAt: number | null, now: number): void {
  if (expiresAt === null || expiresAt > now) return;
  throw new ApiRefusal(422, "bad-request", "expiresAt needs a time that is still to come");
}

function asRefusal(error: unknown): never {
  if (error instanceof StoreError && error.code === "last-owner") {
    throw new ApiRefusal(409, error.code, error.message);
  }
  throw error;
}

async function requireOwner(call: Call, sheet: SheetId): Promise<void> {
  const grant = await grantFor(call, sheet);
  if (grant === null) throw notFound();
  if (grant.role !== "owner") {
    throw new ApiRefusal(
      403,
      "not-owner",
      "only an owner of the sheet may see and change its links",
    );
  }
}
