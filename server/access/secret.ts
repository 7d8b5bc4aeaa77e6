import { createHash, randomBytes } from "node:crypto";
import { readSheetId, type SheetId } from "../../shared/sheet-id";

const SECRET_BYTES = 20; // 160 bits: nobody guesses a link
const SHEET_ID_BYTES = 9; // twelve base64url characters
const LINK_ID_BYTES = 9;

/** A link's secret or a device's cookie. It is told once; what is kept is its `sha256`. */
export function newSecret(): string {
  return randomBytes(SECRET_BYTES).toString("base64url");
}

export function newSheetId(): SheetId {
  const id = readSheetId(randomBytes(SHEET_ID_BYTES).toString("base64url"));
  if (id === null) throw new Error("nine bytes are twelve base64url characters");
  return id;
}

export function newLinkId(): string {
  return randomBytes(LINK_ID_BYTES).toString("base64url");
}

export function sha256(text: string): Uint8Array {
  return new Uint8Array(createHash("sha256").update(text).digest());
}
