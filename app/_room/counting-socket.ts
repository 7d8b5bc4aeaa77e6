import { isUpdateFrame, SYNC } from "../../shared/protocol";

export interface SocketCount {
  /** An update frame left. `answer`: it is the answer to the hub's first question. */
  onSent(answer: boolean): void;
  /** An update was held back: the answer that is yet to come will hold it. */
  onHeldBack(): void;
}

/**
 * A WebSocket that counts update frames, and sends none before the hub has asked what this page has.
 * Ink drawn while the line was away is in that answer alone: an update that ran ahead of it would
 * build on what the hub lacks, and be refused.
 */
export function countingSocket({ onSent, onHeldBack }: SocketCount): typeof WebSocket {
  return class extends WebSocket {
    private answered = false;

    override send(data: Parameters<WebSocket["send"]>[0]): void {
      const counts = data instanceof Uint8Array && isUpdateFrame(data);
      const answer = counts && data[1] === SYNC.step2;
      if (answer) this.answered = true;
      if (counts && !this.answered) {
        onHeldBack();
        return;
      }
      super.send(data);
      if (counts) onSent(answer);
    }
  };
}
