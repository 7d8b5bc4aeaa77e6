import { request as httpRequest } from "node:http";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { contentSecurityPolicy } from "../../server/security-headers";
import type { RunningHub } from "../../server/start-hub";
import { startTestHub, temporaryFolder } from "../support/hub-under-test";

describe("a page's answer", () => {
  const folder = temporaryFolder();
  const nonces: string[] = [];
  let running: RunningHub;

  beforeAll(async () => {
    running = await startTestHub(folder.path, {
      pages: async () => ({
        async handle(request, response) {
          nonces.push(String(request.headers["x-nonce"]));
          response.end(String(request.headers["content-security-policy"]));
        },
      }),
    });
  });
  afterAll(async () => {
    await running.stop();
    folder.remove();
  });

  it("carries a policy whose nonce the renderer was given, and another one each time", async () => {
    const answers = [await fetch(running.url), await fetch(running.url)];
    for (const [index, answer] of answers.entries()) {
      const policy = answer.headers.get("content-security-policy") ?? "";
      expect(policy).toContain(`script-src 'self' 'nonce-${nonces[index]}'`);
      expect(await answer.text()).toBe(policy);
    }
    expect(nonces[0]).not.toBe(nonces[1]);
    expect(nonces[0]?.length).toBeGreaterThanOrEqual(22); // 128 bits
  });

  it("never takes a nonce or a policy from whoever asks", async () => {
    const headers = { "x-nonce": "mine", "content-security-policy": "script-src *" };
    const answer = await fetch(running.url, { headers });
    expect(await answer.text()).toBe(answer.headers.get("content-security-policy"));
    expect(nonces.at(-1)).not.toBe("mine");
  });

  it("lets no page of another site frame it, and no script but ours run", () => {
    const policy = contentSecurityPolicy("n", "walks.example", false);
    expect(policy.split("; ")).toEqual(
      expect.arrayContaining([
        "default-src 'self'",
        "script-src 'self' 'nonce-n'",
        "connect-src 'self' ws://walks.example wss://walks.example",
        "object-src 'none'",
        "base-uri 'none'",
        "frame-ancestors 'none'",
      ]),
    );
    expect(policy).not.toContain("unsafe");
  });

  it("lets no host header write into the policy", async () => {
    const { port } = running;
    const policy = await new Promise<string>((resolve) => {
      const host = "x; script-src *";
      httpRequest({ port, host: "127.0.0.1", headers: { host } }, (response) => {
        resolve(String(response.headers["content-security-policy"]));
        response.resume();
      }).end();
    });
    expect(policy).not.toContain("script-src *");
    expect(policy).toContain("connect-src 'self';");
  });
});
