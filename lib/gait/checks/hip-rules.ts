import type { StepPose } from "../../motion";
import {
  DOWN_OVER_CONTACT,
  HIP_ORDER_SOURCES,
  IN_ORDER,
  PASSING_OVER_CONTACT,
  PASSING_OVER_DOWN,
} from "../methods/hip-order";
import type { QuietTopic } from "../quiet";
import type { CommonYardstick } from "../walk";

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

const TRADE: readonly HipRule[] = [
  {
    subject: "down",
    against: "contact",
    stays: "below",
    limit: IN_ORDER,
    topic: null,
    title: "reads light",
    sees: "the leg seems to take no weight",
    source: HIP_ORDER_SOURCES.trade,
  },
  {
    subject: "passing",
    against: "contact",
    stays: "above",
    limit: IN_ORDER,
    topic: null,
    title: "dips at passing",
    sees: "the body seems to sink over the leg it stands on",
    source: HIP_ORDER_SOURCES.trade,
  },
  {
    subject: "up",
    against: "passing",
    stays: "above",
    limit: IN_ORDER,
    topic: "hip-order:up",
    title: "has no rise",
    sees: "there is nothing for the hips to come down from, so the step will hitch",
    source: HIP_ORDER_SOURCES.trade,
  },
];

const LIFE: readonly HipRule[] = [
  {
    subject: "passing",
    against: "down",
    stays: "above",
    limit: PASSING_OVER_DOWN,
    topic: null,
    title: "does not rise",
    sees: "the body will seem to glide or to sag over the leg it stands on",
    source: HIP_ORDER_SOURCES.passingOverDown,
  },
  {
    subject: "passing",
    against: "contact",
    stays: "above",
    limit: PASSING_OVER_CONTACT,
    topic: null,
    title: "dips at passing",
    sees: "the body will seem to sink over the leg it stands on",
    source: HIP_ORDER_SOURCES.passingOverContact,
  },
  {
    subject: "down",
    against: "contact",
    stays: "below",
    limit: DOWN_OVER_CONTACT,
    topic: null,
    title: "reads light",
    sees: "the leg will seem to take no weight as it lands",
    source: HIP_ORDER_SOURCES.downOverContact,
  },
];

/** The order of hip heights that each yardstick expects within a step. */
export const HIP_RULES: Readonly<Record<CommonYardstick, readonly HipRule[]>> = {
  trade: TRADE,
  life: LIFE,
};
