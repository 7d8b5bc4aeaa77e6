/** A frame of the sheet: a whole number, the first is 1. */
export type Frame = number;
