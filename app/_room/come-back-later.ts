import type { WebsocketProvider } from "y-websocket";
import type { Going } from "../../shared/hub-message";

/** Holds a provider back after its hub has said that it is going, so that not all return in one moment. */
export interface Return {
  /** The hub goes: come back a random time after the line has closed, within what it said. */
  between(going: Going): void;
  callOff(): void;
}

export function comeBackLater(
  provider: WebsocketProvider,
  chance: () => number = Math.random,
): Return {
  let told: Going | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;
  provider.on("connection-close", () => {
    if (told === null) return;
    const { minMs, maxMs } = told;
    told = null;
    provider.shouldConnect = false; // or it would be back in a fifth of a second
    timer = setTimeout(() => provider.connect(), minMs + chance() * Math.max(0, maxMs - minMs));
  });
  provider.on("closed", () => {
    if (timer !== null) clearTimeout(timer); // it was sent away for good
  });
  return {
    between(going) {
      told = going;
    },
    callOff() {
      if (timer !== null) clearTimeout(timer);
    },
  };
}
