/** How closely a pointer has to meet a mark. CSS pixels. */
export interface Grip {
  /** A press this near to a mark takes hold of it. */
  readonly reach: number;
  /** A tap this near to a shown guess takes the guess: no further than a hand errs. */
  readonly guess: number;
  /** A press that moves less than this is a tap. */
  readonly slack: number;
}

const REACH = { share: 0.035, least: 5, most: 12 } as const; // shares of the paper's width; px
const FINGER = { wider: 1.6, slack: 7, guess: 6 } as const;
const PENCIL = { wider: 1, slack: 3, guess: 2.5 } as const;

/**
 * How far around a mark its invisible target goes: 12 px, which makes targets of 24, less on a
 * small paper, where marks stand so close that targets would cover it.
 */
export function reachOf(width: number): number {
  return Math.min(REACH.most, Math.max(REACH.least, width * REACH.share));
}

/** The grip of a pointer on a paper of this width. A finger hides what it touches. */
export function gripOf(width: number, pointerType: string): Grip {
  const { wider, slack, guess } = pointerType === "touch" ? FINGER : PENCIL;
  return { reach: reachOf(width) * wider, slack, guess };
}

const MARK_RADIUS = { share: 0.014, least: 1.2, most: 3.6 } as const; // shares of the width; px

/** A mark's radius: a dot on the strip, a handle at the desk. CSS pixels. */
export function markRadius(width: number): number {
  return Math.min(MARK_RADIUS.most, Math.max(MARK_RADIUS.least, width * MARK_RADIUS.share));
}

/** Papers from this width on have room for a joint's name. CSS pixels. */
export const ROOM_FOR_NAMES = 240;
