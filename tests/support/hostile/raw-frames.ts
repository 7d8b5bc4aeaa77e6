import { type Bytes, sized, text, varuint } from "./raw-bytes";

/** The answer to the hub's first question, and what is drawn from then on. */
export const ANSWER = 1;
export const DRAWN = 2;

export function syncFrame(kind: number, body: ArrayLike<number>): Bytes {
  return [0, ...varuint(kind), ...sized(body)];
}

export interface Presence {
  readonly client: number;
  readonly clock: number;
  readonly state: string;
}

export function presenceFrame(entries: readonly Presence[], claims = entries.length): Bytes {
  const body = entries.flatMap(({ client, clock, state }) => [
    ...varuint(client),
    ...varuint(clock),
    ...text(state),
  ]);
  return [1, ...sized([...varuint(claims), ...body])];
}

export function liveFrame(payload: ArrayLike<number>): Bytes {
  return [4, ...Array.from(payload)];
}

/** Told by the first two bytes, as the page and the hub both count. */
export function carriesUpdate(frame: Bytes): boolean {
  return frame[0] === 0 && (frame[1] === ANSWER || frame[1] === DRAWN);
}
