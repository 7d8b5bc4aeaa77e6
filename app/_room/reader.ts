/**
 * What reads a walk, and what mends it: by far the most of the gait library, and nothing that a hand needs to
 * draw. A module of its own, so that the board stands before it is fetched.
 */
export { findingCauses, fixFor, reviewWalk } from "../../lib/gait";
