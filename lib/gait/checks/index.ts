import type { Check } from "../study";
import { gaps } from "./gaps";
import { hipOrder } from "./hip-order";
import { slide } from "./slide";

/** Every check there is. A new one is added here, and to `CheckId`. */
export const CHECKS: readonly Check[] = [hipOrder, slide, gaps];
