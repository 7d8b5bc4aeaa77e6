import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import {
  movePicture,
  ORIGIN,
  openSheetView,
  type PanelId,
  type PictureUnder,
  placeMark,
  putPicture,
  readSheet,
  readSheetCounting,
  removePanel,
  SheetError,
  takePicture,
  writeSheet,
} from "../../../lib/sheet";
import { meet, type Peer, peers } from "../../support/peers";

const OLD = "o".repeat(43); // as long as 32 bytes in base64url
const NEW = "n".repeat(43);
const PLACE = { x: -20, y: 100, width: 720, height: 480, dim: 0.5 };
const under = (picture: string): PictureUnder => ({ picture, ...PLACE });

function atOneSheet(): { ana: Peer; ben: Peer; panels: PanelId[] } {
  const [ana, ben] = peers(2) as [Peer, Peer];
  return { ana, ben, panels: ana.sheet().panels.map(({ id }) => id) };
}

const lyingAt = ({ doc }: Peer, id: PanelId | undefined) =>
  readSheet(doc).panels.find((panel) => panel.id === id)?.pictures;

describe("a picture under the paper", () => {
  it("is put under many panels, moved, dimmed and taken, each one edit of the hand", () => {
    const { ana, panels } = atOneSheet();
    const [first = "", second = "", third = ""] = panels;
    const origins: unknown[] = [];
    ana.doc.on("update", (_update: Uint8Array, origin: unknown) => origins.push(origin));
    putPicture(ana.doc, [first, second], "side", under(OLD));
    movePicture(ana.doc, first, "side", { x: 5, width: 300 });
    movePicture(ana.doc, first, "side", { dim: 0.75 });
    takePicture(ana.doc, second, "side");
    expect(origins).toEqual(Array(4).fill(ORIGIN.hand));
    const moved = { ...under(OLD), x: 5, width: 300, dim: 0.75 };
    expect(lyingAt(ana, first)).toEqual({ side: moved, front: null });
    expect(lyingAt(ana, second)).toEqual({ side: null, front: null });
    expect(lyingAt(ana, third)).toEqual({ side: null, front: null });
  });

  it("comes back with undo, also under all of many panels, and goes with it", () => {
    const { ana, panels } = atOneSheet();
    const [first = ""] = panels;
    putPicture(ana.doc, [first], "front", under(OLD));
    putPicture(ana.doc, panels, "front", under(NEW));
    takePicture(ana.doc, first, "front");
    expect(lyingAt(ana, first)?.front).toBeNull();
    ana.undo.undo();
    expect(lyingAt(ana, first)?.front).toEqual(under(NEW));
    ana.undo.undo();
    expect(panels.map((id) => lyingAt(ana, id)?.front)).toEqual([
      under(OLD),
      ...panels.slice(1).map(() => null),
    ]);
    ana.undo.undo();
    expect(lyingAt(ana, first)?.front).toBeNull();
    ana.undo.redo();
    expect(lyingAt(ana, first)?.front).toEqual(under(OLD));
  });

  it("is one person's or the other's when both put one, never a mixture", () => {
    const { ana, ben, panels } = atOneSheet();
    const [first = ""] = panels;
    putPicture(ana.doc, [first], "side", under(OLD));
    putPicture(ben.doc, [first], "side", { ...under(NEW), x: 400, dim: 0 });
    meet([ana, ben]);
    const both = [under(OLD), { ...under(NEW), x: 400, dim: 0 }];
    expect(both).toContainEqual(lyingAt(ana, first)?.side);
    expect(lyingAt(ben, first)).toEqual(lyingAt(ana, first));
  });

  it("stays when one moves it while the other takes it away", () => {
    const { ana, ben, panels } = atOneSheet();
    const [first = ""] = panels;
    putPicture(ana.doc, [first], "side", under(OLD));
    meet([ana, ben]);
    takePicture(ana.doc, first, "side");
    movePicture(ben.doc, first, "side", { x: 77 });
    meet([ana, ben]);
    expect(lyingAt(ana, first)?.side).toEqual({ ...under(OLD), x: 77 });
    expect(lyingAt(ben, first)).toEqual(lyingAt(ana, first));
  });

  it("is refused before anything is written, and nothing is written where none lies", () => {
    const { ana, panels } = atOneSheet();
    const [first = "", second = ""] = panels;
    putPicture(ana.doc, [first], "side", under(OLD));
    const before = ana.sheet();
    const written: unknown[] = [];
    ana.doc.on("update", (update: Uint8Array) => written.push(update));
    const put = (wrong: Partial<PictureUnder>) => () =>
      putPicture(ana.doc, [first], "side", { ...under(OLD), ...wrong });
    for (const [act, message] of [
      [put({ picture: "../secret" }), /putPicture needs a picture that is \[picture, x, y/],
      [put({ x: Number.NaN }), /got \["o+",null/],
      [put({ width: 0 }), /width and height 24 to 14400/],
      [put({ height: 20_000 }), /width and height 24 to 14400/],
      [put({ dim: 1.5 }), /dim 0 to 1/],
      [() => movePicture(ana.doc, first, "side", { width: -3 }), /movePicture needs/],
    ] as const) {
      expect(act).toThrow(RangeError);
      expect(act).toThrow(message);
    }
    expect(() => putPicture(ana.doc, [second, "nowhere1"], "side", under(NEW))).toThrow(SheetError);
    movePicture(ana.doc, second, "side", { x: 3 });
    takePicture(ana.doc, second, "side");
    expect(written).toEqual([]);
    expect(ana.sheet()).toEqual(before);
  });

  it("survives its panel's removal and return, and being written anew", () => {
    const { ana, panels } = atOneSheet();
    const [first = ""] = panels;
    putPicture(ana.doc, [first], "front", under(OLD));
    removePanel(ana.doc, first);
    ana.undo.undo();
    expect(lyingAt(ana, first)?.front).toEqual(under(OLD));
    const copy = new Y.Doc();
    writeSheet(copy, ana.sheet());
    expect(readSheet(copy)).toEqual(ana.sheet());
  });

  it("that makes no sense in the document is left out and told of", () => {
    const { ana, panels } = atOneSheet();
    const [first = ""] = panels;
    const map = ana.doc.getMap("panels").get(first) as Y.Map<unknown>;
    map.set("picture.side", ["short", 0, 0, 100, 100, 0.5]);
    map.set("picture.back", [OLD, 0, 0, 100, 100, 0.5]);
    const { sheet, skipped } = readSheetCounting(ana.doc);
    expect(sheet.panels.find(({ id }) => id === first)?.pictures.side).toBeNull();
    expect(skipped).toEqual([`${first}.picture.back`, `${first}.picture.side`]);
  });

  it("stays the same object while something else of its panel changes", () => {
    const { ana, panels } = atOneSheet();
    const [first = ""] = panels;
    putPicture(ana.doc, [first], "side", under(OLD));
    const view = openSheetView(ana.doc);
    const pictures = () => view.getSnapshot().panels.find(({ id }) => id === first)?.pictures;
    const before = pictures();
    placeMark(ana.doc, first, "side", "head", { x: 1, y: 2, precision: 3 });
    expect(pictures()).toBe(before);
    movePicture(ana.doc, first, "side", { x: 9 });
    expect(pictures()).not.toBe(before);
    view.close();
  });
});
