import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { newSheet, prepareDocument } from "../../server/new-sheet";
import { type HubOptions, type RunningHub, startHub } from "../../server/start-hub";
import type { LinkCreated, SheetCreated } from "../../shared/api-answers";
import type { Role } from "../../shared/role";

/** A data folder of its own, gone again afterwards. */
export function temporaryFolder(): { readonly path: string; remove(): void } {
  const path = mkdtempSync(join(tmpdir(), "heelstrip-"));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Tests come from one address, and there are many of them. */
const BOUNDLESS = { sockets: 1e6, requestsPerMinute: 1e6, sheetsPerHour: 1e6 };

/** A hub with real sockets and a real database, without pages. */
export function startTestHub(
  dataDir: string,
  more: Partial<Omit<HubOptions, "dataDir">> = {},
): Promise<RunningHub> {
  return startHub({
    ...{ dataDir, port: 0, makeSheet: newSheet, prepareDocument },
    ...{ allowance: BOUNDLESS, graceMs: 0, ...more },
  });
}

export interface Asked {
  readonly status: number;
  readonly body: unknown;
  readonly cookie: string | null;
}

export interface Ask {
  readonly method?: string;
  readonly body?: unknown;
  readonly cookie?: string | undefined;
  readonly origin?: string;
}

/** One request, as a page or a script makes it. */
export async function ask(url: string, path: string, how: Ask = {}): Promise<Asked> {
  const { method = "GET", body, cookie, origin } = how;
  const headers = new Headers();
  if (cookie !== undefined) headers.set("cookie", cookie);
  if (origin !== undefined) headers.set("origin", origin);
  const raw = typeof body === "string" || body instanceof Uint8Array;
  const sent = raw ? (body as string | Uint8Array<ArrayBuffer>) : JSON.stringify(body);
  const response = await fetch(`${url}${path}`, {
    method,
    headers,
    ...(body === undefined ? {} : { body: sent }),
  });
  const said = await response.text();
  return {
    status: response.status,
    body: said === "" ? null : JSON.parse(said),
    cookie: response.headers.get("set-cookie")?.split(";")[0] ?? null,
  };
}

export async function createSheet(url: string, body: unknown = {}): Promise<SheetCreated> {
  const { status, body: answer } = await ask(url, "/api/sheets", { method: "POST", body });
  if (status !== 201) throw new Error(`status ${status}: ${JSON.stringify(answer)}`);
  return answer as SheetCreated;
}

/** The cookie of a device that came in by a link. */
export async function enter(url: string, sheet: string, secret: string): Promise<string> {
  const { status, cookie } = await ask(url, "/api/enter", {
    method: "POST",
    body: { sheet, secret },
  });
  if (cookie === null) throw new Error(`no cookie, status ${status}`);
  return cookie;
}

/** A sheet and a device for each role on it. */
export async function sheetWithPeople(url: string) {
  const { sheet, links } = await createSheet(url);
  const cookies: Record<Role, string> = {
    owner: await enter(url, sheet, links.owner),
    draw: await enter(url, sheet, links.draw),
    critique: await enter(url, sheet, links.critique),
    view: await enter(url, sheet, links.view),
  };
  return { sheet, links, cookies };
}

/** Someone whose link was taken back after they had come in. */
export async function revokedDevice(url: string, sheet: string, owner: string): Promise<string> {
  const path = `/api/sheets/${sheet}/links`;
  const made = await ask(url, path, { method: "POST", cookie: owner, body: { role: "owner" } });
  const { link, secret } = made.body as LinkCreated;
  const cookie = await enter(url, sheet, secret);
  await ask(url, `${path}/${link}`, { method: "DELETE", cookie: owner });
  return cookie;
}
