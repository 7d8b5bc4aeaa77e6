import type { OnPurpose } from "../gait";

/** What is said about a sheet, as plain values: the critique document. */
export interface Critique {
  /** What the team keeps on purpose, by id. */
  readonly onPurpose: readonly OnPurpose[];
}
