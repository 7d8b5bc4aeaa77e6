import type { WebsocketProvider } from "y-websocket";

interface AwarenessChange {
  readonly added: number[];
  readonly updated: number[];
  readonly removed: number[];
}

/**
 * Lets a provider tell the hub about this page alone. y-websocket's own handler passes on every
 * change of awareness, those it was just told included. After each reconnection the own state is set
 * anew: the hub has told the others that this page had gone, and only a newer state brings it back.
 */
export function speakForOneself(provider: WebsocketProvider): void {
  const { awareness } = provider;
  const own = provider.doc.clientID;
  const passOn = provider._awarenessUpdateHandler;
  awareness.off("update", passOn);
  provider._awarenessUpdateHandler = (change: AwarenessChange, origin: unknown) => {
    const touched = [change.added, change.updated, change.removed].some((ids) => ids.includes(own));
    if (touched) passOn({ added: [], updated: [own], removed: [] }, origin);
  };
  awareness.on("update", provider._awarenessUpdateHandler);
  provider.on("status", ({ status }) => {
    const state = awareness.getLocalState();
    if (status === "connected" && state !== null) awareness.setLocalState(state);
  });
}
