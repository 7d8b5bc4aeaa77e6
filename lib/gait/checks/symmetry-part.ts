import type { CannotTell, Remark, Sound } from "../finding";

/** One part of the question whether two steps mirror each other. */
export interface Part {
  readonly remark: Remark | null;
  /** What of it could not be told. */
  readonly open: CannotTell | null;
  /** What it answers where there is nothing to remark; null where nothing could be read. */
  readonly sound: Sound | null;
}
