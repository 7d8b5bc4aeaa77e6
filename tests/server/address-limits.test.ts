import type { IncomingMessage } from "node:http";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { createAddressLimits } from "../../server/access/address-limits";
import { clientAddress, readProxies } from "../../server/access/client-address";
import type { RunningHub } from "../../server/start-hub";
import type { ApiError } from "../../shared/api-answers";
import { handClock } from "../support/hand-clock";
import { connect } from "../support/hub-client";
import { ask, createSheet, enter, startTestHub, temporaryFolder } from "../support/hub-under-test";

function request(peer: string, forwarded?: string | string[]): IncomingMessage {
  const headers = forwarded === undefined ? {} : { "x-forwarded-for": forwarded };
  return { socket: { remoteAddress: peer }, headers } as unknown as IncomingMessage;
}

describe("whom a request counts for", () => {
  const none = readProxies("");
  const trust = { trustProxy: true, trustedProxies: none };

  it("is who called, where no proxy is trusted, whatever the request claims", () => {
    const open = { trustProxy: false, trustedProxies: none };
    expect(clientAddress(request("203.0.113.9", "198.51.100.1"), open)).toBe("203.0.113.9");
  });

  it("is the right-most address that is no proxy of ours", () => {
    expect(clientAddress(request("127.0.0.1", "6.6.6.6, 198.51.100.1"), trust)).toBe(
      "198.51.100.1",
    );
    const two = { trustProxy: true, trustedProxies: readProxies("10.0.0.0/8") };
    const through = request("127.0.0.1", ["6.6.6.6", "198.51.100.1, 10.0.0.7"]);
    expect(clientAddress(through, two)).toBe("198.51.100.1");
  });

  it("is the proxy itself where it says nothing that can be believed", () => {
    expect(clientAddress(request("127.0.0.1"), trust)).toBe("127.0.0.1");
    expect(clientAddress(request("127.0.0.1", "198.51.100.1, unknown"), trust)).toBe("127.0.0.1");
  });

  it("is one for all addresses of an IPv6 network, and for an IPv4 address in either spelling", () => {
    const from = (address: string) => clientAddress(request("127.0.0.1", address), trust);
    expect(from("2001:db8::1")).toBe(from("2001:0DB8:0:0:ffff::2"));
    expect(from("2001:db8:0:1::1")).not.toBe(from("2001:db8::1"));
    expect(from("[2001:db8::1]:4711")).toBe(from("2001:db8::1"));
    expect(from("::ffff:198.51.100.1")).toBe(from("198.51.100.1:4711"));
  });
});

describe("what an address may have and do", () => {
  it("is counted for each by itself, and given back", () => {
    const limits = createAddressLimits(
      { sockets: 2, requestsPerMinute: 1, sheetsPerHour: 1 },
      handClock(),
    );
    const [first, second] = [limits.takeSocket("a"), limits.takeSocket("a")];
    expect(limits.takeSocket("a")).toBeNull();
    expect(limits.takeSocket("b")).not.toBeNull();
    first?.();
    expect(limits.takeSocket("a")).not.toBeNull();
    expect(second).not.toBeNull();
  });

  it("comes back as time passes, and not by asking", () => {
    const clock = handClock();
    const limits = createAddressLimits(
      { sockets: 1, requestsPerMinute: 2, sheetsPerHour: 1 },
      clock,
    );
    expect([limits.takeRequest("a"), limits.takeRequest("a")]).toEqual([0, 0]);
    const waitMs = limits.takeRequest("a");
    expect(waitMs).toBeGreaterThan(0);
    for (let turn = 0; turn < 10; turn++) expect(limits.takeRequest("a")).toBe(waitMs);
    clock.pass(waitMs);
    expect(limits.takeRequest("a")).toBe(0);
    expect(limits.takeRequest("a")).toBeGreaterThan(0);
  });
});

describe("a hub with narrow limits", () => {
  const folder = temporaryFolder();
  let running: RunningHub;
  beforeAll(async () => {
    const allowance = { sockets: 2, requestsPerMinute: 6, sheetsPerHour: 1 };
    running = await startTestHub(folder.path, { allowance });
  });
  afterAll(async () => {
    await running.stop();
    folder.remove();
  });

  it("says too many, and when to come back, and goes on for who is in", async () => {
    const { url } = running;
    const { sheet, links } = await createSheet(url);
    const cookie = await enter(url, sheet, links.draw);
    const [first, second] = [
      await connect({ url, sheet, cookie }),
      await connect({ url, sheet, cookie }),
    ];
    await expect(connect({ url, sheet, cookie })).rejects.toThrow("status 429");
    const another = await ask(url, "/api/sheets", { method: "POST", body: {} });
    expect(another).toMatchObject({ status: 429, body: { code: "too-many" } });
    const enough = await fetch(`${url}/api/sheets/${sheet}`, { headers: { cookie } });
    expect(enough.status).toBe(429);
    expect(Number(enough.headers.get("retry-after"))).toBeGreaterThan(0);
    expect(((await enough.json()) as ApiError).message).toContain("too many requests");
    await Promise.all([first.roundTrip(), second.roundTrip()]);
    await Promise.all([first.close(), second.close()]);
  });
});
