import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { listen } from "../../server/listen";
import { startProcess } from "../support/hub-process";
import { temporaryFolder } from "../support/hub-under-test";

describe("a port that is taken", () => {
  const neighbour = createServer();
  let port: number;
  beforeAll(async () => {
    await listen(neighbour, "127.0.0.1", 0);
    ({ port } = neighbour.address() as AddressInfo);
  });
  afterAll(() => neighbour.close());

  it("ends the server with one line that says what to change", async () => {
    const folder = temporaryFolder();
    const env = { DATA_DIR: folder.path, HEELSTRIP_PAGES: "off" };
    await expect(startProcess("server/main.ts", { ...env, PORT: String(port) })).rejects.toThrow(
      new Error(
        `port ${port} on 127.0.0.1 is taken: stop what runs there, or choose another with PORT\n`,
      ),
    );
    await expect(
      startProcess("server/main.ts", { ...env, HEALTH_PORT: String(port) }),
    ).rejects.toThrow(/^port \d+ on 127\.0\.0\.1 is taken: .* another with HEALTH_PORT\n$/);
    folder.remove();
  });

  it("is told from an address that is not this machine's", async () => {
    // 192.0.2.0/24 belongs to documentation (RFC 5737).
    await expect(listen(createServer(), "192.0.2.1", 0)).rejects.toThrow(
      "HOST needs an address of this machine",
    );
  });
});
