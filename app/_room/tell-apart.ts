/** Who somebody is to the board: their awareness client id, and the name that they gave. */
interface Named {
  readonly client: number;
  readonly name: string;
}

/**
 * What each of several people is called. Whoever shares a name with another gets a number, in the
 * order of their client ids, so that every page calls the same person the same: two who gave no name
 * are “Someone 1” and “Someone 2”.
 *
 * Shapes:  people in any order in, what they are called by client id out
 */
export function tellApart(people: readonly Named[]): ReadonlyMap<number, string> {
  const namesakes = new Map<string, number[]>();
  for (const { client, name } of people) {
    const known = namesakes.get(sameName(name)) ?? [];
    namesakes.set(sameName(name), [...known, client]);
  }
  const called = new Map<number, string>();
  for (const { client, name } of people) {
    const clients = namesakes.get(sameName(name)) ?? [];
    const number = clients.filter((other) => other <= client).length;
    called.set(client, clients.length > 1 ? `${name.trim()} ${number}` : name);
  }
  return called;
}

/** “Ann” and “ann ” are one name to whoever reads them. */
const sameName = (name: string): string => name.trim().toLowerCase();
