/**
 * `loading`: nobody is in it and nothing is answered. `open`: people are in it. `draining`: nobody new
 * comes in, and it waits until everything of it is committed. `closed`: it is out of memory.
 */
export type RoomState = "loading" | "open" | "draining" | "closed";

/** What may follow what. A room that cannot be loaded is closed at once, and has written nothing. */
const NEXT: { readonly [State in RoomState]: readonly RoomState[] } = {
  loading: ["open", "closed"],
  open: ["draining"],
  draining: ["closed"],
  closed: [],
};

/** In which state a room is: one of four, and only forward. */
export interface RoomLife {
  state(): RoomState;
  /** Errors: Error for a step that there is not. */
  move(to: RoomState): void;
}

export function createRoomLife(): RoomLife {
  let state: RoomState = "loading";
  return {
    state: () => state,
    move(to) {
      if (!NEXT[state].includes(to)) throw new Error(`a room that is ${state} cannot be ${to}`);
      state = to;
    },
  };
}
