import type { IncomingMessage } from "node:http";
import { HUB_LIMITS } from "../../shared/limits";
import { ApiRefusal } from "./answer";

const MIB = 1024 * 1024;

/** How much more than allowed is read and thrown away, so that the sender lives to read the answer. */
const PATIENCE = 4;

/**
 * The body of a request as JSON; an empty one reads as `{}`. Nothing is kept of a body that is too
 * large.
 *
 * Errors:  ApiRefusal 413 "too-large", 400 "not-json"
 */
export async function readJson(request: IncomingMessage): Promise<unknown> {
  const text = await readText(request);
  if (text.trim() === "") return {};
  try {
    return JSON.parse(text);
  } catch {
    throw new ApiRefusal(400, "not-json", "the body of the request needs to be JSON");
  }
}

async function readText(request: IncomingMessage): Promise<string> {
  const limit = HUB_LIMITS.requestBytes;
  let chunks: Buffer[] = [];
  let length = 0;
  // Leaving the loop must not destroy the request: the answer goes over the same socket.
  for await (const chunk of request.iterator({ destroyOnReturn: false })) {
    length += (chunk as Buffer).length;
    if (length <= limit) chunks.push(chunk as Buffer);
    else chunks = [];
    if (length > limit * PATIENCE) break;
  }
  if (length > limit) {
    throw new ApiRefusal(413, "too-large", `a request has at most ${limit / MIB} MiB`);
  }
  return Buffer.concat(chunks).toString("utf8");
}
