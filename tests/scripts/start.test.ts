import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it, vi } from "vitest";
import { requireNode } from "../../scripts/house/node-version.mjs";
import { addressAsked, requireFreePort } from "../../scripts/house/serve.mjs";

describe("before the board is started", () => {
  const servers: Server[] = [];
  afterEach(() => {
    vi.restoreAllMocks();
    for (const server of servers.splice(0)) server.close();
  });

  it.each(["20.18.3", "18.20.0", "9.11.2"])("turns Node %s away in one line", (version) => {
    vi.spyOn(process, "exit").mockImplementation((code) => {
      throw new Error(`exit ${code}`);
    });
    const said = vi.spyOn(console, "error").mockImplementation(() => {});
    expect(() => requireNode(version)).toThrow("exit 1");
    expect(said.mock.calls).toEqual([[`Heelstrip needs Node 20.19 or newer; this is ${version}.`]]);
  });

  it.each(["20.19.0", "22.0.0", "24.21.0"])("takes Node %s", (version) => {
    expect(() => requireNode(version)).not.toThrow();
  });

  it("says which port is taken and what to do", async () => {
    const server = createServer();
    servers.push(server);
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const { port } = server.address() as AddressInfo;
    await expect(requireFreePort({ host: "127.0.0.1", port })).rejects.toThrow(
      `port ${port} on 127.0.0.1 is taken: stop what runs there, or choose another with PORT=${port + 1}`,
    );
  });

  it("takes the loopback address and port 3000 unless told otherwise", () => {
    expect(addressAsked({})).toEqual({ host: "127.0.0.1", port: 3000 });
    expect(addressAsked({ HOST: "0.0.0.0", PORT: "80" })).toEqual({ host: "0.0.0.0", port: 80 });
  });

  it.each(["eighty", "-1", "70000", "3.5"])("does not take %s for a port", (PORT) => {
    expect(() => addressAsked({ PORT })).toThrow(`PORT needs a port in 0..65535, got ${PORT}`);
  });

  it("leaves a free port free", async () => {
    await requireFreePort({ host: "127.0.0.1", port: 0 });
  });
});
