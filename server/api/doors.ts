import type { IncomingMessage, ServerResponse } from "node:http";
import type { CreateSheetRequest } from "../../shared/api";
import type { DocumentName } from "../../shared/document-name";
import type { AddressLimits } from "../access/address-limits";
import type { ProxyTrust } from "../access/client-address";
import type { Address } from "../access/origin";
import type { Clock } from "../clock";
import type { Hub } from "../hub";
import type { Log } from "../log";
import type { Store } from "../store/store";

/** Makes the first bytes of both documents. Errors: an Error with a `code` for a file that is no sheet. */
export type MakeSheet = (request: CreateSheetRequest) => Promise<{
  readonly [Name in DocumentName]: Uint8Array;
}>;

/** What every door of the API works with. */
export interface DoorDeps {
  readonly store: Store;
  readonly hub: Hub;
  readonly clock: Clock;
  readonly log: Log;
  readonly address: Address & ProxyTrust;
  readonly limits: AddressLimits;
  readonly makeSheet: MakeSheet;
}

/** One request at a door. Errors: ApiRefusal. */
export interface Call extends DoorDeps {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  /** The address it counts for. */
  readonly from: string;
}
