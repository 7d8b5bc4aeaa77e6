import { createServer, type Server } from "node:http";
import type { Hub } from "./hub";
import { listen } from "./listen";

const HOST = "127.0.0.1"; // for the machine's own watchers only

/**
 * /livez: the process answers. /readyz: it is not going, and the disk keeps up. On a port of their
 * own, so that a proxy cannot show them to the world.
 */
export async function startHealth(hub: Hub, port: number): Promise<Server> {
  const server = createServer((request, response) => {
    const ready = !hub.isDraining() && hub.storage().state === "ok";
    const isReadyz = request.url === "/readyz";
    const known = isReadyz || request.url === "/livez";
    const status = !known ? 404 : isReadyz && !ready ? 503 : 200;
    response.writeHead(status, { "content-type": "application/json" });
    response.end(`${JSON.stringify({ ...hub.storage(), connections: hub.connections() })}\n`);
  });
  await listen(server, HOST, port, "HEALTH_PORT");
  return server;
}
