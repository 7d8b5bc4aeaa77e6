import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import {
  addPanel,
  amendHead,
  defaultBrief,
  layOut,
  liftMark,
  newPanelId,
  ORIGIN,
  placeMark,
  readSheet,
  relabelPanel,
  removePanel,
  rubOut,
  SCHEMA,
  setHold,
  setPlace,
  slidePanel,
  writeSheet,
} from "../../../lib/sheet";
import { dice } from "../../support/dice";
import { ids } from "../../support/peers";

function laidOut() {
  const doc = new Y.Doc();
  writeSheet(doc, layOut(defaultBrief, ids()));
  const origins: unknown[] = [];
  doc.on("update", (_update: Uint8Array, origin: unknown) => origins.push(origin));
  const [first] = readSheet(doc).panels;
  return { doc, origins, id: first?.id ?? "" };
}

describe("verbs", () => {
  it("each make one update that comes by hand", () => {
    const { doc, origins, id } = laidOut();
    addPanel(doc, "newpanel", { frame: 30, pose: "breakdown", weightOn: null, place: 1.5 });
    slidePanel(doc, id, 2);
    relabelPanel(doc, id, { pose: "down", weightOn: "right" });
    setPlace(doc, id, 0.25);
    setHold(doc, id, 6);
    placeMark(doc, id, "front", "left-toe", { x: 1.5, y: 2.25, precision: 4 });
    liftMark(doc, id, "front", "left-toe");
    amendHead(doc, { title: "Heavy sack", kind: "heavy" });
    removePanel(doc, "newpanel");
    expect(origins).toEqual(Array(9).fill(ORIGIN.hand));
    const sheet = readSheet(doc);
    expect(sheet.panels.find((panel) => panel.id === id)).toMatchObject({
      frame: 2,
      pose: "down",
      weightOn: "right",
      place: 0.25,
      hold: 6,
      marks: { front: {} },
    });
    expect(sheet.head).toMatchObject({ title: "Heavy sack", kind: "heavy" });
  });

  it("write nothing where nothing changes", () => {
    const { doc, origins, id } = laidOut();
    rubOut(doc, ["no-such"]);
    liftMark(doc, id, "side", "head");
    relabelPanel(doc, id, { pose: "contact", weightOn: "left" });
    expect(origins).toEqual([]);
  });

  it("refuse what is no frame, place, mark, pose or head, before anything is written", () => {
    const { doc, origins, id } = laidOut();
    const junk = (value: unknown) => value as never;
    const mark = { x: 1, y: Number.NaN, precision: 1 };
    for (const [act, message] of [
      [() => slidePanel(doc, id, 1.5), /a whole number 1 to 100000, got 1.5/],
      [() => slidePanel(doc, id, 0), /got 0/],
      [
        () => setHold(doc, id, -1),
        /setHold needs a hold that is a whole number 0 to 10000, got -1/,
      ],
      [() => setPlace(doc, id, Number.NaN), /setPlace needs a place/],
      [() => placeMark(doc, id, "side", "head", mark), /\[x, y, precision\], numbers from -131071/],
      [() => relabelPanel(doc, id, { pose: junk("jump"), weightOn: null }), /got "jump"/],
      [() => addPanel(doc, id, { frame: 3, pose: "up", weightOn: null }), /needs a new id/],
      [() => addPanel(doc, "x", { frame: 3, pose: junk("hop"), weightOn: null }), /got "hop"/],
      [() => addPanel(doc, "no id", { frame: 3, pose: "up", weightOn: null }), /an id/],
      [() => amendHead(doc, { framesPerSecond: 0 }), /framesPerSecond.*above 0.*got 0/],
      [() => amendHead(doc, junk({ colour: 1 })), /no field colour/],
    ] as const) {
      expect(act).toThrow(message);
      expect(act).toThrow(RangeError);
    }
    expect(origins).toEqual([]);
  });

  it("let the advance follow the step until somebody sets it", () => {
    const { doc } = laidOut();
    amendHead(doc, { stepLength: 0.9 });
    expect(readSheet(doc).head.advance).toBeCloseTo(0.075, 12);
    amendHead(doc, { framesPerStep: { left: 9, right: 9 } });
    expect(readSheet(doc).head.advance).toBeCloseTo(0.1, 12);
    amendHead(doc, { advance: 0.2 });
    amendHead(doc, { stepLength: 0.6 });
    expect(readSheet(doc).head).toMatchObject({ stepLength: 0.6, advance: 0.2 });
  });
});

describe("a new sheet", () => {
  it("carries its schema", () => {
    expect(laidOut().doc.getMap("sheet").get("schema")).toBe(SCHEMA);
  });
});

describe("a new id", () => {
  it("is eight base64url characters of six random bytes", () => {
    expect(newPanelId(() => Uint8Array.from([0, 0, 0, 255, 255, 255]))).toBe("AAAA____");
    const id = newPanelId(dice(3).bytes);
    const six = Buffer.from(id, "base64url"); // another's reading of base64url (RFC 4648)
    expect(six).toEqual(Buffer.from(dice(3).bytes(6)));
    expect(id).toMatch(/^[A-Za-z0-9_-]{8}$/);
  });

  it("is refused when chance gives too little", () => {
    expect(() => newPanelId(() => new Uint8Array(4))).toThrow(/6 random bytes, got 4/);
  });
});
