import type { IncomingMessage } from "node:http";
import type { Duplex } from "node:stream";
import type { WebSocketServer } from "ws";
import { type DocumentName, isDocumentName } from "../shared/document-name";
import { readSheetId, type SheetId } from "../shared/sheet-id";
import type { AddressLimits } from "./access/address-limits";
import { clientAddress, type ProxyTrust } from "./access/client-address";
import { readDevice } from "./access/device-cookie";
import { type Address, isOwnOrigin } from "./access/origin";
import { sha256 } from "./access/secret";
import type { Clock } from "./clock";
import type { Visitor } from "./connection";
import type { Hub } from "./hub";
import type { Store } from "./store/store";

const MAX_CLIENT = 2 ** 32 - 1; // client ids are 32 bits
const COME_BACK = "Retry-After: 2\r\n";

interface Wanted {
  readonly sheet: SheetId;
  readonly document: DocumentName;
  readonly client: number | null;
  readonly generation: number | null;
}

export interface UpgradeDeps {
  readonly store: Store;
  readonly hub: Hub;
  readonly clock: Clock;
  readonly address: Address & ProxyTrust;
  readonly limits: AddressLimits;
  readonly sockets: WebSocketServer;
}

/**
 * Lets a page's socket in, or answers with a plain status. A stranger, a revoked link and a sheet
 * that there is not are alike: 404.
 */
export function createUpgrade({ store, hub, clock, address, limits, sockets }: UpgradeDeps) {
  return async (request: IncomingMessage, socket: Duplex, head: Buffer): Promise<void> => {
    const refuse = (status: string, header = "") => {
      socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n${header}\r\n`);
    };
    socket.on("error", () => socket.destroy());
    if (hub.isDraining()) return refuse("503 Service Unavailable", COME_BACK);
    if (!isOwnOrigin(request, address)) return refuse("403 Forbidden");
    const from = clientAddress(request, address);
    const leave = limits.takeRequest(from) > 0 ? null : limits.takeSocket(from);
    if (leave === null) return refuse("429 Too Many Requests", COME_BACK);
    socket.once("close", leave);
    const wanted = readWanted(request.url ?? "");
    if (wanted === "bad-number") return refuse("400 Bad Request");
    const device = readDevice(request);
    if (wanted === null || device === null) return refuse("404 Not Found");
    const hash = sha256(device);
    const mark = hub.accessMark();
    const grant = await store.grantOf(hash, wanted.sheet, clock.now()).catch(() => undefined);
    if (grant === undefined) return refuse("503 Service Unavailable", COME_BACK);
    if (grant === null) return refuse("404 Not Found");
    const visitor: Visitor = { ...wanted, grant, device: Buffer.from(hash).toString("hex") };
    sockets.handleUpgrade(request, socket, head, (opened) => {
      hub.connect({ socket: opened, line: socket }, visitor, mark);
    });
  };
}

function readWanted(address: string): Wanted | "bad-number" | null {
  if (!URL.canParse(address, "http://hub")) return null;
  const { pathname, searchParams } = new URL(address, "http://hub");
  const [, sync, sheetText, document, ...rest] = pathname.split("/");
  const sheet = readSheetId(sheetText);
  if (sync !== "sync" || sheet === null || !isDocumentName(document) || rest.length > 0)
    return null;
  const client = readNumber(searchParams.get("client"), MAX_CLIENT);
  const generation = readNumber(searchParams.get("generation"), Number.MAX_SAFE_INTEGER);
  if (client === "bad-number" || generation === "bad-number") return "bad-number";
  return { sheet, document, client, generation };
}

function readNumber(said: string | null, most: number): number | "bad-number" | null {
  if (said === null) return null;
  const number = Number(said);
  return /^\d{1,16}$/.test(said) && number <= most ? number : "bad-number";
}
