import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Reader } from "../../../app/_room/fetch-reader";
import * as reader from "../../../app/_room/reader";
import { openReviewDesk } from "../../../app/_room/review-desk";
import { openCritiqueView, openSheetView, removePanel } from "../../../lib/sheet";
import { peers } from "../../support/peers";

/** A reader that comes when it is let in, or is turned away. */
function lineToReader() {
  let atHand: Reader | null = null;
  const waiting: { letIn(): void; turnAway(): void }[] = [];
  return {
    atHand: () => atHand,
    fetch: () =>
      new Promise<Reader>((arrive, fail) => {
        waiting.push({
          letIn() {
            atHand = reader;
            arrive(reader);
          },
          turnAway: () => fail(new Error("the line is down")),
        });
      }),
    letIn: () => waiting.shift()?.letIn(),
    turnAway: () => waiting.shift()?.turnAway(),
  };
}

function openDesk(line = lineToReader()) {
  const [ana] = peers(1);
  if (ana === undefined) throw new Error("there is nobody");
  const sheet = openSheetView(ana.doc);
  const desk = openReviewDesk(sheet, openCritiqueView(ana.critique), line);
  const readings = () => desk.get()?.hipCurve.points.length ?? null;
  const removeFirst = () => removePanel(ana.doc, ana.sheet().panels[0]?.id ?? "");
  return { desk, line, readings, removeFirst, panels: () => ana.sheet().panels.length };
}

describe("the desk that reads the sheet", () => {
  const frames: (() => void)[] = [];
  const nextFrame = () => {
    for (const run of frames.splice(0)) run();
  };
  beforeEach(() => {
    vi.stubGlobal("requestAnimationFrame", (run: () => void) => frames.push(run));
    vi.stubGlobal("cancelAnimationFrame", () => frames.splice(0));
  });
  afterEach(() => vi.unstubAllGlobals());

  it("knows nothing of a walk until what reads it is fetched, however the sheet changes", async () => {
    const { desk, line, readings, removeFirst, panels } = openDesk();
    removeFirst();
    nextFrame();
    expect(desk.get()).toBeNull();
    expect(desk.reader.get()).toBe("awaited");
    const read = desk.read();
    line.letIn();
    expect((await read).hipCurve.points).toHaveLength(panels());
    expect(readings()).toBe(panels());
    expect(desk.reader.get()).toBe("at-hand");
    removeFirst();
    nextFrame();
    expect(readings()).toBe(panels());
  });

  it("reads at once where it was fetched for the sheet before", () => {
    const line = lineToReader();
    void line.fetch();
    line.letIn();
    const { desk, readings, panels } = openDesk(line);
    expect(desk.reader.get()).toBe("at-hand");
    expect(readings()).toBe(panels());
  });

  it("says that it could not be fetched, and reads when it is asked for again", async () => {
    const { desk, line, readings, panels } = openDesk();
    const first = desk.read();
    line.turnAway();
    await expect(first).rejects.toThrow("the line is down");
    expect([desk.get(), desk.reader.get()]).toEqual([null, "unfetched"]);
    const second = desk.read();
    expect(desk.reader.get()).toBe("asked-again");
    line.letIn();
    await second;
    expect(readings()).toBe(panels());
  });

  it("keeps what it brought to itself while a pen is down, and tells it when the pen lifts", async () => {
    const { desk, line, readings, panels } = openDesk();
    desk.hold();
    const read = desk.read();
    line.letIn();
    expect((await read).hipCurve.points).toHaveLength(panels()); // whoever asked has it
    expect(readings()).toBeNull();
    desk.release();
    nextFrame();
    expect(readings()).toBe(panels());
  });

  it("tells nobody any more once it is closed", async () => {
    const { desk, line } = openDesk();
    const heard = vi.fn();
    desk.subscribe(heard);
    desk.reader.subscribe(heard);
    const read = desk.read();
    desk.close();
    line.letIn();
    await read;
    const failing = desk.read();
    line.turnAway();
    await expect(failing).rejects.toThrow("the line is down");
    expect(heard).not.toHaveBeenCalled();
  });
});
