import type { IncomingMessage } from "node:http";
import type { Duplex } from "node:stream";
import type { WebSocketServer } from "ws";
import { type DocumentName, isDocumentName } from "../shared/document-name";
import { readSheetId, type SheetId } from "../shared/sheet-id";
import { readDevice } from "./access/device-cookie";
import { type Address, isOwnOrigin } from "./access/origin";
import { sha256 } from "./access/secret";
import type { Clock } from "./clock";
import type { Visitor } from "./connection";
import type { Hub } from "./hub";
import type { Store } from "./store/store";

const MAX_CLIENT = 2 ** 32 - 1; // client ids are 32 bits

interface Wanted {
  readonly sheet: SheetId;
  readonly document: DocumentName;
  readonly client: number | null;
}

export interface UpgradeDeps {
  readonly store: Store;
  readonly hub: Hub;
  readonly address: Address;
  readonly sockets: WebSocketServer;
  readonly clock: Clock;
}

/**
 * Lets a page's socket in, or answers with a plain status. A stranger, a revoked link and a sheet
 * that there is not are alike: 404.
 */
export function createUpgrade({ store, hub, address, sockets, clock }: UpgradeDeps) {
  return async (request: IncomingMessage, socket: Duplex, head: Buffer): Promise<void> => {
    const refuse = (status: string, header = "") => {
      socket.end(`HTTP/1.1 ${status}\r\nConnection: close\r\nContent-Length: 0\r\n${header}\r\n`);
    };
    socket.on("error", () => socket.destroy());
    if (hub.isDraining()) return refuse("503 Service Unavailable", "Retry-After: 2\r\n");
    if (!isOwnOrigin(request, address)) return refuse("403 Forbidden");
    const wanted = readWanted(request.url ?? "");
    if (wanted === "bad-client") return refuse("400 Bad Request");
    const device = readDevice(request);
    if (wanted === null || device === null) return refuse("404 Not Found");
    const hash = sha256(device);
    const now = clock.now();
    const grant = await store.grantOf(hash, wanted.sheet, now).catch(() => undefined);
    if (grant === undefined) return refuse("503 Service Unavailable", "Retry-After: 2\r\n");
    if (grant === null) return refuse("404 Not Found");
    const visitor: Visitor = { ...wanted, ...grant, device: Buffer.from(hash).toString("hex") };
    sockets.handleUpgrade(request, socket, head, (opened) => hub.connect(opened, visitor));
  };
}

function readWanted(address: string): Wanted | "bad-client" | null {
  const { pathname, searchParams } = new URL(address, "http://hub");
  const [, sync, sheetText, document, ...rest] = pathname.split("/");
  const sheet = readSheetId(sheetText);
  if (sync !== "sync" || sheet === null || !isDocumentName(document) || rest.length > 0)
    return null;
  const said = searchParams.get("client");
  if (said === null) return { sheet, document, client: null };
  const client = Number(said);
  if (!/^\d{1,10}$/.test(said) || client > MAX_CLIENT) return "bad-client";
  return { sheet, document, client };
}
