import { describe, expect, it } from "vitest";
import { newSheetId } from "../../../server/access/secret";
import { ROLES } from "../../../shared/role";
import type { SheetId } from "../../../shared/sheet-id";
import { device, linkOf, newSheetOf, type StoreCase, secretOf } from "./case";

/** Who may come in, by what, and until when. */
export function describeAccess(the: StoreCase): void {
  const owners = async (of: SheetId = the.sheet) =>
    (await the.store.listLinks(of)).filter(({ role }) => role === "owner");
  const enterAs = (role: (typeof ROLES)[number], number: number, at = 5) => {
    const secretSha256 = secretOf(the.sheet, role);
    return the.store.enter({ sheet: the.sheet, secretSha256, device: device(number), at });
  };
  const grantAt = (number: number, at = 5) => the.store.grantOf(device(number), the.sheet, at);

  describe("access", () => {
    it("lets a device in by a secret, to this sheet and as often as it likes", async () => {
      expect(await enterAs("view", 2)).toMatchObject({ role: "view", expiresAt: null });
      expect(await enterAs("view", 2)).toMatchObject({ role: "view" });
      expect(await grantAt(2)).toMatchObject({ role: "view" });
      expect(await grantAt(3)).toBeNull();
      expect(await the.store.grantOf(device(2), newSheetId(), 5)).toBeNull();
    });

    it("does not let a device in by another sheet's secret", async () => {
      const other = newSheetId();
      await the.store.createSheet(newSheetOf(other));
      const secretSha256 = secretOf(other, "owner");
      const entry = { sheet: the.sheet, secretSha256, device: device(4), at: 5 };
      expect(await the.store.enter(entry)).toBeNull();
      expect(await the.store.grantOf(device(4), other, 5)).toBeNull();
    });

    it("gives a device the strongest of its links, and of equals the one that lasts", async () => {
      for (const role of ["view", "draw", "critique"] as const) await enterAs(role, 5);
      expect(await grantAt(5)).toMatchObject({ role: "draw" });
      const guest = { ...linkOf(the.sheet, "draw", "guest"), at: 6, expiresAt: 100 };
      await the.store.addLink(guest);
      const { secretSha256 } = guest;
      await the.store.enter({ sheet: the.sheet, secretSha256, device: device(5), at: 7 });
      expect(await grantAt(5)).toMatchObject({ role: "draw", expiresAt: null });
    });

    it("ends with the link: for those who came by it, and those who would", async () => {
      const guest = { ...linkOf(the.sheet, "draw", "guest"), at: 6, expiresAt: 100 };
      await the.store.addLink(guest);
      const entry = { sheet: the.sheet, secretSha256: guest.secretSha256, device: device(6) };
      expect(await the.store.enter({ ...entry, at: 99 })).toMatchObject({ expiresAt: 100 });
      expect(await grantAt(6, 99)).toMatchObject({ link: guest.link });
      expect(await grantAt(6, 100)).toBeNull();
      expect(await the.store.enter({ ...entry, at: 100 })).toBeNull();
    });

    it("is shut by revoking, for those who came by the link and those who would", async () => {
      const grant = await enterAs("draw", 6);
      const link = grant?.link ?? "";
      const revoke = (at: number) =>
        the.store.revokeLink({ sheet: the.sheet, link, at, by: device(0) });
      expect(await revoke(6)).toBe("revoked");
      expect(await grantAt(6)).toBeNull();
      expect(await enterAs("draw", 7, 7)).toBeNull();
      expect(await revoke(8)).toBe("no-such-link");
    });
  });

  describe("links", () => {
    it("are listed from the oldest on, with what became of them", async () => {
      const link = linkOf(the.sheet, "draw", "later");
      await the.store.addLink({ ...link, at: 99, expiresAt: 500 });
      const { secretSha256 } = link;
      await the.store.enter({ sheet: the.sheet, secretSha256, device: device(1), at: 120 });
      await the.store.revokeLink({ sheet: the.sheet, link: link.link, at: 130, by: null });
      const listed = await the.store.listLinks(the.sheet);
      const first = listed.slice(0, 4).map(({ role }) => role);
      expect(first.sort()).toEqual([...ROLES].sort());
      expect(listed[0]).toMatchObject({ expiresAt: null, revokedAt: null, usedAt: null });
      expect(listed[4]).toEqual({
        ...{ link: link.link, role: "draw", label: "later", createdAt: 99 },
        ...{ expiresAt: 500, revokedAt: 130, usedAt: 120 },
      });
    });

    it("keep text as it was written", async () => {
      const label = "Zoë’s tablet · 走る · ½ speed";
      await the.store.addLink({ ...linkOf(the.sheet, "view", label), at: 9 });
      expect((await the.store.listLinks(the.sheet)).at(-1)?.label).toBe(label);
    });

    it("are raised, lowered, named and ended, for those who came by them too", async () => {
      const link = (await enterAs("draw", 8))?.link ?? "";
      const change = { sheet: the.sheet, link, at: 20, by: device(0) };
      expect(await the.store.changeLink({ ...change, role: "critique" })).toBe("changed");
      expect(await grantAt(8)).toMatchObject({ role: "critique" });
      await the.store.changeLink({ ...change, label: "review", expiresAt: 100 });
      await the.store.changeLink({ ...change, role: "draw" });
      expect(await grantAt(8, 99)).toEqual({ link, role: "draw", expiresAt: 100 });
      expect(await grantAt(8, 100)).toBeNull();
      await the.store.changeLink({ ...change, expiresAt: null });
      expect(await grantAt(8, 100)).toMatchObject({ role: "draw", expiresAt: null });
      const listed = await the.store.listLinks(the.sheet);
      expect(listed.find((each) => each.link === link)?.label).toBe("review");
    });

    it("of another sheet, and revoked ones, are neither changed nor revoked", async () => {
      const other = newSheetId();
      await the.store.createSheet(newSheetOf(other));
      const [foreign] = await owners(other);
      const to = { sheet: the.sheet, link: foreign?.link ?? "", at: 6, by: null };
      expect(await the.store.revokeLink(to)).toBe("no-such-link");
      expect(await the.store.changeLink({ ...to, role: "view" })).toBe("no-such-link");
      const gone = { ...to, link: (await enterAs("draw", 9))?.link ?? "" };
      await the.store.revokeLink(gone);
      expect(await the.store.changeLink({ ...gone, role: "owner" })).toBe("no-such-link");
      expect((await owners(other)).map(({ link }) => link)).toEqual([foreign?.link]);
    });

    it("leave a sheet one owner for good, whatever is done to them", async () => {
      const [own] = await owners();
      const to = { sheet: the.sheet, link: own?.link ?? "", at: 6, by: null };
      const last = { code: "last-owner" };
      const guest = { ...linkOf(the.sheet, "owner", "guest"), at: 7, expiresAt: 100 };
      await the.store.addLink(guest); // ends some day: the other is still the last
      await expect(the.store.revokeLink(to)).rejects.toMatchObject(last);
      await expect(the.store.changeLink({ ...to, role: "draw" })).rejects.toMatchObject(last);
      await expect(the.store.changeLink({ ...to, expiresAt: 90 })).rejects.toMatchObject(last);
      expect((await owners()).map(({ revokedAt }) => revokedAt)).toEqual([null, null]);
      await the.store.addLink({ ...linkOf(the.sheet, "owner", "second"), at: 7 });
      expect(await the.store.revokeLink(to)).toBe("revoked");
    });

    it("leave one owner also when two are revoked at once", async () => {
      await the.store.addLink({ ...linkOf(the.sheet, "owner", "second"), at: 7 });
      const revoked = (await owners()).map(({ link }) =>
        the.store.revokeLink({ sheet: the.sheet, link, at: 8, by: null }),
      );
      const outcomes = (await Promise.allSettled(revoked)).map(({ status }) => status);
      expect(outcomes.sort()).toEqual(["fulfilled", "rejected"]);
    });
  });

  describe("the record", () => {
    it("says who did what to whom, the newest first, and nothing that was not done", async () => {
      const { link, ...rest } = linkOf(the.sheet, "draw", "guest");
      await the.store.addLink({ ...rest, link, at: 10, expiresAt: Date.UTC(2030, 0, 1) });
      const change = { sheet: the.sheet, link, at: 11, by: device(1) };
      await the.store.changeLink({ ...change, role: "view", expiresAt: null });
      await the.store.revokeLink({ sheet: the.sheet, link, at: 12, by: device(2) });
      await the.store.raiseGeneration(the.sheet, null, 13);
      const [own] = await owners();
      const last = the.store.revokeLink({ ...change, link: own?.link ?? "" });
      await expect(last).rejects.toMatchObject({ code: "last-owner" });
      const who = (number: number) => Buffer.from(device(number)).toString("hex").slice(0, 12);
      expect(await the.store.listAudit(the.sheet, 10)).toEqual([
        { at: 13, who: "server", what: "generation-raised", subject: the.sheet, detail: "13" },
        { at: 12, who: who(2), what: "link-revoked", subject: link, detail: "view “guest”" },
        {
          ...{ at: 11, who: who(1), what: "link-changed", subject: link },
          detail: "draw “guest” until 2030-01-01T00:00:00.000Z → view “guest”",
        },
        {
          ...{ at: 10, who: who(0), what: "link-made", subject: link },
          detail: "draw “guest” until 2030-01-01T00:00:00.000Z",
        },
        { at: 1, who: who(0), what: "sheet-made", subject: the.sheet, detail: "with 4 links" },
      ]);
      expect(await the.store.listAudit(the.sheet, 2)).toHaveLength(2);
      expect(await the.store.listAudit(newSheetId(), 2)).toEqual([]);
    });

    it("tells other instances what happened after a number, in order", async () => {
      const before = (await the.store.controlAfter(0)).at(-1)?.id ?? 0;
      const at = Date.UTC(2030, 0, 1) + before; // later than anything the other sentences did
      const { link } = (await enterAs("draw", 10)) ?? { link: "" };
      const change = { sheet: the.sheet, link, at, by: null };
      await the.store.changeLink({ ...change, role: "view" });
      await the.store.revokeLink(change);
      await the.store.raiseGeneration(the.sheet, null, at);
      const told = await the.store.controlAfter(before);
      expect(told).toEqual([
        { id: before + 1, at, what: "link-changed", subject: link },
        { id: before + 2, at, what: "link-revoked", subject: link },
        { id: before + 3, at, what: "generation-raised", subject: the.sheet },
      ]);
      expect(await the.store.controlAfter(before + 2)).toEqual(told.slice(2));
    });
  });
}
