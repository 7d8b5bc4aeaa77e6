/** `node scripts/demo-picture.mjs`: takes the start page's picture of the demo, from its own strokes. */
import { writeFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";
import { register } from "tsx/esm/api";
import { inRoot } from "./house/root.mjs";

register();
const { drawPanel, groundUnder, SvgSurface } = await import("../lib/export/index.ts");
const { brindleExample } = await import("../lib/sheet/index.ts");

const FROM = 2; // the first contact: stand and lead-in stay at home
const SHOWN = 5; // contact, down, passing, up, contact
const VIEW = { x: 60, y: 195, width: 620, height: 935 }; // panel units: the figure and its ground
const GAP = 40; // panel units
const SCALE = 0.23; // pixels a panel unit: twice what the page shows, for fine screens

let drawn = 0;
const sheet = brindleExample(() => String(drawn++).padStart(8, "0"));
const panels = sheet.panels.slice(FROM, FROM + SHOWN);
const across = SHOWN * VIEW.width + (SHOWN - 1) * GAP;
const surface = new SvgSurface(Math.round(across * SCALE), Math.round(VIEW.height * SCALE));
surface.scale(SCALE, SCALE);
const stretchOf = groundUnder(sheet);
for (const [index, panel] of panels.entries()) {
  surface.save();
  surface.translate(index * (VIEW.width + GAP) - VIEW.x, -VIEW.y);
  const drawing = { panel, view: "side", stretch: stretchOf(panel), pixel: 4, window: VIEW };
  drawPanel(surface, { ...drawing, marks: false });
  surface.restore();
}
const picture = new Resvg(surface.toSvg("Brindle walks")).render();
writeFileSync(inRoot("app/_start/brindle.png"), picture.asPng());
console.log(`app/_start/brindle.png, ${picture.width} × ${picture.height}`);
