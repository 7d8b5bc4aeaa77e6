import type { IncomingMessage } from "node:http";
import { BlockList, isIP, isIPv4 } from "node:net";

/** How far what a proxy says of a caller's address is believed. */
export interface ProxyTrust {
  /** The caller at our own door is a proxy of ours. */
  readonly trustProxy: boolean;
  /** Further proxies, which may stand between that one and people. */
  readonly trustedProxies: BlockList;
}

/** Errors: Error naming the entry that is neither an address nor a range like 10.0.0.0/8. */
export function readProxies(text: string): BlockList {
  const list = new BlockList();
  for (const entry of text.split(",").map((part) => part.trim())) {
    if (entry === "") continue;
    const [address = "", prefix] = entry.split("/");
    const kind = kindOf(address);
    const bits = prefix === undefined ? undefined : Number(prefix);
    if (kind === null || (bits !== undefined && !isPrefix(bits, kind))) {
      throw new Error(`needs addresses or ranges like 10.0.0.0/8, got ${entry}`);
    }
    if (bits === undefined) list.addAddress(address, kind);
    else list.addSubnet(address, bits, kind);
  }
  return list;
}

/**
 * Whom a request counts for: the right-most address in X-Forwarded-For that is no proxy of ours. What
 * stands to the left of it is the caller's own claim, and anyone can claim anything.
 */
export function clientAddress(request: IncomingMessage, trust: ProxyTrust): string {
  const peer = plain(request.socket.remoteAddress ?? "");
  if (!trust.trustProxy) return network(peer);
  const said = [request.headers["x-forwarded-for"] ?? []].flat().join(",");
  const hops = said.split(",").map((hop) => plain(hop.trim()));
  for (const hop of hops.reverse()) {
    const kind = kindOf(hop);
    if (kind === null) break; // not an address: nothing left of it can be believed either
    if (!trust.trustedProxies.check(hop, kind)) return network(hop);
  }
  return network(peer);
}

/** A household or a server has a whole /64 of IPv6, and could else come from as many addresses as it likes. */
function network(address: string): string {
  if (kindOf(address) !== "ipv6") return address;
  const [head = "", tail] = address.toLowerCase().split("::");
  const left = head === "" ? [] : head.split(":");
  const right = tail === undefined || tail === "" ? [] : tail.split(":");
  const zeros = tail === undefined ? 0 : Math.max(0, 8 - left.length - right.length);
  const groups = [...left, ...Array.from({ length: zeros }, () => "0"), ...right];
  return `${groups
    .slice(0, 4)
    .map((group) => Number.parseInt(group, 16).toString(16))
    .join(":")}::/64`;
}

/** Without brackets and port, and an IPv4 address that was wrapped into IPv6 as itself. */
function plain(address: string): string {
  const bare = /^\[(.*)\](:\d+)?$/.exec(address)?.[1] ?? address;
  const unwrapped = /^::ffff:(\d+\.\d+\.\d+\.\d+)$/i.exec(bare)?.[1] ?? bare;
  const withoutPort = /^(\d+\.\d+\.\d+\.\d+):\d+$/.exec(unwrapped)?.[1] ?? unwrapped;
  return withoutPort;
}

function kindOf(address: string): "ipv4" | "ipv6" | null {
  if (isIP(address) === 0) return null;
  return isIPv4(address) ? "ipv4" : "ipv6";
}

function isPrefix(bits: number, kind: "ipv4" | "ipv6"): boolean {
  return Number.isInteger(bits) && bits >= 0 && bits <= (kind === "ipv4" ? 32 : 128);
}
