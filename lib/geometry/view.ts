/** The two planes a pose is drawn on: from the walker's right side, and from ahead of him. */
export const VIEWS = ["side", "front"] as const;
export type View = (typeof VIEWS)[number];
