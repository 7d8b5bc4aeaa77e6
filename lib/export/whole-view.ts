import { PANEL } from "../body";
import type { Box } from "./shapes";

/** The whole of a view, in panel units. */
export const WHOLE_VIEW: Box = { x: 0, y: 0, width: PANEL.width, height: PANEL.height };
