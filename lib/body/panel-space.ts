/**
 * A panel's view as it is drawn on. Units: panel units, y down; one is a CSS pixel at zoom 1.
 * `plainLeg` is how long a plain figure's leg is drawn, hip joint to sole.
 */
export const PANEL = { width: 720, height: 1200, groundY: 1080, plainLeg: 420 } as const;
