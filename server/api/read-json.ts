import type { IncomingMessage } from "node:http";
import { HUB_LIMITS } from "../../shared/limits";
import { ApiRefusal } from "./answer";
import { readBody } from "./read-body";

/**
 * The body of a request as JSON; an empty one reads as `{}`. Nothing is kept of a body that is too
 * large.
 *
 * Errors:  ApiRefusal 413 "too-large", 400 "not-json"
 */
export async function readJson(request: IncomingMessage): Promise<unknown> {
  const text = (await readBody(request, HUB_LIMITS.requestBytes)).toString("utf8");
  if (text.trim() === "") return {};
  try {
    return JSON.parse(text);
  } catch {
    throw new ApiRefusal(400, "not-json", "the body of the request needs to be JSON");
  }
}
