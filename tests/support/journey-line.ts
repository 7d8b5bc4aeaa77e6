import { once } from "node:events";
import { type AddressInfo, connect, createServer, type Server, type Socket } from "node:net";

/** A line to a board that can be cut and mended, as a network's can. The board itself goes on. */
export interface Line {
  readonly url: string;
  /** Every connection falls, and none can be made. */
  cut(): Promise<void>;
  mend(): Promise<void>;
}

export async function layLine(boardUrl: string): Promise<Line> {
  const { hostname, port: boardPort } = new URL(boardUrl);
  const open = new Set<Socket>();
  const keep = (socket: Socket) => {
    open.add(socket);
    socket.once("close", () => open.delete(socket));
  };
  const pass = (near: Socket) => {
    const far = connect(Number(boardPort), hostname);
    for (const socket of [near, far]) keep(socket);
    near.pipe(far).pipe(near);
    near.on("error", () => far.destroy());
    far.on("error", () => near.destroy());
  };
  let server: Server = await listen(pass, hostname, 0);
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://${hostname}:${port}`,
    async cut() {
      const closed = once(server, "close");
      server.close();
      for (const socket of open) socket.destroy();
      await closed;
    },
    async mend() {
      server = await listen(pass, hostname, port);
    },
  };
}

async function listen(pass: (near: Socket) => void, host: string, port: number): Promise<Server> {
  const server = createServer(pass);
  server.listen(port, host);
  await once(server, "listening");
  return server;
}
