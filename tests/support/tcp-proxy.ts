import { type AddressInfo, connect, createServer, type Socket } from "node:net";
import type { Dice } from "./dice";

/** A network between two sides that a test can break. */
export interface TcpProxy {
  readonly port: number;
  /** Every line falls, and no new one comes about. */
  cut(): void;
  /** Of what passes, such a share is held up for so long, and all behind it with it. */
  stall(share: number, longestMs: number): void;
  /** Lines stay as they are, new ones come about, and nothing passes any more. */
  freeze(): void;
  /**
   * All is well again. What was frozen goes on where it stood, or its lines are found to be dead, as
   * where something in between has forgotten them.
   */
  heal(frozen?: "goes on" | "is dead"): void;
  close(): Promise<void>;
}

type State = { kind: "well" | "cut" | "frozen" } | { kind: "stalling"; share: number; ms: number };

/** Errors: rejects if it cannot listen */
export async function openTcpProxy(target: number, roll: Dice): Promise<TcpProxy> {
  let state: State = { kind: "well" };
  const lines = new Set<Socket>();
  const frozen = new Set<() => void>();
  const pass = (from: Socket, to: Socket) => {
    from.on("data", (bytes: Buffer) => {
      const go = () => {
        to.write(bytes);
        from.resume();
      };
      if (state.kind === "well") return to.write(bytes);
      from.pause();
      if (state.kind === "frozen") return frozen.add(go);
      if (state.kind === "stalling" && roll.below(1000) < state.share * 1000) {
        return setTimeout(go, roll.below(state.ms)).unref();
      }
      go();
    });
    from.on("error", () => from.destroy());
    from.on("close", () => {
      lines.delete(from);
      to.destroy();
    });
  };
  const server = createServer((inner) => {
    if (state.kind === "cut") {
      inner.destroy();
      return;
    }
    const outer = connect(target, "127.0.0.1");
    lines.add(inner).add(outer);
    pass(inner, outer);
    pass(outer, inner);
  });
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject).listen(0, "127.0.0.1", resolve);
  });
  const fell = () => {
    for (const line of lines) line.resetAndDestroy();
    frozen.clear();
  };
  return {
    port: (server.address() as AddressInfo).port,
    cut() {
      state = { kind: "cut" };
      fell();
    },
    stall(share, ms) {
      state = { kind: "stalling", share, ms };
    },
    freeze() {
      state = { kind: "frozen" };
    },
    heal(how = "goes on") {
      if (how === "is dead") fell();
      state = { kind: "well" };
      for (const go of frozen) go();
      frozen.clear();
    },
    close() {
      fell();
      return new Promise((resolve) => server.close(() => resolve()));
    },
  };
}
