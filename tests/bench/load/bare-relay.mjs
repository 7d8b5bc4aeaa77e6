import { WebSocketServer } from "ws";

/**
 * The floor that the hub is measured against, in a process of its own: a room is a set of sockets, and
 * a frame goes to every other one, unread. No document, no storage, no rights.
 *
 * So that joining has a floor, too: a frame that begins with 254 is kept as the room's whole, and a
 * step 1 is answered with it. That is all it knows.
 */
const rooms = new Map();
const server = new WebSocketServer({ port: 0, host: "127.0.0.1", perMessageDeflate: false });

server.on("connection", (socket, request) => {
  const name = (request.url ?? "/").split("?")[0];
  const room = rooms.get(name) ?? { sockets: new Set(), whole: null };
  rooms.set(name, room);
  room.sockets.add(socket);
  socket.on("message", (data) => {
    if (data[0] === 254) room.whole = Buffer.from(data.subarray(1));
    else if (data[0] === 0 && data[1] === 0) room.whole !== null && socket.send(room.whole);
    else for (const other of room.sockets) if (other !== socket) other.send(data);
  });
  socket.on("close", () => room.sockets.delete(socket));
});
server.on("listening", () => {
  console.log(`relay at http://127.0.0.1:${server.address().port}`);
});
process.on("SIGTERM", () => process.exit(0));
