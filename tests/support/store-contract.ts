import { beforeAll, beforeEach, describe, expect, it } from "vitest";
import { newLinkId, newSheetId, sha256 } from "../../server/access/secret";
import type { NewBlob, NewLink, NewSheet, Store } from "../../server/store/store";
import { StoreError } from "../../server/store/store-error";
import { ROLES, type Role } from "../../shared/role";
import type { SheetId } from "../../shared/sheet-id";

export interface StoreUnderTest {
  readonly store: Store;
  /** The same data, after everything was closed and opened again. */
  reopen(): Promise<Store>;
}

const BYTES = Uint8Array.of(0, 255, 0, 1, 128);

/** What any store must do, whatever database is under it. */
export function describeStore(name: string, open: () => Promise<StoreUnderTest>): void {
  describe(`a store over ${name}`, () => {
    let under: StoreUnderTest;
    let store: Store;
    let sheet: SheetId;

    beforeAll(async () => {
      under = await open();
      ({ store } = under);
    });
    beforeEach(async () => {
      sheet = newSheetId();
      await store.createSheet(newSheetOf(sheet));
    });
    const documentId = async (name: "drawing" | "critique" = "drawing") =>
      (await store.loadDocument(sheet, name))?.documentId ?? 0;

    it("gives back the first bytes of both documents", async () => {
      const drawing = await store.loadDocument(sheet, "drawing");
      const critique = await store.loadDocument(sheet, "critique");
      expect(drawing).toMatchObject({ generation: 1, updates: [Uint8Array.of(1)] });
      expect(critique?.updates).toEqual([Uint8Array.of(2)]);
      expect(drawing?.documentId).not.toBe(critique?.documentId);
    });

    it("answers null for a document of no sheet", async () => {
      expect(await store.loadDocument(newSheetId(), "drawing")).toBeNull();
    });

    it("keeps updates whole, in their order, each in its own document", async () => {
      const [drawing, critique] = [await documentId(), await documentId("critique")];
      const numbered = Array.from({ length: 300 }, (_, index) => index);
      const updates = numbered.map((index) => ({
        documentId: index % 3 === 0 ? critique : drawing,
        at: index,
        bytes: Uint8Array.of(index & 255, index >> 8, ...BYTES),
      }));
      await store.appendUpdates(updates.slice(0, 10));
      await store.appendUpdates(updates.slice(10));
      const of = (id: number) => updates.filter((u) => u.documentId === id).map((u) => u.bytes);
      const loaded = await store.loadDocument(sheet, "drawing");
      expect(loaded?.updates.slice(1)).toEqual(of(drawing));
      const other = await store.loadDocument(sheet, "critique");
      expect(other?.updates.slice(1)).toEqual(of(critique));
    });

    it("takes a batch whole or not at all", async () => {
      const id = await documentId();
      const nowhere = { documentId: 999_999, at: 1, bytes: BYTES };
      const batch = store.appendUpdates([{ documentId: id, at: 1, bytes: BYTES }, nowhere]);
      await expect(batch).rejects.toThrow(StoreError);
      expect((await store.loadDocument(sheet, "drawing"))?.updates).toHaveLength(1);
      // and it works on, after what has been undone
      await store.appendUpdates([{ documentId: id, at: 1, bytes: BYTES }]);
      expect((await store.loadDocument(sheet, "drawing"))?.updates).toHaveLength(2);
    });

    it("makes a sheet whole or not at all", async () => {
      const other = newSheetId();
      const [link] = newSheetOf(other).links;
      if (link === undefined) throw new Error("a sheet has links");
      const twice = { ...newSheetOf(other), links: [link, link] };
      await expect(store.createSheet(twice)).rejects.toThrow(StoreError);
      expect(await store.loadDocument(other, "drawing")).toBeNull();
    });

    it("holds everything after it was closed and opened again", async () => {
      await store.appendUpdates([{ documentId: await documentId(), at: 1, bytes: BYTES }]);
      await store.enter({ sheet, secretSha256: secretOf(sheet, "draw"), device: device(1), at: 5 });
      store = await under.reopen();
      expect((await store.loadDocument(sheet, "drawing"))?.updates).toEqual([
        Uint8Array.of(1),
        BYTES,
      ]);
      expect(await store.grantOf(device(1), sheet)).toMatchObject({ role: "draw" });
    });

    it("lets a device in by a secret, to this sheet and as often as it likes", async () => {
      const entry = { sheet, secretSha256: secretOf(sheet, "view"), device: device(2), at: 5 };
      expect(await store.enter(entry)).toMatchObject({ role: "view" });
      expect(await store.enter(entry)).toMatchObject({ role: "view" });
      expect(await store.grantOf(device(2), sheet)).toMatchObject({ role: "view" });
      expect(await store.grantOf(device(3), sheet)).toBeNull();
      expect(await store.grantOf(device(2), newSheetId())).toBeNull();
    });

    it("does not let a device in by another sheet's secret", async () => {
      const other = newSheetId();
      await store.createSheet(newSheetOf(other));
      const entry = { sheet, secretSha256: secretOf(other, "owner"), device: device(4), at: 5 };
      expect(await store.enter(entry)).toBeNull();
      expect(await store.grantOf(device(4), other)).toBeNull();
    });

    it("gives a device the strongest of its links", async () => {
      const at = 5;
      for (const role of ["view", "draw", "critique"] as const) {
        const secretSha256 = secretOf(sheet, role);
        await store.enter({ sheet, secretSha256, device: device(5), at });
      }
      expect(await store.grantOf(device(5), sheet)).toMatchObject({ role: "draw" });
    });

    it("lists links from the oldest on, with what became of them", async () => {
      const link = linkOf(sheet, "draw", "later");
      await store.addLink({ ...link, at: 99 });
      await store.revokeLink(sheet, link.link, 100);
      const listed = await store.listLinks(sheet);
      expect(
        listed
          .slice(0, 4)
          .map(({ role }) => role)
          .sort(),
      ).toEqual([...ROLES].sort());
      expect(listed[4]).toEqual({
        ...{ link: link.link, role: "draw", label: "later", createdAt: 99, revokedAt: 100 },
      });
    });

    it("shuts a revoked link, for those who came by it and those who would", async () => {
      const secretSha256 = secretOf(sheet, "draw");
      const grant = await store.enter({ sheet, secretSha256, device: device(6), at: 5 });
      expect(await store.revokeLink(sheet, grant?.link ?? "", 6)).toBe("revoked");
      expect(await store.grantOf(device(6), sheet)).toBeNull();
      expect(await store.enter({ sheet, secretSha256, device: device(7), at: 7 })).toBeNull();
      expect(await store.revokeLink(sheet, grant?.link ?? "", 8)).toBe("no-such-link");
    });

    it("does not revoke another sheet's link, nor the last owner's", async () => {
      const other = newSheetId();
      await store.createSheet(newSheetOf(other));
      const owners = async (of: SheetId) =>
        (await store.listLinks(of)).filter(({ role }) => role === "owner");
      const [foreign] = await owners(other);
      expect(await store.revokeLink(sheet, foreign?.link ?? "", 6)).toBe("no-such-link");
      const [own] = await owners(sheet);
      await expect(store.revokeLink(sheet, own?.link ?? "", 6)).rejects.toMatchObject({
        code: "last-owner",
      });
      await store.addLink({ ...linkOf(sheet, "owner", "second"), at: 7 });
      expect(await store.revokeLink(sheet, own?.link ?? "", 8)).toBe("revoked");
    });

    it("keeps bytes beside a sheet, once, and for no other sheet", async () => {
      const blob = blobOf(sheet, "one", BYTES);
      expect(await store.putBlob(blob)).toBe("stored");
      expect(await store.putBlob({ ...blob, mediaType: "image/png", at: 9 })).toBe("stored");
      const kept = { mediaType: "image/webp", bytes: BYTES }; // as it first came
      expect(await store.loadBlob(sheet, "one")).toEqual(kept);
      expect(await store.loadBlob(sheet, "two")).toBeNull();
      const other = newSheetId();
      await store.createSheet(newSheetOf(other));
      expect(await store.loadBlob(other, "one")).toBeNull();
      expect(await store.putBlob(blobOf(other, "one", BYTES))).toBe("stored");
      store = await under.reopen();
      expect(await store.loadBlob(sheet, "one")).toEqual(kept);
    });

    it("keeps no more bytes beside a sheet than it may have, also when many come at once", async () => {
      const many = ["a", "b", "c", "d", "e", "f"].map((name) => ({
        ...blobOf(sheet, name, new Uint8Array(100)),
        sheetBytes: 350,
      }));
      const outcomes = await Promise.all(many.map((blob) => store.putBlob(blob)));
      expect(outcomes.toSorted()).toEqual([
        ...Array(3).fill("sheet-full"),
        ...Array(3).fill("stored"),
      ]);
      const kept = await Promise.all(many.map(({ blob }) => store.loadBlob(sheet, blob)));
      expect(kept.map((blob) => (blob === null ? "sheet-full" : "stored"))).toEqual(outcomes);
      // What is there already takes no room, and what fits still comes in.
      const first = many[outcomes.indexOf("stored")];
      expect(first && (await store.putBlob(first))).toBe("stored");
      const small = { ...blobOf(sheet, "small", new Uint8Array(50)), sheetBytes: 350 };
      expect(await store.putBlob(small)).toBe("stored");
      expect(await store.putBlob({ ...small, blob: "smaller" })).toBe("sheet-full");
    });

    it("keeps no bytes beside a sheet that there is not", async () => {
      const nowhere = newSheetId();
      await expect(store.putBlob(blobOf(nowhere, "one", BYTES))).rejects.toThrow(StoreError);
      expect(await store.loadBlob(nowhere, "one")).toBeNull();
    });

    it("keeps text as it was written", async () => {
      const label = "Zoë’s tablet · 走る · ½ speed";
      await store.addLink({ ...linkOf(sheet, "view", label), at: 9 });
      expect((await store.listLinks(sheet)).at(-1)?.label).toBe(label);
    });
  });
}

function blobOf(sheet: SheetId, blob: string, bytes: Uint8Array): NewBlob {
  return { sheet, blob, mediaType: "image/webp", bytes, at: 5, sheetBytes: 10_000 };
}

function device(number: number): Uint8Array {
  return sha256(`device ${number}`);
}

function secretOf(sheet: SheetId, role: Role): Uint8Array {
  return sha256(`${sheet} ${role}`);
}

function linkOf(sheet: SheetId, role: Role, label: string): Omit<NewLink, "at"> {
  return {
    link: newLinkId(),
    sheet,
    role,
    label,
    secretSha256: secretOf(sheet, role).map((b) => b ^ label.length),
  };
}

function newSheetOf(sheet: SheetId): NewSheet {
  return {
    sheet,
    at: 1,
    documents: { drawing: Uint8Array.of(1), critique: Uint8Array.of(2) },
    links: ROLES.map((role) => ({
      link: newLinkId(),
      role,
      label: "",
      secretSha256: secretOf(sheet, role),
    })),
  };
}
