import type { Room } from "../_room";

/** What this person's hands are doing on the whole board: a palm on one paper, the pen on another. */
export interface Hand {
  /** When a pen was last near the screen, on the events' clock; −∞: never. Milliseconds. */
  penSeenAt: number;
  /** Leaves what a finger is doing without keeping it; null while none does anything. */
  dropFinger: (() => void) | null;
}

const hands = new WeakMap<Room, Hand>();

export function handOf(room: Room): Hand {
  const hand = hands.get(room) ?? { penSeenAt: Number.NEGATIVE_INFINITY, dropFinger: null };
  hands.set(room, hand);
  return hand;
}

const PEN_NEAR_MS = 1500; // the palm may stay a little after the pen has left: our own choice

/** Whether a touch is more likely the palm of a hand that holds a pen. */
export function isPalm(hand: Pick<Hand, "penSeenAt">, nowMs: number): boolean {
  return nowMs - hand.penSeenAt < PEN_NEAR_MS;
}
