import { randomBytes } from "node:crypto";
import { sketchFront } from "./sketch-front.mjs";
import { sketchSide } from "./sketch-side.mjs";

const LEG = 420; // panel units
const GROUND = 1080; // panel units down the view

/**
 * The captured example as a sheet file, drawn over by the pencil, with two slips for the board to
 * find: hips that do not rise, and a planted foot that moves.
 */
export async function pictureSheet() {
  const { tsImport } = await import("tsx/esm/api");
  const { capturedExample, toSheetFile } = await tsImport(
    "../../lib/sheet/index.ts",
    import.meta.url,
  );
  const file = toSheetFile(capturedExample(newId));
  const panels = file.panels.map((panel, i) => drawn(slipped(panel, i), i));
  return {
    ...file,
    head: { ...file.head, title: "Brindle goes home", shot: "Low Tide Post, 12" },
    panels,
  };
}

const newId = () => randomBytes(6).toString("base64url");

/** What is moved where, leg lengths: x the way he goes, y up. */
const SLIPS = {
  2: { joints: /head|neck|shoulder|elbow|wrist|hip/, by: [0, -0.045] }, // no rise after the down
  3: { joints: /head|neck|shoulder|elbow|wrist|hip/, by: [0, -0.05] },
  5: { joints: /right-(ankle|heel|ball|toe)/, by: [0.09, 0] }, // put down further on than it stays
};

function slipped(panel, i) {
  const slip = SLIPS[i];
  if (slip === undefined) return panel;
  const moved = ([joint, [x, y, precision]]) => {
    const [dx, dy] = slip.joints.test(joint) ? slip.by : [0, 0];
    return [joint, [x + dx * LEG, y - dy * LEG, precision]];
  };
  const marks = Object.fromEntries(
    Object.entries(panel.marks).map(([view, of]) => {
      const along = view === "front" && slip.by[0] !== 0; // from ahead, a slip along the way is not seen
      return [view, along ? of : Object.fromEntries(Object.entries(of).map(moved))];
    }),
  );
  return { ...panel, marks };
}

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
