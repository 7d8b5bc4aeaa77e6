/** How many of the others' names the head band carries side by side. */
const MOST_CHIPS = 4;

/**
 * Who is named in the head band and who is folded into a count. One alone is never folded: a count
 * of one takes the room of a name.
 *
 * Shapes:  the others in, both parts in the same order out
 */
export function foldPeople<P>(others: readonly P[]): {
  readonly shown: readonly P[];
  readonly folded: readonly P[];
} {
  const most = others.length > MOST_CHIPS ? MOST_CHIPS - 1 : MOST_CHIPS;
  return { shown: others.slice(0, most), folded: others.slice(most) };
}
