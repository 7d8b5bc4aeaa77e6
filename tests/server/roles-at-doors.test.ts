import { beforeAll, describe, expect, it } from "vitest";
import type { LinkCreated } from "../../shared/api-answers";
import { ROLES } from "../../shared/role";
import { ask, createSheet, enter, revokedDevice, sheetWithPeople } from "../support/hub-under-test";
import { oneHub } from "../support/one-hub";

const PEOPLE = [...ROLES, "stranger", "neighbour", "revoked"] as const;
type Who = (typeof PEOPLE)[number];

describe("each role at each door", () => {
  const hub = oneHub();
  let url: string;
  let sheet: string;
  let links: Awaited<ReturnType<typeof createSheet>>["links"];
  let cookies: Record<Who, string | undefined>;

  beforeAll(async () => {
    ({ url } = hub);
    const people = await sheetWithPeople(url);
    ({ sheet, links } = people);
    const neighbour = (await sheetWithPeople(url)).cookies.owner;
    const revoked = await revokedDevice(url, sheet, people.cookies.owner);
    cookies = { ...people.cookies, stranger: undefined, neighbour, revoked };
  });

  /** What each door answers to whom: the owner, others with a link, and those without one. */
  const doors = [
    { method: "GET", path: "", owner: 200, others: 200 },
    { method: "GET", path: "/links", owner: 200, others: 403 },
    { method: "POST", path: "/links", owner: 201, others: 403, body: { role: "view" } },
    {
      method: "PATCH",
      path: "/links/AAAAAAAAAAAA",
      owner: 404,
      others: 403,
      body: { role: "view" },
    },
    { method: "DELETE", path: "/links/AAAAAAAAAAAA", owner: 404, others: 403 },
    { method: "GET", path: "/audit", owner: 200, others: 403 },
  ];
  const tries = doors.flatMap((door) => PEOPLE.map((who) => ({ ...door, who })));

  it.each(tries)("answers $who at $method /api/sheets/:id$path", async (door) => {
    const isOther = ROLES.some((role) => role === door.who);
    const expected = door.who === "owner" ? door.owner : isOther ? door.others : 404;
    const how = { method: door.method, cookie: cookies[door.who], body: door.body };
    const { status, body } = await ask(url, `/api/sheets/${sheet}${door.path}`, how);
    expect(status).toBe(expected);
    if (status >= 400) {
      expect(body).toEqual({ code: expect.any(String), message: expect.any(String) });
    }
  });

  it.each(tries)(
    "says nothing of a sheet that is not there to $who at $method $path",
    async (door) => {
      const how = { method: door.method, cookie: cookies.stranger, body: door.body };
      const here = await ask(url, `/api/sheets/${sheet}${door.path}`, how);
      const nowhere = await ask(url, `/api/sheets/AAAAAAAAAAAA${door.path}`, {
        ...how,
        cookie: cookies[door.who],
      });
      expect(nowhere).toEqual({ ...here, cookie: null });
    },
  );

  it.each(PEOPLE)("lets %s begin a sheet and enter one by its link", async (who) => {
    const made = await ask(url, "/api/sheets", { method: "POST", cookie: cookies[who], body: {} });
    expect(made.status).toBe(201);
    const entered = await ask(url, "/api/enter", {
      method: "POST",
      cookie: cookies[who],
      body: { sheet, secret: links.view },
    });
    expect(entered.status).toBe(204);
    // A device that has a cookie keeps it: its other sheets stay open to it.
    if (cookies[who] !== undefined) expect(entered.cookie).toBe(cookies[who]);
  });

  it("keeps the strongest of the links a device came by", async () => {
    const { sheet: own, links: ownLinks } = await createSheet(url);
    const cookie = await enter(url, own, ownLinks.owner);
    const again = { method: "POST", cookie, body: { sheet: own, secret: ownLinks.view } };
    await ask(url, "/api/enter", again);
    expect((await ask(url, `/api/sheets/${own}`, { cookie })).body).toEqual({
      sheet: own,
      role: "owner",
    });
  });

  it("tells a wrong secret, another sheet's secret and no such sheet apart from nothing", async () => {
    const other = await createSheet(url);
    const wrong = [
      { sheet, secret: "wrong" },
      { sheet, secret: other.links.owner },
      { sheet: "AAAAAAAAAAAA", secret: links.owner },
    ];
    const answers = await Promise.all(
      wrong.map((body) => ask(url, "/api/enter", { method: "POST", body })),
    );
    expect(new Set(answers.map((answer) => JSON.stringify(answer))).size).toBe(1);
    expect(answers[0]).toMatchObject({ status: 404, cookie: null });
  });

  it("refuses what another site's page sends, and changes nothing by it", async () => {
    const origin = "https://elsewhere.example";
    const owner = { cookie: cookies.owner, origin };
    const path = `/api/sheets/${sheet}/links`;
    const before = await ask(url, path, { cookie: cookies.owner });
    const tries = [
      await ask(url, "/api/sheets", { ...owner, method: "POST", body: {} }),
      await ask(url, "/api/enter", { ...owner, method: "POST", body: { sheet, secret: "x" } }),
      await ask(url, path, { ...owner, method: "POST", body: { role: "owner" } }),
      await ask(url, `${path}/AAAAAAAAAAAA`, { ...owner, method: "PATCH", body: {} }),
      await ask(url, `${path}/AAAAAAAAAAAA`, { ...owner, method: "DELETE" }),
    ];
    for (const { status, body } of tries) {
      expect(status).toBe(403);
      expect(body).toMatchObject({ code: "foreign-origin" });
    }
    expect(await ask(url, path, { cookie: cookies.owner })).toEqual(before);
  });

  it("tells a link's secret once and never lists it", async () => {
    const path = `/api/sheets/${sheet}/links`;
    const how = { cookie: cookies.owner, method: "POST", body: { role: "draw", label: " Ana " } };
    const { body } = await ask(url, path, how);
    const { secret } = body as LinkCreated;
    expect(body).toMatchObject({ role: "draw", label: "Ana" });
    const listed = JSON.stringify((await ask(url, path, { cookie: cookies.owner })).body);
    expect(listed).not.toContain(secret);
    expect(listed).toContain("Ana");
  });

  it("never takes the last owner away", async () => {
    const { sheet: own, links: ownLinks } = await createSheet(url);
    const cookie = await enter(url, own, ownLinks.owner);
    const path = `/api/sheets/${own}/links`;
    const { body } = await ask(url, path, { cookie });
    const { link } = (body as { links: { link: string; role: string }[] }).links.find(
      ({ role }) => role === "owner",
    ) ?? { link: "" };
    const refused = await ask(url, `${path}/${link}`, { method: "DELETE", cookie });
    expect(refused).toMatchObject({ status: 409, body: { code: "last-owner" } });
    expect((await ask(url, `/api/sheets/${own}`, { cookie })).status).toBe(200);
  });

  it("says which methods a door takes", async () => {
    const { status, body } = await ask(url, "/api/enter", { method: "DELETE" });
    expect(status).toBe(405);
    expect(body).toMatchObject({ message: "this door takes POST" });
  });
});
