import type { Remark, Review } from "../../lib/gait";
import { strip } from "../_words";

/** A remark is the same one as long as it says the same of the same panels, whatever its numbers. */
const keyOf = ({ check, side, panels }: Remark): string => [check, side, ...panels].join(" ");

/** What a viewer would see: tidy ones are folded away, and not worth a word as they come and go. */
const worthAWord = (remarks: readonly Remark[]): readonly Remark[] =>
  remarks.filter(({ level }) => level !== "tidy");

/** What a review tells. */
type Told = Pick<Review, "remarks" | "kept">;

/**
 * One sentence or two on what came and went between two reviews; null when nothing did. Several at
 * once are counted and not read out.
 */
export function remarkChange(before: Told, after: Told): string | null {
  const [old, now] = [worthAWord(before.remarks), worthAWord(after.remarks)];
  const appeared = without(now, old);
  const kept = after.kept.map(({ remark }) => remark);
  const gone = without(without(old, now), kept); // what is kept on purpose is not settled
  if (appeared.length === 0 && gone.length === 0) return null;
  const { said } = strip;
  return [
    ...sentence(appeared, said.appeared, said.appearedMany),
    ...sentence(gone, said.gone, said.goneMany),
    said.left(now.length),
  ].join(" ");
}

function without(some: readonly Remark[], others: readonly Remark[]): readonly Remark[] {
  const known = new Set(others.map(keyOf));
  return some.filter((remark) => !known.has(keyOf(remark)));
}

function sentence(
  found: readonly Remark[],
  one: (title: string) => string,
  many: (count: number) => string,
): readonly string[] {
  const [first, ...more] = found;
  if (first === undefined) return [];
  return [more.length === 0 ? one(first.title) : many(found.length)];
}
