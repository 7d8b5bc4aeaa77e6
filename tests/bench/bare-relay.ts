import type { AddressInfo } from "node:net";
import { type WebSocket, WebSocketServer } from "ws";

/**
 * The floor that the hub is measured against, in a process of its own: a room is a set of sockets, and
 * a frame goes to every other one, unread. No document, no storage, no rights.
 */
const rooms = new Map<string, Set<WebSocket>>();
const server = new WebSocketServer({ port: 0, host: "127.0.0.1", perMessageDeflate: false });

server.on("connection", (socket, request) => {
  const name = request.url ?? "/";
  const room = rooms.get(name) ?? new Set();
  rooms.set(name, room.add(socket));
  socket.on("message", (data: Buffer) => {
    for (const other of room) if (other !== socket) other.send(data);
  });
  socket.on("close", () => room.delete(socket));
});
server.on("listening", () => {
  console.log(`relay at http://127.0.0.1:${(server.address() as AddressInfo).port}`);
});
process.on("SIGTERM", () => process.exit(0));
