import { EnterRequest } from "../../shared/api";
import { deviceCookie, newDevice, readDevice } from "../access/device-cookie";
import { isOverTls } from "../access/origin";
import { sha256 } from "../access/secret";
import { notFound } from "./answer";
import type { Call } from "./doors";
import { parse } from "./parse";
import { readJson } from "./read-json";

/** POST /api/enter: a link's secret for the cookie. A wrong one and a revoked one are alike: 404. */
export async function enterSheet({ request, response, store, hub, clock, address }: Call) {
  const { sheet, secret } = parse(EnterRequest, await readJson(request));
  const device = readDevice(request) ?? newDevice();
  const hash = sha256(device);
  const secretSha256 = sha256(secret);
  const grant = await store.enter({ sheet, secretSha256, device: hash, at: clock.now() });
  if (grant === null) throw notFound();
  // It may hold a stronger link now than the one its open pages came by.
  hub.reviewAccess(sheet, Buffer.from(hash).toString("hex"));
  response.writeHead(204, {
    "set-cookie": deviceCookie(device, isOverTls(request, address)),
    "cache-control": "no-store",
  });
  response.end();
}
