import type { IncomingMessage } from "node:http";

/** Where we believe to be reached, and whether a proxy in front may say so. */
export interface Address {
  readonly publicUrl: URL | null;
  readonly trustProxy: boolean;
}

/**
 * Does the request come from one of our own pages? A browser names the page's origin with everything
 * that changes something and with every socket. A request that names none comes from no browser, and
 * so with nobody else's cookie.
 */
export function isOwnOrigin(request: IncomingMessage, address: Address): boolean {
  const { origin } = request.headers;
  if (origin === undefined) return true;
  if (!URL.canParse(origin)) return false; // "null", from a sandboxed frame
  const from = new URL(origin);
  if (address.publicUrl !== null) return from.origin === address.publicUrl.origin;
  return from.host === hostOf(request, address);
}

/** The host and port people see, as far as we know. */
export function hostOf(request: IncomingMessage, { publicUrl, trustProxy }: Address): string {
  if (publicUrl !== null) return publicUrl.host;
  const forwarded = request.headers["x-forwarded-host"];
  if (trustProxy && typeof forwarded === "string") return forwarded;
  return request.headers.host ?? "";
}

/** Do people reach us over TLS? */
export function isOverTls(request: IncomingMessage, { publicUrl, trustProxy }: Address): boolean {
  if (publicUrl !== null) return publicUrl.protocol === "https:";
  return trustProxy && request.headers["x-forwarded-proto"] === "https";
}
