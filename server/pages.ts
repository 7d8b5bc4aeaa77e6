import type { Server } from "node:http";
import { fileURLToPath } from "node:url";
import type { Pages } from "./start-hub";

/** Both this file and the built server lie one folder below the project. */
const PROJECT = fileURLToPath(new URL("..", import.meta.url));

export interface PagesOptions {
  readonly development: boolean;
  readonly host: string;
  readonly port: number;
}

/** The pages, served by the same process. */
export async function openPages(server: Server, options: PagesOptions): Promise<Pages> {
  // Only here: what stands on top of a bundle is loaded by a hub without pages, too.
  const { default: next } = await import("next");
  const app = next({
    dev: options.development,
    dir: PROJECT,
    hostname: options.host,
    port: options.port,
    httpServer: server,
  });
  await app.prepare();
  const handle = app.getRequestHandler();
  const upgrade = app.getUpgradeHandler();
  return {
    handle: (request, response) => handle(request, response),
    upgrade: (request, socket, head) => upgrade(request, socket, head),
  };
}
