import type { IncomingMessage } from "node:http";
import { newSecret } from "./secret";

const NAME = "heelstrip-device";
const SHAPE = /^[A-Za-z0-9_-]{27}$/; // 20 bytes
const MAX_AGE_S = 400 * 24 * 3600; // the longest that browsers keep a cookie

/** The device's secret, if the request brings one of the right shape. */
export function readDevice(request: IncomingMessage): string | null {
  for (const pair of (request.headers.cookie ?? "").split(";")) {
    const [name, value] = pair.trim().split("=");
    if (name === NAME && value !== undefined && SHAPE.test(value)) return value;
  }
  return null;
}

export function newDevice(): string {
  return newSecret();
}

/** The cookie that makes a browser known. Scripts cannot read it, foreign pages cannot send it along. */
export function deviceCookie(device: string, overTls: boolean): string {
  const secure = overTls ? "; Secure" : "";
  return `${NAME}=${device}; Path=/; Max-Age=${MAX_AGE_S}; HttpOnly; SameSite=Lax${secure}`;
}
