import type { LinkListed } from "../../shared/api-answers";

/**
 * Links that still open the sheet first, and among them the newest; then those that are revoked or ended.
 *
 * Units:   `now`: ms since 1970
 */
export function sortLinks(links: readonly LinkListed[], now: number): readonly LinkListed[] {
  return links.toSorted(
    (a, b) => Number(!opensAt(a, now)) - Number(!opensAt(b, now)) || b.createdAt - a.createdAt,
  );
}

/** Does it open the sheet at that time? */
export function opensAt({ revokedAt, expiresAt }: LinkListed, now: number): boolean {
  return revokedAt === null && (expiresAt === null || expiresAt > now);
}
