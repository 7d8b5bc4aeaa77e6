import type { IncomingMessage, ServerResponse } from "node:http";
import { readSheetId, type SheetId } from "../../shared/sheet-id";
import { clientAddress } from "../access/client-address";
import { isOwnOrigin } from "../access/origin";
import { type Log, saidBy } from "../log";
import { StoreError } from "../store/store-error";
import { ApiRefusal, holdToPace, notFound, sendRefusal } from "./answer";
import { createSheet } from "./create-sheet";
import type { Call, DoorDeps } from "./doors";
import { enterSheet } from "./enter";
import { changeLink, createLink, listAudit, listLinks, revokeLink } from "./links";
import { seePicture, storePicture } from "./pictures";
import { seeSheet } from "./sheet";

interface Route {
  readonly method: "GET" | "POST" | "PATCH" | "DELETE";
  readonly path: RegExp;
  readonly door: (call: Call, sheet: SheetId, part: string) => Promise<void>;
}

/** Every door of the API. The first group of a path is a sheet, the second a link or a picture. */
const ROUTES: readonly Route[] = [
  { method: "POST", path: /^\/api\/sheets$/, door: createSheet },
  { method: "POST", path: /^\/api\/enter$/, door: enterSheet },
  { method: "GET", path: /^\/api\/sheets\/([^/]+)$/, door: seeSheet },
  { method: "POST", path: /^\/api\/sheets\/([^/]+)\/links$/, door: createLink },
  { method: "GET", path: /^\/api\/sheets\/([^/]+)\/links$/, door: listLinks },
  { method: "PATCH", path: /^\/api\/sheets\/([^/]+)\/links\/([^/]+)$/, door: changeLink },
  { method: "DELETE", path: /^\/api\/sheets\/([^/]+)\/links\/([^/]+)$/, door: revokeLink },
  { method: "GET", path: /^\/api\/sheets\/([^/]+)\/audit$/, door: listAudit },
  { method: "POST", path: /^\/api\/sheets\/([^/]+)\/pictures$/, door: storePicture },
  { method: "GET", path: /^\/api\/sheets\/([^/]+)\/pictures\/([^/]+)$/, door: seePicture },
];

const NO_SHEET = "------------";
const COME_BACK_S = 2;

/** Answers everything under /api. Whatever goes wrong is answered too, and never in a page's words. */
export function createApi(deps: DoorDeps) {
  return async (request: IncomingMessage, response: ServerResponse, path: string) => {
    try {
      const from = clientAddress(request, deps.address);
      holdToPace(deps.limits.takeRequest(from), response, "requests");
      await dispatch({ ...deps, request, response, from }, path);
    } catch (error) {
      const refusal = error instanceof ApiRefusal ? error : unforeseen(error, deps.log);
      if (refusal.status === 503) response.setHeader("retry-after", COME_BACK_S);
      if (!request.complete) response.setHeader("connection", "close"); // the rest is not read
      sendRefusal(response, refusal);
    }
  };
}

async function dispatch(call: Call, path: string): Promise<void> {
  const { method } = call.request;
  const onPath = ROUTES.filter((route) => route.path.test(path));
  const route = onPath.find((candidate) => candidate.method === method);
  if (onPath.length === 0) throw notFound();
  if (route === undefined) {
    const allowed = onPath.map((candidate) => candidate.method).join(", ");
    throw new ApiRefusal(405, "method", `this door takes ${allowed}`);
  }
  if (method !== "GET" && !isOwnOrigin(call.request, call.address)) {
    throw new ApiRefusal(403, "foreign-origin", "the request comes from another site's page");
  }
  const [, sheetText, part = ""] = route.path.exec(path) ?? [];
  await route.door(call, sheetIn(sheetText), part);
}

/** What is no id names no sheet. A path without one has a door that does not ask for it. */
function sheetIn(text = NO_SHEET): SheetId {
  const sheet = readSheetId(text);
  if (sheet === null) throw notFound();
  return sheet;
}

function unforeseen(error: unknown, log: Log): ApiRefusal {
  log.offence("api-failed", saidBy(error));
  if (error instanceof StoreError && (error.code === "busy" || error.code === "full")) {
    return new ApiRefusal(503, "storage", "the disk could not take this now; nothing was changed");
  }
  return new ApiRefusal(500, "failed", "the server could not do this; nothing was changed");
}
