import { isUpdateFrame, SYNC } from "../../shared/protocol";

/**
 * A WebSocket that counts update frames, and sends none before the hub has asked what this page has.
 * Ink drawn while the line was away is in that answer alone: an update that ran ahead of it would
 * build on what the hub lacks, and be refused.
 *
 * @param onSent an update frame left; `answer`: it is the answer to the hub's first question
 */
export function countingSocket(onSent: (answer: boolean) => void): typeof WebSocket {
  return class extends WebSocket {
    private answered = false;

    override send(data: Parameters<WebSocket["send"]>[0]): void {
      const counts = data instanceof Uint8Array && isUpdateFrame(data);
      const answer = counts && data[1] === SYNC.step2;
      if (answer) this.answered = true;
      if (counts && !this.answered) return; // the answer that is yet to come will hold it
      super.send(data);
      if (counts) onSent(answer);
    }
  };
}
