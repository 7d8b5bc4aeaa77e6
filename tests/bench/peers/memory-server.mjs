import { createServer } from "node:http";
import { WebSocketServer } from "ws";
import { setupWSConnection } from "y-websocket/bin/utils";

/** y-websocket's own server, in memory, as its command starts it; on a free port, which it names. */
const server = createServer((_request, response) => response.end("okay"));
const sockets = new WebSocketServer({ server });
sockets.on("connection", setupWSConnection);
server.listen(0, "127.0.0.1", () => {
  console.log(`in memory at http://127.0.0.1:${server.address().port}`);
});
process.on("SIGTERM", () => process.exit(0));
