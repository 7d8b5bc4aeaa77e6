import { describe, expect, it } from "vitest";
import { readEnv } from "../../server/env";

describe("the environment", () => {
  it("needs nothing set", () => {
    expect(readEnv({})).toMatchObject({
      ...{ port: 3000, host: "127.0.0.1", publicUrl: null, trustProxy: false },
      ...{ health: { port: 9300, insist: false }, pages: true, development: false },
      allowance: { sockets: 1000, requestsPerMinute: 6000, sheetsPerHour: 240 },
    });
    expect(readEnv({}).dataDir).toMatch(/\/data$/);
  });

  it("is read as it is written", () => {
    const env = readEnv({
      ...{ PORT: "8080", HOST: "0.0.0.0", DATA_DIR: "/var/lib/heelstrip", TRUST_PROXY: "1" },
      ...{ PUBLIC_URL: "https://walks.example.org/", HEALTH_PORT: "9000", HEELSTRIP_PAGES: "off" },
    });
    expect(env).toMatchObject({
      ...{ port: 8080, host: "0.0.0.0", dataDir: "/var/lib/heelstrip", trustProxy: true },
      ...{ health: { port: 9000, insist: true }, pages: false },
    });
    expect(env.publicUrl?.origin).toBe("https://walks.example.org");
  });

  it("takes an empty variable for one that is not set", () => {
    expect(readEnv({ PORT: "", HOST: "", DATA_DIR: "", PUBLIC_URL: "" })).toEqual(readEnv({}));
  });

  it.each([
    [{ PORT: "http" }, "PORT needs a port in 0..65535, got http"],
    [{ PORT: "70000" }, "PORT needs a port in 0..65535, got 70000"],
    [{ TRUST_PROXY: "perhaps" }, "TRUST_PROXY needs on or off, got perhaps"],
    [{ PUBLIC_URL: "walks.example" }, /PUBLIC_URL needs an address like .*, got walks\.example/],
    [{ PUBLIC_URL: "ftp://walks.example" }, /PUBLIC_URL needs an address/],
  ])("says of %o what was expected", (from, says) => {
    expect(() => readEnv(from)).toThrow(says);
  });

  it("can do without the doors for watchers, and with other limits", () => {
    const env = readEnv({
      HEALTH_PORT: "off",
      ADDRESS_SOCKETS: "12",
      PAGE_MESSAGES: "1000",
      TRUSTED_PROXIES: "10.0.0.0/8",
    });
    expect(env.health).toBeNull();
    expect(env.allowance.sockets).toBe(12);
    expect(env.pageAllowance).toEqual({ messagesPerSecond: 1000, bytesPerSecond: 1024 * 1024 });
    expect(env.trustedProxies.check("10.1.2.3")).toBe(true);
    expect(env.trustedProxies.check("11.1.2.3")).toBe(false);
  });

  it.each([
    [{ ADDRESS_SHEETS: "none" }, /ADDRESS_SHEETS needs a whole number above 0, got none/],
    [{ TRUSTED_PROXIES: "10.0.0.0/8, proxy" }, /TRUSTED_PROXIES needs addresses .*, got proxy/],
    [{ TRUSTED_PROXIES: "10.0.0.0/99" }, /TRUSTED_PROXIES needs addresses .*, got 10.0.0.0\/99/],
  ])("refuses %o", (from, complaint) => {
    expect(() => readEnv(from)).toThrow(complaint);
  });
});
