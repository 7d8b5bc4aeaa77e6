import { randomBytes } from "node:crypto";
import { sketchFront } from "./sketch-front.mjs";
import { sketchSide } from "./sketch-side.mjs";

const LEG = 420; // panel units
const GROUND = 1080; // panel units down the view

/**
 * The captured example as a sheet file, drawn over by the pencil, with two slips for the board to
 * find: a planted foot that moves and a down that comes late.
 */
export async function pictureSheet() {
  const { tsImport } = await import("tsx/esm/api");
  const { capturedExample, toSheetFile } = await tsImport(
    "../../lib/sheet/index.ts",
    import.meta.url,
  );
  const file = toSheetFile(capturedExample(newId));
  const panels = file.panels.map((panel, i) => drawn(slipped(panel, i, file.panels), i));
  return {
    ...file,
    head: { ...file.head, title: "Brindle goes home", shot: "Low Tide Post, 12" },
    panels,
  };
}

const newId = () => randomBytes(6).toString("base64url");

function slipped(panel, i, panels) {
  if (i !== SLIP) return panel;
  const foot = ["right-ankle", "right-heel", "right-ball", "right-toe", "right-knee"];
  const moved = foot.flatMap((joint) => {
    const mark = panel.marks.side[joint];
    if (mark === undefined) return [];
    const share = joint === "right-knee" ? 0.5 : 1;
    return [[joint, [mark[0] + share * 0.09 * LEG, mark[1], mark[2]]]];
  });
  const late = Math.min(panel.frame + 1, (panels[i + 1]?.frame ?? Number.POSITIVE_INFINITY) - 1);
  return {
    ...panel,
    frame: late,
    marks: { ...panel.marks, side: { ...panel.marks.side, ...Object.fromEntries(moved) } },
  };
}

const SLIP = 5; // the second step's down

function drawn(panel, i) {
  const views = { side: sketchSide, front: sketchFront };
  const ink = Object.entries(views).map(([view, sketch]) => {
    const joints = Object.entries(panel.marks[view]).map(([joint, [x, y]]) => [
      joint,
      [x / LEG, (GROUND - y) / LEG],
    ]);
    const strokes = sketch(Object.fromEntries(joints), 11 + i * 7);
    return [view, strokes.map((stroke, z) => ({ id: newId(), z, ...stroke }))];
  });
  return { ...panel, ink: Object.fromEntries(ink) };
}
