/**
 * What reads a walk, what mends it, and what lays out on the paper what was found: by far the most of the gait
 * library, and nothing that a hand needs to draw. A module of its own, so that the board stands before it is fetched.
 */
export { layOutRemarks, measureShipped, shapeOn } from "../../lib/export";
export { findingCauses, fixFor, reviewWalk } from "../../lib/gait";
