import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { MIGRATIONS, type Migrations, migrate, prepareCritique, SCHEMA } from "../../../lib/sheet";

/** Two steps that never were: the shot was once called "scene", and notes had no text. */
const UP_TO_3: Migrations = {
  to: 3,
  steps: [
    {
      from: 2,
      drawing: (doc) => doc.getMap("sheet").set("credit", `${doc.getMap("sheet").get("shot")}!`),
      critique: (doc) => doc.getMap("notes").set("first", "looked at"),
    },
    {
      from: 1,
      drawing: (doc) => {
        const head = doc.getMap("sheet");
        head.set("shot", head.get("scene"));
        head.delete("scene");
      },
      critique: () => {},
    },
  ],
};

function drawing(head: Readonly<Record<string, unknown>>): Y.Doc {
  const doc = new Y.Doc();
  for (const [name, value] of Object.entries(head)) doc.getMap("sheet").set(name, value);
  return doc;
}

const headOf = (doc: Y.Doc) => doc.getMap("sheet").toJSON();

describe("a document of another schema", () => {
  it("goes up every step, oldest first, in one transaction", () => {
    const doc = drawing({ schema: 1, scene: "sq040" });
    let updates = 0;
    doc.on("update", () => updates++);
    migrate(doc, "drawing", UP_TO_3);
    expect(headOf(doc)).toEqual({ schema: 3, shot: "sq040", credit: "sq040!" });
    expect(updates).toBe(1);
  });

  it("goes up from the middle, and each kind its own way", () => {
    const critique = drawing({ schema: 2 });
    migrate(critique, "critique", UP_TO_3);
    expect(critique.getMap("notes").toJSON()).toEqual({ first: "looked at" });
    expect(headOf(critique)).toEqual({ schema: 3 });
  });

  it("is refused when it is newer, and is as it was", () => {
    const doc = drawing({ schema: SCHEMA + 1, scene: "sq040" });
    expect(() => migrate(doc, "drawing")).toThrow(
      expect.objectContaining({
        code: "newer-version",
        message: `expected schema up to ${SCHEMA}, got ${SCHEMA + 1}`,
      }),
    );
    expect(headOf(doc)).toEqual({ schema: SCHEMA + 1, scene: "sq040" });
  });

  it("is not touched when a step on its way is missing", () => {
    const doc = drawing({ schema: 1, scene: "sq040" });
    const gap = { to: 3, steps: UP_TO_3.steps.filter(({ from }) => from === 1) };
    expect(() => migrate(doc, "drawing", gap)).toThrow("migrate needs a step from schema 2");
    expect(headOf(doc)).toEqual({ schema: 1, scene: "sq040" });
  });
});

describe("a document of today's schema", () => {
  it("is left alone, and so is one whose number cannot be read", () => {
    const today = new Y.Doc();
    prepareCritique(today);
    for (const doc of [today, drawing({}), drawing({ schema: "two" }), drawing({ schema: 0 })]) {
      doc.on("update", () => expect.unreachable("nothing was to be written"));
      migrate(doc, "critique");
    }
  });

  it("is reached from every older one", () => {
    const from = MIGRATIONS.steps.map((step) => step.from).sort((a, b) => a - b);
    expect(from).toEqual(Array.from({ length: SCHEMA - 1 }, (_, index) => index + 1));
    expect(MIGRATIONS.to).toBe(SCHEMA);
  });
});
