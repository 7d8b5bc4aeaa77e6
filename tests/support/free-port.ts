import { createServer } from "node:net";

/** A port that nobody listens on at this moment, for what has to come back to the same one. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      server.close(() => resolve(typeof address === "object" ? (address?.port ?? 0) : 0));
    });
  });
}
