import { randomBytes } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import { type Address, hostOf, isOverTls } from "./access/origin";

const HOST_SHAPE = /^[A-Za-z0-9.:[\]-]+$/; // anything else would end the directive it stands in

/** What a page may load and do: our own files, scripts that carry this request's nonce, our sockets. */
export function contentSecurityPolicy(nonce: string, host: string, development: boolean): string {
  const sockets = HOST_SHAPE.test(host) ? ` ws://${host} wss://${host}` : "";
  // While developing, React and the reloader use eval and style elements of their own.
  const script = development ? " 'unsafe-eval'" : "";
  const style = development ? "'unsafe-inline'" : `'nonce-${nonce}'`;
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}'${script}`,
    `style-src 'self' ${style}`,
    `connect-src 'self'${sockets}`,
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "worker-src 'self' blob:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}

/**
 * Puts the headers on an answer, and the nonce on the request, where the page renderer looks for it.
 * What a stranger may have sent under these names is overwritten.
 */
export function guardPage(
  request: IncomingMessage,
  response: ServerResponse,
  { address, development }: { address: Address; development: boolean },
): void {
  const nonce = randomBytes(16).toString("base64");
  const policy = contentSecurityPolicy(nonce, hostOf(request, address), development);
  request.headers["x-nonce"] = nonce;
  request.headers["content-security-policy"] = policy;
  response.setHeader("content-security-policy", policy);
  guardAnswer(response, isOverTls(request, address));
}

const NOTHING_OF_THE_MACHINE = [
  ...["camera", "microphone", "geolocation", "payment", "usb", "serial", "midi", "hid"],
  ...["accelerometer", "gyroscope", "magnetometer", "display-capture", "browsing-topics"],
]
  .map((feature) => `${feature}=()`)
  .join(", ");

/** For every answer, pages and API alike. */
export function guardAnswer(response: ServerResponse, overTls: boolean): void {
  response.setHeader("x-content-type-options", "nosniff");
  response.setHeader("x-frame-options", "DENY");
  response.setHeader("referrer-policy", "same-origin");
  response.setHeader("cross-origin-opener-policy", "same-origin");
  response.setHeader("cross-origin-resource-policy", "same-origin");
  response.setHeader("permissions-policy", NOTHING_OF_THE_MACHINE);
  response.setHeader("x-robots-tag", "noindex");
  if (overTls) response.setHeader("strict-transport-security", "max-age=31536000");
}

/** For the API: opened as a page, an answer loads nothing and runs nothing. */
export function guardData(response: ServerResponse, overTls: boolean): void {
  guardAnswer(response, overTls);
  response.setHeader(
    "content-security-policy",
    "default-src 'none'; frame-ancestors 'none'; sandbox",
  );
}
