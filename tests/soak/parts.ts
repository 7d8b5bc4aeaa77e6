import { soakCrowd } from "./crowd";
import { soakDetection } from "./detection";
import { soakDrains } from "./drains";
import { soakFuzz, soakModel, soakPartitions } from "./hostile";
import { soakKills } from "./kills";
import { soakPowerLoss } from "./power-loss";
import { soakProperties } from "./properties";
import { soakSlow } from "./slow";
import { soakStuck } from "./stuck";

const CUTS_A_THROW = 5; // a thousand power cuts, unless less is asked for
const KILLS_A_THROW = 1 / 2; // a hundred
const FRAMES_A_THROW = 500; // a hundred thousand
const SCHEDULES_A_THROW = 50; // ten thousand
const STUCK_A_THROW = 1 / 40; // five times ten seconds
const PARTITIONS_A_THROW = 1 / 20; // ten rounds of each trouble
const DRAINS_A_THROW = 1 / 10; // twenty
const ROUNDS_A_THROW = 1 / 20; // ten seeds for every property
const MINUTES_A_THROW = 1 / 40; // five of the crowd

/** A long proof by its name: so many throws in, the targets that were missed out. */
export type Part = (throws: number) => readonly string[] | Promise<readonly string[]>;

/** The long proofs, in the order in which they run. `npm run soak -- detection 20` runs one alone. */
export const PARTS: Readonly<Record<string, Part>> = {
  "power-loss": (throws) => soakPowerLoss(CUTS_A_THROW * throws),
  kills: (throws) => soakKills(Math.ceil(KILLS_A_THROW * throws)),
  fuzz: (throws) => soakFuzz(FRAMES_A_THROW * throws),
  model: (throws) => soakModel(SCHEDULES_A_THROW * throws),
  stuck: (throws) => soakStuck(Math.ceil(STUCK_A_THROW * throws)),
  partitions: (throws) => soakPartitions(Math.ceil(PARTITIONS_A_THROW * throws)),
  drains: (throws) => soakDrains(Math.ceil(DRAINS_A_THROW * throws)),
  crowd: (throws) => soakCrowd(MINUTES_A_THROW * throws),
  slow: soakSlow,
  properties: (throws) => soakProperties(Math.ceil(ROUNDS_A_THROW * throws)),
  detection: soakDetection,
};
