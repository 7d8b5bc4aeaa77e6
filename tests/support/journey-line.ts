import { once } from "node:events";
import { type AddressInfo, connect, createServer, type Server, type Socket } from "node:net";

/** How long a page may take to be back on a line that is mended, ms: it tries again after a few seconds at most. */
export const BACK_MS = 20_000;

/** A line to a board that can be cut, held up and mended, as a network's can. The board itself goes on. */
export interface Line {
  readonly url: string;
  /** Every connection falls, and none can be made. */
  cut(): Promise<void>;
  mend(): Promise<void>;
  /** Every connection stays open, new ones are taken, and nothing passes through any. */
  holdUp(): void;
  letPass(): void;
}

/** A connection on either side of the line, and how they are joined. */
interface Pair {
  join(): void;
  part(): void;
}

export async function layLine(boardUrl: string): Promise<Line> {
  const { hostname, port: boardPort } = new URL(boardUrl);
  const open = new Set<Socket>();
  const keep = (socket: Socket) => {
    open.add(socket);
    socket.once("close", () => open.delete(socket));
  };
  const pairs = new Set<Pair>();
  let isHeldUp = false;
  const pass = (near: Socket) => {
    const far = connect(Number(boardPort), hostname);
    for (const socket of [near, far]) keep(socket);
    const join = () => near.pipe(far).pipe(near);
    const part = () => {
      near.unpipe(far).pause();
      far.unpipe(near).pause();
    };
    const pair = { join, part };
    pairs.add(pair);
    near.once("close", () => pairs.delete(pair));
    if (isHeldUp) part();
    else join();
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
    holdUp() {
      isHeldUp = true;
      for (const { part } of pairs) part();
    },
    letPass() {
      isHeldUp = false;
      for (const { join } of pairs) join();
    },
  };
}

async function listen(pass: (near: Socket) => void, host: string, port: number): Promise<Server> {
  const server = createServer(pass);
  server.listen(port, host);
  await once(server, "listening");
  return server;
}
