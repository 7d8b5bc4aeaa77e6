/** How many are there: clients over rooms, and how many of each room draw. */
export interface Config {
  readonly name: string;
  readonly clients: number;
  readonly rooms: number;
  readonly activePerRoom: number;
}

export const CONFIGS: readonly Config[] = [
  { name: "2x1", clients: 2, rooms: 1, activePerRoom: 2 },
  { name: "20x1", clients: 20, rooms: 1, activePerRoom: 5 },
  { name: "200x20", clients: 200, rooms: 20, activePerRoom: 2 },
];

/** Yjs' own bytes and the id make an update of about 250 bytes of it. */
export const STROKE_BYTES = 222;

/** Everybody, a few at a time, each knowing which room is his and whether he draws. */
export async function gather<Page>(
  { clients, rooms, activePerRoom }: Config,
  open: (who: { index: number; room: string; isActive: boolean }) => Promise<Page>,
): Promise<Page[]> {
  const AT_ONCE = 20;
  const pages: Page[] = [];
  for (let from = 0; from < clients; from += AT_ONCE) {
    const some = Array.from({ length: Math.min(AT_ONCE, clients - from) }, (_, offset) => {
      const index = from + offset;
      const isActive = Math.floor(index / rooms) < activePerRoom;
      return open({ index, room: `room-${index % rooms}`, isActive });
    });
    pages.push(...(await Promise.all(some)));
  }
  return pages;
}

export function passed(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

/** Looked at every few ms, for at most so long: a server that lost something must not hold the bench up. */
export async function atMost(ms: number, holds: () => boolean): Promise<void> {
  const until = performance.now() + ms;
  while (!holds() && performance.now() < until) await passed(5);
}
