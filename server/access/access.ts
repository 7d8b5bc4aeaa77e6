import type { IncomingMessage } from "node:http";
import type { SheetId } from "../../shared/sheet-id";
import type { Grant, Store } from "../store/store";
import { readDevice } from "./device-cookie";
import { sha256 } from "./secret";

/** What the request's device may do on a sheet; null for strangers, and for sheets there are none of. */
export async function grantFor(
  store: Store,
  request: IncomingMessage,
  sheet: SheetId,
): Promise<Grant | null> {
  const device = readDevice(request);
  return device === null ? null : store.grantOf(sha256(device), sheet);
}
