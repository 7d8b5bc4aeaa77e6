import fc from "fast-check";
import type { ModelPage } from "./model-page";
import { type Ailment, PAGES, settled, type World } from "./model-world";

/** One thing that happens, in words and in deed. */
export interface Step {
  readonly said: string;
  readonly run: (world: World) => void | Promise<void>;
}

type Doing = (page: ModelPage, world: World) => void | Promise<void>;

const LATER_MS = [100, 1000, 3000, 50_000];
const AILMENTS: readonly Ailment[] = ["busy", "full", "broken", "answer-lost"];

/** What happens to one page. */
const ONE: readonly { readonly often: number; readonly name: string; readonly doing: Doing }[] = [
  { often: 6, name: "joins", doing: (page, world) => world.join(page) },
  { often: 8, name: "draws", doing: (page) => page.draw() },
  { often: 3, name: "takes back", doing: (page) => page.undo() },
  { often: 5, name: "is heard", doing: (page) => page.deliverUp() },
  { often: 5, name: "hears", doing: (page) => page.deliverDown() },
  { often: 8, name: "is up to date", doing: (page) => exchange(page) },
  { often: 2, name: "loses its line", doing: (page) => page.cut() },
  { often: 2, name: "sends again", doing: (page) => page.repeat() },
  { often: 1, name: "sends out of order", doing: (page) => page.swap() },
  { often: 1, name: "is shut out", doing: (page, world) => world.revoke(page, () => page.draw()) },
  {
    ...{ often: 1, name: "draws while it is shut out" },
    doing: (page, world) =>
      world.revoke(page, () => {
        page.draw();
        while (page.up.length > 0) page.deliverUp();
      }),
  },
];

/** What happens to everybody. */
const ALL: readonly { readonly often: number; readonly step: Step }[] = [
  { often: 2, step: { said: "the hub dies", run: (world) => world.crash() } },
  { often: 1, step: { said: "the hub is started anew", run: (world) => world.restart() } },
  { often: 2, step: { said: "the document is compacted", run: compact } },
  { often: 2, step: { said: "the disk stands still", run: ({ disk }) => disk.stall() } },
  { often: 3, step: { said: "the disk goes on", run: ({ disk }) => disk.goOn() } },
  ...AILMENTS.map((ailment) => ({
    often: 1,
    step: {
      said: `a commit meets ${ailment}`,
      run: ({ disk }: World) => void disk.ailments.push(ailment),
    },
  })),
  ...LATER_MS.map((ms) => ({
    often: 1,
    step: { said: `${ms} ms pass`, run: ({ clock }: World) => clock.pass(ms) },
  })),
];

/** At most so many steps, each of one page or of all. */
export function schedules(longest: number): fc.Arbitrary<readonly Step[]> {
  const ofOne = ONE.map(({ often, name, doing }) => ({
    weight: often * 2,
    arbitrary: fc.nat(PAGES - 1).map(
      (nth): Step => ({
        said: `${"abc"[nth]} ${name}`,
        run: (world) => {
          const page = world.pages[nth];
          return page === undefined ? undefined : doing(page, world);
        },
      }),
    ),
  }));
  const ofAll = ALL.map(({ often, step }) => ({ weight: often, arbitrary: fc.constant(step) }));
  return fc.array(fc.oneof(...ofOne, ...ofAll), { minLength: 4, maxLength: longest, size: "max" });
}

/** Both directions, until neither has more to say for now. */
async function exchange(page: ModelPage): Promise<void> {
  for (let turn = 0; turn < 3; turn++) {
    while (page.up.length > 0) page.deliverUp();
    await settled();
    while (page.socket !== null && page.socket.down.length > 0) page.deliverDown();
  }
}

async function compact({ store, documentId, clock }: World): Promise<void> {
  const atLeast = { rows: 1, bytes: 0 };
  await store.compact({ documentId, by: "model", at: clock.now(), atLeast });
}
