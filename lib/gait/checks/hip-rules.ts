import type { StepPose } from "../../motion";
import type { QuietTopic } from "../quiet";
import type { Yardstick } from "../walk";

/** One pose's hips held against another's, within the same step. */
export interface HipRule {
  /** The pose that is judged, and the pose it is judged by. */
  readonly subject: StepPose;
  readonly against: StepPose;
  /** The subject's hips over the other's are to stay `below` or `above` the limit. */
  readonly stays: "below" | "above";
  /** Leg lengths. */
  readonly limit: number;
  readonly topic: QuietTopic | null;
  readonly title: string;
  /** What a viewer will see. */
  readonly sees: string;
  readonly source: string;
}

const HANDBOOK =
  "Williams, The Animator's Survival Kit (2001): down lowest, then contact, passing above contact, up highest";

const MEASURED = "317 steps of 72 captured walks by 15 people";

const TRADE: readonly HipRule[] = [
  {
    subject: "down",
    against: "contact",
    stays: "below",
    limit: 0,
    topic: null,
    title: "reads light",
    sees: "the leg seems to take no weight",
    source: HANDBOOK,
  },
  {
    subject: "passing",
    against: "contact",
    stays: "above",
    limit: 0,
    topic: null,
    title: "dips at passing",
    sees: "the body seems to sink over the leg it stands on",
    source: HANDBOOK,
  },
  {
    subject: "up",
    against: "passing",
    stays: "above",
    limit: 0,
    topic: "hip-order:up",
    title: "has no rise",
    sees: "there is nothing for the hips to come down from, so the step will hitch",
    source: HANDBOOK,
  },
];

const LIFE: readonly HipRule[] = [
  {
    subject: "passing",
    against: "down",
    stays: "above",
    limit: 0, // trips on 2.8 % of the captured steps
    topic: null,
    title: "does not rise",
    sees: "the body will seem to glide or to sag over the leg it stands on",
    source: `${MEASURED}: passing stands above the down in 97.2 %`,
  },
  {
    subject: "passing",
    against: "contact",
    stays: "above",
    limit: -0.005, // trips on 1.6 % of the captured steps
    topic: null,
    title: "dips at passing",
    sees: "the body will seem to sink over the leg it stands on",
    source: `${MEASURED}: passing lies more than 0.5 % of a leg below contact in 1.6 %`,
  },
  {
    subject: "down",
    against: "contact",
    stays: "below",
    limit: 0.02, // trips on 3.5 % of the captured steps when the down is taken at a quarter
    topic: null,
    title: "reads light",
    sees: "the leg will seem to take no weight as it lands",
    source: `${MEASURED}: a down stands more than 2 % of a leg above contact in 3.5 %`,
  },
];

/** The order of hip heights that each yardstick expects within a step. */
export const HIP_RULES: Readonly<Record<Yardstick, readonly HipRule[]>> = {
  trade: TRADE,
  life: LIFE,
};
