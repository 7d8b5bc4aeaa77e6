import type { LinkListed } from "../../shared/api-answers";

/** Links that still open the sheet first, and among them the newest. */
export function sortLinks(links: readonly LinkListed[]): readonly LinkListed[] {
  return links.toSorted(
    (a, b) =>
      Number(a.revokedAt !== null) - Number(b.revokedAt !== null) || b.createdAt - a.createdAt,
  );
}
