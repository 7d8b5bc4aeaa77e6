import { describe, expect, it } from "vitest";
import {
  addPanel,
  amendHead,
  type Brief,
  defaultBrief,
  layOut,
  leastFrames,
  planRetime,
  retime,
  slidePanel,
} from "../../../lib/sheet";
import reference from "../../reference/even-step.json";
import { ids, meet, type Peer, peers } from "../../support/peers";

function alone(over: Partial<Brief> = {}): Peer {
  return peers(1, layOut({ ...defaultBrief, ...over }, ids()))[0] as Peer;
}

const framesOf = (peer: Peer) => peer.sheet().panels.map(({ frame }) => frame);
const idAt = (peer: Peer, frame: number) =>
  peer.sheet().panels.find((panel) => panel.frame === frame)?.id ?? "";
const strip = (left: number, right = left) =>
  ({ scope: "strip", framesPerStep: { left, right } }) as const;

describe("a walk retimed", () => {
  it.each(reference.rows)(
    "to $framesPerStep frames a step, exposed $exposure, stands as the handbook has it",
    ({ framesPerStep, exposure, frames }) => {
      const ana = alone({ exposure: exposure === 2 ? 2 : 1 });
      retime(ana.doc, strip(framesPerStep));
      expect(framesOf(ana)).toEqual(frames);
      expect(ana.sheet().head).toMatchObject({
        framesPerStep: { left: framesPerStep, right: framesPerStep },
        loop: { from: 1, to: frames.at(-1) },
      });
    },
  );

  it("keeps each pose's share of its step", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 4), 3); // 1/6 of 12
    slidePanel(ana.doc, idAt(ana, 22), 23); // 5/6 of 12
    retime(ana.doc, strip(18, 24));
    expect(framesOf(ana)).toEqual([1, 4, 10, 15, 19, 25, 31, 39, 43]);
  });

  it("moves nothing when the tempo is the one it has", () => {
    const ana = alone({ framesPerStep: { left: 13, right: 11 } });
    slidePanel(ana.doc, idAt(ana, 8), 7); // half-way between two frames: either will do
    expect(planRetime(ana.sheet(), strip(13, 11))).toEqual({ frames: new Map(), head: {} });
  });

  it("brings steps that were moved by hand to the tempo asked for", () => {
    const ana = alone();
    slidePanel(ana.doc, idAt(ana, 13), 15);
    retime(ana.doc, strip(12));
    expect(framesOf(ana).filter((_, at) => at % 4 === 0)).toEqual([1, 13, 25]);
  });

  it("stretches the lead-in with the foot that carries it, and moves the loop along", () => {
    const ana = alone({ leadIn: true });
    expect(framesOf(ana).slice(0, 3)).toEqual([1, 7, 13]);
    retime(ana.doc, strip(12, 16));
    expect(framesOf(ana).slice(0, 4)).toEqual([1, 9, 17, 20]);
    expect(ana.sheet().head.loop).toEqual({ from: 17, to: 45 });
  });

  it("carries what follows the last contact", () => {
    const ana = alone();
    addPanel(ana.doc, "after001", { frame: 28, pose: "down", weightOn: "left" });
    retime(ana.doc, strip(16));
    expect(framesOf(ana).at(-1)).toBe(37);
  });

  it("is one step to undo, the head with it", () => {
    const ana = alone();
    const before = ana.sheet();
    retime(ana.doc, strip(16, 20));
    ana.undo.undo();
    expect(ana.sheet()).toEqual(before);
    expect(ana.undo.canUndo()).toBe(false);
  });

  it("lets the same ground pass under a stride, whether the advance was set or follows", () => {
    const ana = alone();
    const stride = ({ head }: ReturnType<Peer["sheet"]>) =>
      head.advance * (head.framesPerStep.left + head.framesPerStep.right);
    retime(ana.doc, strip(16, 20));
    expect(stride(ana.sheet())).toBeCloseTo(2 * 0.78, 12);
    amendHead(ana.doc, { advance: 0.1 });
    retime(ana.doc, strip(9));
    expect(stride(ana.sheet())).toBeCloseTo(0.1 * 36, 12);
  });

  it("refuses a step with fewer frames than panels, and changes nothing", () => {
    const ana = alone({ exposure: 2 });
    const before = ana.sheet();
    expect(leastFrames(before, "strip")).toEqual({ left: 8, right: 8 }); // four panels on twos
    expect(() => retime(ana.doc, strip(8, 7))).toThrow(
      "retime needs 8 frames or more for a right step, got 7",
    );
    expect(() => retime(ana.doc, strip(12.5))).toThrow(/whole number 1 to 1000/);
    expect(ana.sheet()).toEqual(before);
  });
});

describe("one step retimed", () => {
  it("moves only what comes after its contact", () => {
    const ana = alone();
    retime(ana.doc, { scope: { step: idAt(ana, 13) }, frames: 16 });
    expect(framesOf(ana)).toEqual([1, 4, 7, 10, 13, 17, 21, 25, 29]);
    expect(ana.sheet().head).toMatchObject({
      framesPerStep: { left: 12, right: 16 },
      loop: { from: 1, to: 29 },
    });
  });

  it("shifts the steps behind it", () => {
    const ana = alone();
    retime(ana.doc, { scope: { step: idAt(ana, 1) }, frames: 8 });
    expect(framesOf(ana)).toEqual([1, 3, 5, 7, 9, 12, 15, 18, 21]);
  });

  it("leaves the head's frames per step while steps of that side differ", () => {
    const ana = alone();
    addPanel(ana.doc, "next0001", { frame: 37, pose: "contact", weightOn: "right" });
    retime(ana.doc, { scope: { step: idAt(ana, 1) }, frames: 16 });
    expect(framesOf(ana).filter((_, at) => at % 4 === 0)).toEqual([1, 17, 29]);
    expect(framesOf(ana).at(-1)).toBe(41);
    expect(ana.sheet().head.framesPerStep).toEqual({ left: 12, right: 12 });
  });

  it("plans nothing for a step without a next contact", () => {
    const ana = alone();
    const plan = planRetime(ana.sheet(), { scope: { step: idAt(ana, 25) }, frames: 16 });
    expect(plan).toEqual({ frames: new Map(), head: {} });
  });
});

describe("two who retime at once", () => {
  it("end with one strip and every panel", () => {
    const [ana, ben] = peers(2) as [Peer, Peer];
    retime(ana.doc, strip(16));
    retime(ben.doc, strip(20));
    meet([ana, ben]);
    expect(ana.sheet()).toEqual(ben.sheet());
    expect(ana.sheet().panels).toHaveLength(9);
  });
});
