/** `node scripts/demo-picture.mjs`: takes the start page's picture of the demo, from its own strokes. */
import { writeFileSync } from "node:fs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { inRoot } from "./house/root.mjs";

const FROM = 2; // the first contact: stand and lead-in stay at home
const SHOWN = 5; // contact, down, passing, up, contact
const VIEW = { x: 60, y: 195, width: 620, height: 935 }; // panel units: the figure and its ground
const GAP = 40; // panel units
const SCALE = 0.23; // pixels a panel unit: twice what the page shows, for fine screens
const PICTURE = "app/_start/brindle.png";

await plainly(async () => {
  await ensurePackages();
  const { register } = await import("tsx/esm/api");
  register();
  const { Resvg } = await import("@resvg/resvg-js");
  const picture = new Resvg(await drawn()).render();
  writeFileSync(inRoot(PICTURE), picture.asPng());
  console.log(`${PICTURE}, ${picture.width} × ${picture.height}`);
});

async function drawn() {
  const { drawPanel, groundUnder, SvgSurface } = await import("../lib/export/index.ts");
  const { brindleExample } = await import("../lib/sheet/index.ts");
  let made = 0;
  const sheet = brindleExample(() => String(made++).padStart(8, "0"));
  const stretchOf = groundUnder(sheet);
  const across = SHOWN * VIEW.width + (SHOWN - 1) * GAP;
  const surface = new SvgSurface(Math.round(across * SCALE), Math.round(VIEW.height * SCALE));
  surface.scale(SCALE, SCALE);
  for (const [index, panel] of sheet.panels.slice(FROM, FROM + SHOWN).entries()) {
    surface.save();
    surface.translate(index * (VIEW.width + GAP) - VIEW.x, -VIEW.y);
    const drawing = { panel, view: "side", stretch: stretchOf(panel), pixel: 4, window: VIEW };
    drawPanel(surface, { ...drawing, marks: false });
    surface.restore();
  }
  return surface.toSvg("Brindle walks");
}
