import type { IncomingMessage } from "node:http";
import type { SheetId } from "../../shared/sheet-id";
import type { Clock } from "../clock";
import type { Doer, Grant } from "../store/access-records";
import type { Store } from "../store/store";
import { readDevice } from "./device-cookie";
import { sha256 } from "./secret";

/** What the request's device may do on a sheet; null for strangers, and for sheets there are none of. */
export async function grantFor(
  { store, request, clock }: Asking,
  sheet: SheetId,
): Promise<Grant | null> {
  const device = readDevice(request);
  return device === null ? null : store.grantOf(sha256(device), sheet, clock.now());
}

export interface Asking {
  readonly store: Store;
  readonly request: IncomingMessage;
  readonly clock: Clock;
}

/** Who a change is written down to. */
export function doerOf(request: IncomingMessage): Doer {
  const device = readDevice(request);
  return device === null ? null : sha256(device);
}
