import { createHash } from "node:crypto";
import * as Y from "yjs";
import { createHub, type Hub } from "../../../server/hub";
import type { Store } from "../../../server/store/store";
import { StoreError, type StoreErrorCode } from "../../../server/store/store-error";
import { gate, handClock } from "../hand-clock";
import { MemorySocket } from "./memory-socket";
import { ModelPage } from "./model-page";

export const PAGES = 3;

/** What the disk does to the next commits. */
export type Ailment = StoreErrorCode | "answer-lost";

let sheets = 0;

/** A sheet, its hub on a real database, and everybody's view of what is committed. */
export async function openWorld(store: Store) {
  const clock = handClock();
  const faults: string[] = [];
  const committed = new Y.Doc();
  const ever = new Set<string>();
  committed.getMap("strokes").observe((event) => {
    for (const key of event.keysChanged) ever.add(String(key));
  });
  const sheet = newName();
  const { documentId, people } = await makeSheet(store, sheet);
  const truth = {
    wasCommitted: (stroke: string) => ever.has(stroke),
    isThere: (stroke: string) => committed.getMap("strokes").has(stroke),
    fault: (what: string) => void faults.push(what),
  };
  const disk = createDisk();
  const pages = people.map(({ name }) => new ModelPage(name, truth));
  const revoked = new Map<ModelPage, ReadonlySet<string>>();

  /** The hub's own store, which goes silent when the hub's process has died. */
  const storeOf = (life: { dead: boolean }): Store => ({
    ...store,
    async appendUpdates(batch) {
      await disk.passed();
      if (life.dead) return new Promise(() => {});
      const ails = disk.ailments.shift();
      if (ails !== undefined && ails !== "answer-lost")
        throw new StoreError(ails, "an ailing disk");
      const appended = await store.appendUpdates(batch);
      const refused = new Set(appended.refused.map((each) => each.documentId));
      for (const { documentId: of, bytes } of batch.updates) {
        if (of === documentId && !refused.has(of)) Y.applyUpdate(committed, bytes);
      }
      if (life.dead) return new Promise(() => {});
      if (ails === "answer-lost") throw new StoreError("broken", "the answer was lost");
      return appended;
    },
  });
  const start = (): { readonly hub: Hub; readonly life: { dead: boolean } } => {
    const life = { dead: false };
    const hub = createHub({
      ...{ store: storeOf(life), clock, instance: `model ${sheets}`, prepareDocument: () => {} },
      ...{ roomLingerMs: 1000, graceMs: 0 },
    });
    return { hub, life };
  };
  let running = start();

  const world = {
    ...{ pages, faults, clock, disk, documentId, sheet, store, committed },
    async join(page: ModelPage) {
      const person = people[pages.indexOf(page)];
      if (page.socket !== null || page.out || person === undefined) return;
      const mark = running.hub.accessMark();
      const grant = await store.grantOf(person.device, sheet, clock.now());
      if (grant === null) {
        page.out = true;
        return;
      }
      const socket = new MemorySocket();
      const device = Buffer.from(person.device).toString("hex");
      page.join(socket);
      running.hub.connect(
        { socket: socket.asSocket(), line: { cork() {}, uncork() {} } },
        { sheet, document: "drawing", grant, device, client: page.doc.clientID, generation: null },
        mark,
      );
    },
    /** As the door does it: the database first, then whoever is connected. */
    async revoke(page: ModelPage, sends: () => void) {
      const { link = "" } = people[pages.indexOf(page)] ?? {};
      const done = store.revokeLink({ sheet, link, at: clock.now(), by: null });
      sends(); // while the database is asked
      await done;
      revoked.set(page, new Set(page.handedOver));
      running.hub.reviewAccess(sheet);
      sends(); // in the same moment
    },
    /** What a page had handed over when its link was taken back; null if it was not. */
    handedOverInTime: (page: ModelPage) => revoked.get(page) ?? null,
    crash() {
      running.life.dead = true;
      for (const page of pages) page.cut();
      running = start();
    },
    async restart() {
      let over = false;
      const going = running.hub.drain(5000).finally(() => {
        over = true;
      });
      for (let turn = 0; turn < 200 && !over; turn++) {
        clock.pass(100);
        await settled();
      }
      await going;
      running.life.dead = true;
      running = start();
    },
    stop() {
      running.life.dead = true;
      disk.goOn();
    },
  };
  return world;
}

/** A disk that stands still and goes on when it is told to, and ails for a few commits. */
function createDisk() {
  let open = gate();
  open.open();
  return {
    ailments: [] as Ailment[],
    passed: () => open.passed,
    stall() {
      open.open();
      open = gate();
    },
    goOn: () => open.open(),
  };
}

export type World = Awaited<ReturnType<typeof openWorld>>;

/** Everything that can go on by itself has gone on: the database answers within the same turn. */
export function settled(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}

function newName() {
  const name = createHash("sha256").update(`${process.pid} ${++sheets} ${Date.now()}`).digest();
  return name.toString("base64url").slice(0, 12) as Parameters<Store["loadDocument"]>[0];
}

async function makeSheet(store: Store, sheet: ReturnType<typeof newName>) {
  const at = 1;
  const names = Array.from({ length: PAGES }, (_, index) => String.fromCharCode(97 + index));
  const people = names.map((name) => ({
    ...{ name, link: `${sheet}${name}`, secret: sum(`${sheet} secret ${name}`) },
    device: sum(`${sheet} device ${name}`),
  }));
  const owner = { link: `${sheet}-`, role: "owner", secretSha256: sum(`${sheet} owner`) } as const;
  const links = people.map(({ link, secret }) => ({
    ...{ link, role: "draw" as const, label: "", secretSha256: secret },
  }));
  await store.createSheet({
    ...{ sheet, at, by: null, documents: BLANK },
    links: [{ ...owner, label: "" }, ...links],
  });
  for (const { secret, device } of people) {
    await store.enter({ sheet, secretSha256: secret, device, at });
  }
  const stored = await store.loadDocument(sheet, "drawing");
  return { documentId: stored?.documentId ?? 0, people };
}

function sum(of: string): Uint8Array {
  return new Uint8Array(createHash("sha256").update(of).digest());
}

/** The hub does not read what is in a document. */
const EMPTY = Uint8Array.of(0, 0);
const BLANK = { drawing: EMPTY, critique: EMPTY };
