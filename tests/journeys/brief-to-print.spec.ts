import { expect, ownBoard, test } from "../support/journey";
import { FIGURE_LEG, type FigurePose, tapsFor } from "../support/journey-figure";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import { choosePage, darkPixels, download, pngHead, readSvg } from "../support/journey-print";
import { allSaved, framesOf, settled } from "../support/journey-sheet";
import { takePen } from "../support/pen";

const board = ownBoard();

/** Contact to the next contact, by frame. The hips are lower at passing (frame 7) than at contact. */
const DIPPING_STEP: Readonly<Record<number, FigurePose>> = {
  1: { hipY: 650, left: { x: 510 }, right: { x: 200 } },
  4: { hipY: 675, left: { x: 450 }, right: { x: 170, lift: 30 } },
  7: { hipY: 700, left: { x: 360 }, right: { x: 300, lift: 80 } },
  10: { hipY: 640, left: { x: 260 }, right: { x: 430, lift: 60 } },
  13: { hipY: 650, left: { x: 200 }, right: { x: 510 } },
};
const DIP_PERCENT = (100 * (700 - 650)) / FIGURE_LEG;

test("a walk goes from its brief to a printed sheet", async ({ newcomer }) => {
  test.slow();
  const page = await newcomer();
  const papers = (frame: number) => paperAt(page, frame);

  await test.step("the brief lays out the labelled strip", async () => {
    await page.goto(board.url);
    await page.getByLabel("Name of the walk").fill("Brindle & the parcels");
    await page.getByLabel("Shot").fill("A 12");
    await page.getByLabel("Frames per second").fill("24");
    await page.getByLabel("Drawn").selectOption("on ones");
    await page.getByLabel("Frames per step, left").fill("12");
    await page.getByLabel("right", { exact: true }).fill("12");
    await expect(page.getByText("The strip will hold frames")).toContainText(
      "1 4 7 10 13 16 19 22 25",
    );
    await page.getByRole("button", { name: "Lay out the strip" }).click();
    await settled(page);
    expect(await framesOf(page)).toEqual([1, 4, 7, 10, 13, 16, 19, 22, 25]);
    await expect(page.getByRole("article")).toHaveCount(9);
    for (const label of ["frame 1, contact, weight on left", "frame 22, up, weight on right"]) {
      await expect(page.getByRole("article", { name: label })).toBeVisible();
    }
  });

  const pen = await takePen(page);
  await test.step("a pen draws on two panels", async () => {
    for (const frame of [1, 4]) {
      expect(await inkOn(papers(frame))).toBe(0);
      await pen.draw(await onScreen(papers(frame), across(400)));
      await expect.poll(() => inkOn(papers(frame))).toBeGreaterThan(50);
    }
    await allSaved(page);
  });

  await test.step("joints are marked by tapping where the tray asks for them", async () => {
    await page.keyboard.press("m");
    const asked = page.getByRole("region", { name: "Joints, side" }).getByRole("status");
    for (const [frame, pose] of Object.entries(DIPPING_STEP)) {
      const [first, ...rest] = await onScreen(papers(Number(frame)), tapsFor(pose));
      if (first !== undefined) await pen.tap(first);
      await expect(asked).toHaveText("● Next: left hip.");
      for (const tap of rest) await pen.tap(tap);
      await expect(asked).toHaveText("Quick set done; more marks refine. ◆ Next: right ball.");
    }
    await allSaved(page);
  });

  const remark = page.getByRole("article").filter({ hasText: "dips at passing" });
  const sentence = remark.getByText(/^At the left passing the hips lie/);
  await test.step("the remark stands in the margin and on the panel", async () => {
    await expect(remark.getByRole("heading")).toContainText("will show: Left step dips at passing");
    const told = ((await sentence.textContent()) ?? "").replaceAll("\u00a0", " ");
    expect(told).toMatch(/ ± [\d.]+ % of a leg below the contact; the trade has them above it/);
    const percent = Number(/lie ([\d.]+)/.exec(told)?.[1]);
    // Half a screen pixel of the tap is 0.6 % of a leg at this size, at each of the two poses.
    expect(Math.abs(percent - DIP_PERCENT)).toBeLessThan(1.5);
    await expect(
      page.getByRole("button", {
        name: /1 will show · 1 may show at passing, frame 7: open the remarks/,
      }),
    ).toBeVisible();
  });

  await test.step("the strip plays in a loop until the space bar stops it", async () => {
    await page.getByRole("button", { name: "Play the strip" }).click();
    const stage = page.getByRole("region", { name: "The strip at speed" });
    const frames: number[] = [];
    // A busy machine may let us look only once or twice a round: then it takes more rounds.
    const wentRound = async () => {
      frames.push(Number(await stage.locator("p b").textContent()));
      const round = frames.some((frame, at) => frame < (frames[at - 1] ?? frame));
      return round && new Set(frames).size > 3;
    };
    await expect.poll(wentRound, { intervals: [40], timeout: 30_000 }).toBe(true);
    // Frame 25 is frame 1 again: the loop does not show it twice.
    expect(Math.max(...frames)).toBeLessThan(25);
    await page.keyboard.press("Space");
    await expect(stage).toBeHidden();
  });

  await test.step("the print holds what the board shows", async () => {
    const told = ((await sentence.textContent()) ?? "").replaceAll("\u00a0", " ");
    await page.getByRole("button", { name: "Print the sheet" }).click();
    const dialog = page.getByRole("dialog", { name: "Print the sheet" });
    await choosePage(dialog, /^One picture/);
    await expect(
      dialog.getByRole("img", { name: "Preview of the annotated sheet", exact: true }),
    ).toBeVisible();

    const reader = await page.context().newPage(); // the files are looked into away from the board
    const svg = await download(page, dialog, /^SVG/);
    expect(svg.name).toBe("Brindle & the parcels.svg");
    const { fault, texts, fetched } = await readSvg(reader, svg.bytes.toString("utf8"));
    expect(fault).toBeNull();
    expect(fetched).toEqual([]);
    const words = texts.map(({ text }) => text.replaceAll("\u00a0", " "));
    expect(words).toContain("Brindle & the parcels");
    expect(words.join(" ")).toContain(told);
    const ruler = frameNumbers(texts);
    expect(ruler.map(({ text }) => text)).toEqual("1 4 7 10 13 16 19 22 25".split(" "));
    expect(ruler).toEqual(ruler.toSorted((one, other) => one.x - other.x));

    const png = await download(page, dialog, /^PNG, 1920 wide/);
    const size = pngHead(png.bytes);
    expect(size.width).toBe(1920);
    expect(size.height).toBeGreaterThan(1000);
    // On each side view's paper: where pencil lines run, and where legs stand. Unmarked papers say
    // "not drawn yet" between the two, and are bare there.
    const bare = texts.filter(({ text }) => text === "not drawn yet");
    const middle = Math.min(...bare.map(({ y }) => y));
    const bands = { pencil: { y: middle - 110, height: 60 }, legs: { y: middle + 12, height: 60 } };
    const darkIn = (band: keyof typeof bands) =>
      darkPixels(
        reader,
        png.bytes,
        ruler.map(({ x }) => roundPart({ x: x - 80, width: 160, ...bands[band] })),
      );
    const legs = await darkIn("legs");
    expect(Math.min(...legs.slice(0, 5))).toBeGreaterThan(20);
    expect(legs.slice(5)).toEqual([0, 0, 0, 0]);
    const pencil = await darkIn("pencil");
    expect(Math.min(...pencil.slice(0, 2))).toBeGreaterThan(20);
    expect(pencil.slice(5)).toEqual([0, 0, 0, 0]);
    const [leftEdge] = await darkPixels(reader, png.bytes, [
      { x: 0, y: 0, width: 20, height: size.height },
    ]);
    expect(leftEdge).toBe(0);
    await dialog.getByRole("button", { name: "Close" }).click();
    await expect(dialog).toBeHidden();
  });
});

test("a brief with a lead-in lays out the stand and the lead-in before the loop", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await page.goto(board.url);
  await page.getByLabel("With a stand and a lead-in before the loop").check();
  await page.getByRole("button", { name: "Lay out the strip" }).click();
  await settled(page);
  expect(await framesOf(page)).toEqual([1, 7, 13, 16, 19, 22, 25, 28, 31, 34, 37]);
  const panels = page.getByRole("article", { name: /^frame \d/ });
  for (const [at, name] of [
    /^frame 1, stand(?!, weight)/,
    /^frame 7, lead-in, weight on right/,
    /^frame 13, contact, weight on left/,
    /^frame 16, down, weight on left/,
  ].entries()) {
    await expect(panels.nth(at)).toHaveAccessibleName(name);
  }
});

test("a pen that presses harder draws a broader line", async ({ newcomer }) => {
  const page = await newcomer();
  await page.goto(board.url);
  await page.getByRole("button", { name: "Lay out the strip" }).click();
  await settled(page);
  await labelOf(page, 1).press("Enter"); // to the drawing desk
  await page.getByRole("button", { name: "broad pencil" }).click();
  const paper = paperAt(page, 1);
  const pen = await takePen(page);
  await pen.draw(await onScreen(paper, across(300)), 0.1);
  await pen.draw(await onScreen(paper, across(700)), 0.95);
  const light = () => inkOn(paper, { top: 200, bottom: 400 });
  await expect.poll(light).toBeGreaterThan(0);
  await expect
    .poll(async () => (await inkOn(paper, { top: 600, bottom: 800 })) / (await light()))
    .toBeGreaterThan(1.4);
});

/** The frames' numbers under the strip: the one line of texts that are whole numbers and rise. */
function frameNumbers<T extends { text: string; y: number }>(texts: readonly T[]): T[] {
  const numbers = texts.filter(({ text }) => /^\d+$/.test(text));
  const rows = [...new Set(numbers.map(({ y }) => y))].map((row) =>
    numbers.filter(({ y }) => y === row),
  );
  return rows.toSorted((one, other) => other.length - one.length)[0] ?? [];
}

function roundPart<T extends { x: number; y: number }>(part: T): T {
  return { ...part, x: Math.round(part.x), y: Math.round(part.y) };
}
