import { createHash } from "node:crypto";
import type { PictureStored } from "../../shared/api-answers";
import { HUB_LIMITS, PICTURE_LIMITS } from "../../shared/limits";
import { PICTURE_TYPES, type PictureType, readPictureHeader } from "../../shared/picture-header";
import { mayWrite } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";
import { grantFor } from "../access/access";
import { ApiRefusal, notFound, sendJson } from "./answer";
import type { Call } from "./doors";
import { readBody } from "./read-body";

const MIB = 1024 * 1024;

/** What a browser keeps of a picture and for how long: its name is its content, so for good. */
const FOR_GOOD = "private, max-age=31536000, immutable";

/**
 * POST /api/sheets/:id/pictures: a reference picture, its bytes as the body. Who may draw may. What it
 * is, is read from its bytes, not from what the request calls it.
 */
export async function storePicture(call: Call, sheet: SheetId) {
  const { request, response, store, clock } = call;
  const grant = await grantFor(call, sheet);
  if (grant === null) throw notFound();
  if (!mayWrite(grant.role, "drawing")) {
    throw new ApiRefusal(403, "role", "only who may draw may put pictures under the paper");
  }
  const bytes = await readBody(request, PICTURE_LIMITS.bytes);
  const mediaType = typeOf(bytes);
  const picture = createHash("sha256").update(bytes).digest("base64url");
  const outcome = await store.putBlob({
    ...{ sheet, blob: picture, mediaType, bytes, at: clock.now() },
    sheetBytes: HUB_LIMITS.blobBytes,
  });
  if (outcome === "sheet-full") {
    const most = HUB_LIMITS.blobBytes / MIB;
    throw new ApiRefusal(409, "sheet-full", `a sheet has at most ${most} MiB of pictures`);
  }
  const answer: PictureStored = { picture };
  sendJson(response, 201, answer);
}

/** GET /api/sheets/:id/pictures/:picture: to whoever may see the sheet. */
export async function seePicture(call: Call, sheet: SheetId, id: string) {
  const { response, store } = call;
  const grant = await grantFor(call, sheet);
  const blob = grant === null ? null : await store.loadBlob(sheet, id);
  if (blob === null) throw notFound();
  response.writeHead(200, {
    "content-type": blob.mediaType,
    "content-length": blob.bytes.length,
    "cache-control": FOR_GOOD,
    "content-disposition": "inline",
    // Opened by itself it is a picture and nothing else, whatever its bytes may try.
    "content-security-policy": "default-src 'none'; sandbox",
  });
  response.end(blob.bytes);
}

/** Errors: ApiRefusal 415 for what is no picture, 422 for one that is too large to lay under a paper. */
function typeOf(bytes: Uint8Array): PictureType {
  const header = readPictureHeader(bytes);
  if (header === null) {
    const kinds = PICTURE_TYPES.join(", ");
    throw new ApiRefusal(415, "not-a-picture", `a picture needs to be one of ${kinds}`);
  }
  const { type, width, height } = header;
  const most = PICTURE_LIMITS.side;
  if (Math.max(width, height) > most) {
    const got = `${width} by ${height}`;
    throw new ApiRefusal(
      422,
      "too-many-pixels",
      `a picture has at most ${most} a side, got ${got}`,
    );
  }
  return type;
}
