import type { PanelId } from "../sheet";

/**
 * One value of a document that was set or taken away, by where it stands. It is plain, so it outlives
 * the document it was made in and can be made again in another.
 */
export interface Change {
  /** The top part of the document it stands in. */
  readonly part: string;
  /** The panel whose own map it stands in; null where it stands in the part itself. */
  readonly panel: PanelId | null;
  readonly key: string;
  /** What stands there now; undefined: nothing any more. A panel's own map is its entries by name. */
  readonly value: unknown;
}
