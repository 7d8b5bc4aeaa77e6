import { describe, expect, it } from "vitest";
import type { Drawer } from "../../../app/_room/local/drawer";
import type { KeptWork } from "../../../app/_room/local/kept-work";
import { paperDrawer, paperStore } from "../../support/paper-drawer";

const work = (drawer: Drawer, more: Partial<KeptWork> = {}): KeptWork => ({
  ...{ key: drawer.nextKey(), document: "drawing", generation: 1, update: Uint8Array.of(1) },
  ...{ changes: [], again: false, lost: null, ...more },
});
const turn = () => new Promise(setImmediate);

describe("the drawer of unsaved work", () => {
  it("calls nothing kept before the browser says that it is on the disk", async () => {
    const store = paperStore();
    store.always("asked");
    const { drawer } = paperDrawer(store);
    const one = work(drawer);
    drawer.keep(one);
    await turn();
    expect(store.asked).toHaveLength(1);
    expect(drawer.isKept(one.key)).toBe(false);
    await store.settle("done");
    expect(drawer.isKept(one.key)).toBe(true);
  });

  it("writes one transaction at a time, and what came meanwhile in the next", async () => {
    const store = paperStore();
    store.always("asked");
    const { drawer } = paperDrawer(store);
    const [one, two, three] = [work(drawer), work(drawer), work(drawer)];
    for (const item of [one, two, three]) drawer.keep(item);
    await turn();
    expect(store.asked.map(({ keep }) => keep)).toEqual([[one]]);
    await store.settle("done");
    expect(store.asked.map(({ keep }) => keep)).toEqual([[one], [two, three]]);
  });

  it("tries again what a full disk did not take, in its order, and calls it kept only then", async () => {
    const store = paperStore();
    store.always("full");
    const { drawer, wait } = paperDrawer(store);
    const [one, two] = [work(drawer), work(drawer)];
    drawer.keep(one);
    drawer.keep(two);
    await turn();
    expect([one, two].map(({ key }) => drawer.isKept(key))).toEqual([false, false]);
    store.always("done");
    await wait();
    expect(await drawer.read()).toEqual([one, two]);
    expect([one, two].map(({ key }) => drawer.isKept(key))).toEqual([true, true]);
  });

  it("forgets what is saved, also where it is still on its way to the disk", async () => {
    const store = paperStore();
    store.always("asked");
    const { drawer } = paperDrawer(store);
    const [written, waiting] = [work(drawer), work(drawer)];
    drawer.keep(written);
    drawer.keep(waiting);
    await turn();
    drawer.drop(written.key);
    drawer.drop(waiting.key);
    await store.settle("done");
    await store.settle("done");
    expect(store.disk.size).toBe(0);
    expect(drawer.isKept(written.key)).toBe(false);
  });

  it("writes everything anew when the browser took its store away", async () => {
    const store = paperStore();
    const { drawer } = paperDrawer(store);
    const one = work(drawer);
    drawer.keep(one);
    await turn();
    store.always("asked");
    store.vanish();
    await turn();
    expect(drawer.isKept(one.key)).toBe(false);
    await store.settle("done");
    expect(drawer.isKept(one.key)).toBe(true);
    expect([...store.disk.values()]).toEqual([one]);
  });

  it("leaves another page's work on the sheet alone, and another sheet's out of sight", async () => {
    const store = paperStore();
    const { drawer: first } = paperDrawer(store, "sheet", "page-a");
    const { drawer: second } = paperDrawer(store, "sheet", "page-b");
    const { drawer: elsewhere } = paperDrawer(store, "other", "page-c");
    const [mine, theirs, other] = [work(first), work(second), work(elsewhere)];
    first.keep(mine);
    second.keep(theirs);
    elsewhere.keep(other);
    await turn();
    first.drop(mine.key);
    await turn();
    expect(await second.read()).toEqual([theirs]);
    expect(store.disk.size).toBe(2);
  });

  it("has nothing from before where the browser keeps nothing", async () => {
    const store = paperStore();
    store.always("full");
    expect(await paperDrawer(store).drawer.read()).toEqual([]);
  });
});
