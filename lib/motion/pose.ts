/** What a panel shows. A `breakdown` is any further key between the named ones. */
export const POSES = ["stand", "lead-in", "contact", "down", "passing", "up", "breakdown"] as const;
export type PoseName = (typeof POSES)[number];
