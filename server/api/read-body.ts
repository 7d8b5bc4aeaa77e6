import type { IncomingMessage } from "node:http";
import { ApiRefusal } from "./answer";

const MIB = 1024 * 1024;

/** How much more than allowed is read and thrown away, so that the sender lives to read the answer. */
const PATIENCE = 4;

/**
 * The body of a request, up to a limit in bytes. Nothing is kept of one that is larger.
 *
 * Errors:  ApiRefusal 413 "too-large"
 */
export async function readBody(request: IncomingMessage, limit: number): Promise<Buffer> {
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
  return Buffer.concat(chunks);
}
