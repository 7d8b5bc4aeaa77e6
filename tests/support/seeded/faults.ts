import { reviewWalk } from "../../../lib/gait";
import { PATTERN_FAULTS } from "../faults-by-pattern";
import { BODY_FAULTS } from "../faults-of-body";
import { GROUND_FAULTS, ROLL_FAULTS, SHAPE_FAULTS } from "../faults-of-feet";
import { LEAD_IN_FAULTS } from "../faults-of-lead-in";
import { MOTION_FAULTS } from "../faults-of-motion";
import { PAIR_FAULTS } from "../faults-of-pairs";
import { READING_FAULTS } from "../faults-of-readings";
import { SNAP_FAULTS } from "../faults-of-snap";
import { GAPS, HEIGHTS, LABELS, MARK_SLIPS, MISSING, SLIDES } from "../faults-of-steps";
import { SYMMETRY_FAULTS } from "../faults-of-symmetry";
import { WEIGHT_FAULTS } from "../faults-of-weight";
import type { Fault } from "../seeding";
import { walk } from "../walk";

const ALL: readonly Fault[] = [
  ...MISSING,
  ...LABELS,
  ...SHAPE_FAULTS,
  ...HEIGHTS,
  ...WEIGHT_FAULTS,
  ...SLIDES,
  ...MARK_SLIPS,
  ...GROUND_FAULTS,
  ...ROLL_FAULTS,
  ...GAPS,
  ...SYMMETRY_FAULTS,
  ...PAIR_FAULTS,
  ...READING_FAULTS,
  ...MOTION_FAULTS,
  ...BODY_FAULTS,
  ...LEAD_IN_FAULTS,
  ...SNAP_FAULTS,
  ...PATTERN_FAULTS,
];

const answered = new Set(reviewWalk(walk(), "trade").findings.map(({ check }) => check));

/** Every fault that is put into the clean walks: at least one for each check that answers. */
export const FAULTS: readonly Fault[] = ALL.filter(({ check }) => answered.has(check));
