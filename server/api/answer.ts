import type { ServerResponse } from "node:http";
import type { ApiError } from "../../shared/api-answers";

/** An answer that is not a success: a status, a code to branch on, and a line for a person. */
export class ApiRefusal extends Error {
  override name = "ApiRefusal";
  readonly status: number;
  readonly code: string;

  constructor(status: number, code: string, message: string) {
    super(message);
    this.status = status;
    this.code = code;
  }
}

/** The same to a stranger and for a sheet that there is not. */
export function notFound(): ApiRefusal {
  return new ApiRefusal(404, "not-found", "there is nothing here for this browser");
}

export function sendJson(response: ServerResponse, status: number, body: unknown): void {
  response.writeHead(status, {
    "content-type": "application/json; charset=utf-8",
    "cache-control": "no-store",
  });
  response.end(`${JSON.stringify(body)}\n`);
}

export function sendRefusal(response: ServerResponse, { status, code, message }: ApiRefusal): void {
  const body: ApiError = { code, message };
  sendJson(response, status, body);
}

/** Errors: ApiRefusal 429 if the address has to wait first. */
export function holdToPace(waitMs: number, response: ServerResponse, what: string): void {
  if (waitMs === 0) return;
  response.setHeader("retry-after", Math.ceil(waitMs / 1000));
  throw new ApiRefusal(429, "too-many", `too many ${what} from this address, try again later`);
}
