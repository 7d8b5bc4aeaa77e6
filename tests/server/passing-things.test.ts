import { beforeEach, describe, expect, it } from "vitest";
import { CLOSE } from "../../shared/close-code";
import { LIMITS } from "../../shared/limits";
import { encodeAwareness, MESSAGE } from "../../shared/protocol";
import { type HubClient, openPage } from "../support/hub-client";
import { sheetWithPeople } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

describe("live ink and presence", () => {
  const hub = oneHub();
  let people: Awaited<ReturnType<typeof sheetWithPeople>>;
  let anna: HubClient;
  let ben: HubClient;
  const open = (
    who: "owner" | "draw" | "view",
    more: { client?: number; document?: "critique" } = {},
  ) => openPage({ url: hub.url, sheet: people.sheet, cookie: people.cookies[who], ...more });

  beforeEach(async () => {
    people = await sheetWithPeople(hub.url);
    anna = await open("owner", { client: 11 });
    ben = await open("draw", { client: 22 });
    return async () => {
      await anna.close();
      await ben.close();
    };
  });

  it("passes live ink to the others with the sender's client in front, and not back", async () => {
    anna.sendLive(4, 5, 6);
    await ben.until(() => ben.live.length > 0);
    await anna.roundTrip();
    expect(ben.live).toEqual([{ client: 11, payload: [4, 5, 6] }]);
    expect(anna.live).toEqual([]);
  });

  it("keeps live ink within its document", async () => {
    const notes = await open("owner", { client: 11, document: "critique" });
    const reader = await open("view", { client: 33, document: "critique" });
    notes.sendLive(1);
    await reader.until(() => reader.live.length > 0);
    await ben.roundTrip();
    expect(ben.live).toEqual([]);
    await Promise.all([notes.close(), reader.close()]);
  });

  it("does not store live ink", async () => {
    anna.sendLive(9, 9, 9);
    await ben.until(() => ben.live.length > 0);
    const later = await open("view");
    await later.roundTrip();
    expect(later.live).toEqual([]);
    expect(later.strokes()).toEqual([]);
    await later.close();
  });

  it("holds live ink to its pace, and always passes the last of it", async () => {
    const sent = 200;
    for (let index = 0; index < sent; index++) anna.sendLive(index);
    await ben.until(() => ben.live.at(-1)?.payload[0] === sent - 1);
    // The burst, the one that waited, and what the clock let through while 200 frames were read.
    expect(ben.live.length).toBeLessThan(sent / 2);
    expect(ben.live.length).toBeGreaterThanOrEqual(LIMITS.liveBurst);
  });

  it("shows newcomers who is here", async () => {
    anna.say({ name: "Anna" }, 1);
    await anna.roundTrip();
    const later = await open("view");
    await later.until(() => later.presence.length > 0);
    expect(later.presence).toEqual([{ client: 11, clock: 1, state: '{"name":"Anna"}' }]);
    await later.close();
  });

  it("lets a connection speak for its own client alone", async () => {
    ben.say({ name: "Ben" }, 1);
    await anna.until(() => anna.presence.length > 0);
    const both = [
      { client: 22, clock: 9, state: '{"name":"not Ben"}' },
      { client: 11, clock: 1, state: '{"name":"Anna"}' },
    ];
    anna.send(encodeAwareness(both));
    await ben.until(() => ben.presence.some(({ client }) => client === 11));
    expect(ben.presence).toEqual([both[1]]);
  });

  it("takes the first awareness for a page that named no client", async () => {
    const cara = await open("view");
    cara.say({ name: "Cara" }, 1, 44);
    await ben.until(() => ben.presence.some(({ client }) => client === 44));
    cara.say({ name: "someone else" }, 2, 45);
    await cara.roundTrip();
    await ben.roundTrip();
    expect(ben.presence.some(({ client }) => client === 45)).toBe(false);
    await cara.close();
  });

  it("closes a device that claims another's client", async () => {
    const impostor = await open("view", { client: 11 });
    await impostor.until(() => impostor.closed !== null);
    expect(impostor.closed).toBe(CLOSE.clientTaken);
    expect(anna.closed).toBeNull();
  });

  it("lets a page be present on both documents under one client", async () => {
    const notes = await open("owner", { client: 11, document: "critique" });
    await notes.roundTrip();
    expect(notes.closed).toBeNull();
    await notes.close();
  });

  it("tells the others when someone has gone, and only of that one", async () => {
    anna.say({ name: "Anna" }, 3);
    await ben.until(() => ben.presence.length > 0);
    const cara = await open("view", { client: 44 });
    cara.say({ name: "Cara" }, 1);
    await ben.until(() => ben.presence.some(({ client }) => client === 44));
    await cara.close();
    await ben.until(() => ben.presence.at(-1)?.state === "null");
    expect(ben.presence.at(-1)).toEqual({ client: 44, clock: 1, state: "null" });
  });

  it("keeps somebody whose old socket dies after the new one came", async () => {
    anna.say({ name: "Anna" }, 1);
    const again = await open("owner", { client: 11 });
    again.say({ name: "Anna" }, 1);
    await again.roundTrip();
    await anna.close();
    const later = await open("view");
    await later.until(() => later.heard.includes(MESSAGE.awareness));
    expect(later.presence).toMatchObject([{ client: 11, state: '{"name":"Anna"}' }]);
    await Promise.all([again.close(), later.close()]);
  });

  it("drops presence that is not JSON or too large", async () => {
    const wrong = ["{", `"${"x".repeat(LIMITS.awarenessBytes)}"`];
    for (const state of wrong) anna.send(encodeAwareness([{ client: 11, clock: 5, state }]));
    anna.say({ name: "Anna" }, 6);
    await ben.until(() => ben.presence.length > 0);
    expect(ben.presence).toMatchObject([{ clock: 6 }]);
  });

  it("says who is here on the drawing alone", async () => {
    const notes = await open("owner", { client: 11, document: "critique" });
    const reader = await open("view", { client: 33, document: "critique" });
    notes.say({ name: "Anna" }, 1);
    await notes.roundTrip();
    await reader.roundTrip();
    expect(reader.presence).toEqual([]);
    await Promise.all([notes.close(), reader.close()]);
  });
});
