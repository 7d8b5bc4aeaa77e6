import { describe, expect, it } from "vitest";
import { CRITIQUE, DRAWING } from "../../../lib/sheet/schema";
import { DOCUMENT_ROOTS } from "../../../shared/document-shape";

describe("the maps that the hub lets into a document", () => {
  it("are those that the sheet's documents have, and no others", () => {
    expect([...DOCUMENT_ROOTS.drawing].sort()).toEqual(Object.values(DRAWING).sort());
    expect([...DOCUMENT_ROOTS.critique].sort()).toEqual(Object.values(CRITIQUE).sort());
  });
});
