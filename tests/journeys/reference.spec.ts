import type { Page } from "@playwright/test";
import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { moveFingers } from "../support/journey-fingers";
import { tabTo } from "../support/journey-keys";
import { across, inkOn, labelOf, onScreen, paperAt } from "../support/journey-papers";
import {
  asFromPhone,
  dropOn,
  edgesOf,
  type GivenFile,
  jpegOf,
  pasteInto,
  pictureOn,
  pictureShown,
  placeOf,
  servedFile,
} from "../support/journey-pictures";
import {
  allSaved,
  exportSheet,
  makeLink,
  settled,
  startWalk,
  titleOf,
} from "../support/journey-sheet";
import { takePen } from "../support/pen";
import { halvesPng, pngOf } from "../support/png";

const board = ownBoard();

const WIDE: GivenFile = { name: "wide.png", type: "image/png", bytes: halvesPng(360, 240) };
const TALL: GivenFile = { name: "tall.png", type: "image/png", bytes: halvesPng(60, 100) };
/** How a picture of 3 : 2 is fitted into a view of 720 by 1200, half dimmed. */
const WIDE_FITTED = { x: 0, y: 360, width: 720, height: 480, seen: 0.5 };

const group = (page: Page) => page.getByRole("region", { name: "Picture under the paper" });
const options = (page: Page) => page.getByRole("group", { name: "Picture under the paper" });

test("a picture is dropped, seen by others, dimmed, moved and taken back", async ({ newcomer }) => {
  test.slow();
  const owner = await newcomer();
  await startWalk(owner, board.url, "With a reference");
  const view = await makeLink(owner, "view");
  const viewer = await newcomer();
  await viewer.goto(view);
  const guest = await newcomer();
  await guest.goto(await makeLink(owner, "draw"));
  await settled(guest);
  const paper = paperAt(owner, 4);

  await test.step("the paper it is held over says so, and nothing happens before it is let go", async () => {
    await dropOn(paper, [WIDE], { letGo: false });
    await expect(paper.getByText("Put it under here")).toBeVisible();
    await expect(pictureOn(paper)).toHaveCount(0);
    await dropOn(paper, [WIDE]);
    await pictureShown(paper);
    await expect(paper.getByText("Put it under here")).toHaveCount(0);
    await expect(group(owner).getByRole("status")).toHaveText(
      "Picture put under frame 4, side. Undo takes it back.",
    );
    expect(await placeOf(paper)).toEqual(WIDE_FITTED);
    await allSaved(owner);
  });

  await test.step("the others see it, and who may only look has no hand on it", async () => {
    await pictureShown(paperAt(viewer, 4));
    await pictureShown(paperAt(guest, 4));
    expect(await placeOf(paperAt(viewer, 4))).toEqual(WIDE_FITTED);
    await expect(viewer.getByRole("button", { name: "Picture under the paper" })).toHaveCount(0);
    await viewer.keyboard.press("i");
    await expect(options(viewer)).toHaveCount(0);
    await dropOn(paperAt(viewer, 7), [TALL]);
    await labelOf(viewer, 7).click();
    await pasteInto(viewer, [TALL]);
    await expect(pictureOn(paperAt(viewer, 7))).toHaveCount(0);
  });

  await test.step("it is dimmed with keys, in one step", async () => {
    await owner.keyboard.press("i");
    const dimmed = options(owner).getByRole("slider", { name: /Dimmed/ });
    await expect(dimmed).toBeFocused();
    await owner.keyboard.press("ArrowRight");
    await owner.keyboard.press("ArrowRight");
    await expect(dimmed).toHaveAttribute("aria-valuetext", "60 %");
    await expect.poll(async () => (await placeOf(paperAt(guest, 4))).seen).toBeCloseTo(0.4, 9);
    await expectAccessible(owner, "the options of a picture");
  });

  await test.step("a pen moves it while it is held, and draws on it afterwards", async () => {
    await options(owner).getByRole("button", { name: "Move it" }).click();
    await expectAccessible(owner, "a picture that is held");
    const pen = await takePen(owner);
    const way = [
      { x: 300, y: 500 },
      { x: 350, y: 560 },
      { x: 390, y: 620 },
    ];
    await pen.draw(await onScreen(paper, way));
    const moved = { ...WIDE_FITTED, x: 90, y: 480 };
    await expect.poll(async () => Math.round((await placeOf(paperAt(guest, 4))).x)).toBe(90);
    const now = await placeOf(paper);
    expect(Math.hypot(now.x - moved.x, now.y - moved.y)).toBeLessThan(8); // a pixel is 7 units here
    expect(await inkOn(paper)).toBe(0);
    await owner.keyboard.press("d");
    await pen.draw(await onScreen(paper, across(500)));
    await expect.poll(() => inkOn(paper)).toBeGreaterThan(20);
    expect((await placeOf(paper)).x).toBe(now.x);
  });

  await test.step("undo goes back through all of it", async () => {
    const back = async () => {
      await owner.keyboard.press("Control+z");
      return (await pictureOn(paper).count()) === 0 ? null : placeOf(paper);
    };
    await back(); // the stroke
    expect(await inkOn(paper)).toBe(0);
    expect(await back()).toMatchObject({ ...WIDE_FITTED, seen: expect.closeTo(0.4, 9) });
    await back();
    expect(await back()).toEqual(WIDE_FITTED); // one step for each press of the slider
    expect(await back()).toBeNull();
    await expect(pictureOn(paperAt(guest, 4))).toHaveCount(0);
    await owner.keyboard.press("Control+Shift+Z");
    await pictureShown(paperAt(guest, 4));
    await allSaved(owner);
  });
});

test("one is pasted, put under all panels, and left out of file and print", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Pasted");
  await titleOf(page).click();
  const about = page.getByRole("dialog", { name: "About this sheet" });
  await expect(about.getByText("under the paper")).toHaveCount(0);
  await about.getByRole("button", { name: "Close" }).click();

  await pasteInto(page, [TALL]); // no panel is in hand
  await expect(group(page).getByRole("alert")).toContainText("it needs a panel to lie under");
  await group(page).getByRole("button", { name: "Leave it" }).click();
  await labelOf(page, 7).click();
  await page.keyboard.press("v"); // the front view
  await pasteInto(page, [TALL]);
  const paper = paperAt(page, 7, "front");
  await pictureShown(paper);
  expect(await placeOf(paper)).toEqual({ x: 0, y: 0, width: 720, height: 1200, seen: 0.5 });

  await page.keyboard.press("i");
  await options(page).getByRole("button", { name: "Under all panels" }).click();
  await expect(group(page).getByRole("status")).toHaveText(
    "Put under 8 more panels. Undo takes it back.",
  );
  for (const frame of [1, 25]) await pictureShown(paperAt(page, frame, "front"));
  await expect(options(page).getByRole("button", { name: "Under all panels" })).toBeDisabled();

  const { file, text } = await exportSheet(page);
  expect(file.panels).toHaveLength(9);
  expect(text).not.toContain("picture");
  await titleOf(page).click();
  await expect(about.getByText("The 9 pictures under the paper: not in the file.")).toBeVisible();
  await about.getByRole("button", { name: "Close" }).click();
  await page.getByRole("button", { name: "Print the sheet" }).click();
  const print = page.getByRole("dialog", { name: "Print the sheet" });
  await expect(print.getByText("The 9 pictures under the paper: not printed.")).toBeVisible();
  await print.getByRole("button", { name: "Close" }).click();

  await page.keyboard.press("Control+z"); // all eight at once
  await expect(page.getByRole("img", { name: "Picture under the paper" })).toHaveCount(1);
  await page.reload();
  await pictureShown(paper);
});

test("what cannot lie under a paper is refused in clear words, and nothing is lost", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: /ERR_FAILED|ERR_INTERNET|status of 4/ });
  await startWalk(page, board.url, "Refused");
  const paper = paperAt(page, 1);
  await dropOn(paper, [WIDE]);
  await pictureShown(paper);
  const alert = group(page).getByRole("alert");
  const text = (said: string) => new TextEncoder().encode(said);

  const tries: readonly (readonly [GivenFile, string])[] = [
    [
      { name: "notes.png", type: "image/png", bytes: text("a letter, and no picture") },
      "notes.png was not put under the paper: it needs to be a PNG, JPEG or WebP picture, and this file is none.",
    ],
    [
      { name: "sign.svg", type: "image/svg+xml", bytes: text("<svg onload='alert(1)'/>") },
      "sign.svg was not put under the paper: it needs to be a PNG, JPEG or WebP picture",
    ],
    [
      { name: "cut.png", type: "image/png", bytes: halvesPng(40, 40).subarray(0, 60) },
      "this browser cannot open it. It may have been cut short.",
    ],
    [
      { name: "vast.png", type: "image/png", bytes: vastPng() },
      "a picture may have 100 million pixels, and this one has 900 million pixels.",
    ],
  ];
  for (const [file, why] of tries) {
    await dropOn(paper, [file]);
    await expect(alert).toContainText(why);
    await expect(alert).toContainText("Nothing else was changed.");
    await group(page).getByRole("button", { name: "Leave it" }).click();
  }
  await test.step("a file of 65 MiB is not even opened", async () => {
    await page.keyboard.press("i");
    await page.evaluate(() => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(65 * 1024 * 1024)], "huge.png"));
      const paper = document.querySelector("figure[data-panel]");
      paper?.dispatchEvent(new DragEvent("drop", { dataTransfer: transfer, bubbles: true }));
    });
    await expect(alert).toContainText(
      "a picture file may have 64.0 MiB, and this one has 65.0 MiB.",
    );
    await expectAccessible(page, "a picture that was refused");
    await group(page).getByRole("button", { name: "Leave it" }).click();
  });

  await test.step("let go beside the papers, the board stays and says where it may lie", async () => {
    const address = page.url();
    await dropOn(page.getByRole("navigation", { name: "Tray" }), [TALL]);
    await expect(alert).toContainText("it needs a paper to lie under");
    await group(page).getByRole("button", { name: "Leave it" }).click();
    expect(page.url()).toBe(address);
  });

  await test.step("with the hub out of reach the file is kept, and goes when it is back", async () => {
    await page.route("**/pictures", (route) => route.abort());
    await dropOn(paperAt(page, 4), [TALL]);
    await expect(alert).toContainText("the hub does not answer. The file is kept here");
    await expect(pictureOn(paperAt(page, 4))).toHaveCount(0);
    await page.unroute("**/pictures");
    await group(page).getByRole("button", { name: "Try again" }).click();
    await pictureShown(paperAt(page, 4));
  });

  await test.step("one that is on its way can be stopped", async () => {
    await page.route("**/pictures", () => {}); // never answered
    await dropOn(paperAt(page, 7), [TALL]);
    await expect(group(page).getByRole("progressbar")).toBeVisible();
    await group(page).getByRole("button", { name: "Stop" }).click();
    await expect(group(page).getByRole("status")).toHaveText(
      "Stopped. Nothing was put under the paper.",
    );
    await page.unroute("**/pictures");
    await expect(pictureOn(paperAt(page, 7))).toHaveCount(0);
  });
  expect(await placeOf(paper)).toEqual(WIDE_FITTED); // what lay there still does
});

test("a picture that does not come says so, and comes when it is asked for again", async ({
  newcomer,
}) => {
  const owner = await newcomer();
  await startWalk(owner, board.url, "Missed");
  await dropOn(paperAt(owner, 1), [WIDE]);
  await pictureShown(paperAt(owner, 1));
  const guest = await newcomer({ mayComplain: /ERR_FAILED/ });
  await guest.route("**/pictures/*", (route) => route.abort());
  await guest.goto(await makeLink(owner, "draw"));
  await settled(guest);
  await expect(pictureOn(paperAt(guest, 1))).toHaveAttribute("data-coming", "missed");
  await expect(group(guest).getByRole("status").first()).toContainText("A picture did not come");
  await expectAccessible(guest, "a picture that did not come");
  await guest.unroute("**/pictures/*");
  await group(guest).getByRole("button", { name: "Try again" }).click();
  await pictureShown(paperAt(guest, 1));
  await expect(group(guest)).not.toContainText("A picture did not come");
});

test("a phone's picture lies the right way up, and says nothing of where it was taken", async ({
  newcomer,
}) => {
  const page = await newcomer();
  await startWalk(page, board.url, "From a phone");
  const jpeg = await jpegOf(page);
  const bytes = asFromPhone(jpeg, "Low Tide Post, back door");
  // The browser itself, told not to heed the note, still sees it lying on its side.
  expect(await edgesOf(page, { type: "image/jpeg", bytes: jpeg })).toEqual({
    ...{ width: 80, height: 40, edges: ["red", expect.any(String), "blue", expect.any(String)] },
  });
  await dropOn(paperAt(page, 1), [{ name: "IMG_0001.JPG", type: "image/jpeg", bytes }]);
  await pictureShown(paperAt(page, 1));
  expect(await placeOf(paperAt(page, 1))).toMatchObject({ width: 600, height: 1200 });
  const served = await servedFile(paperAt(page, 1));
  expect(served.type).toBe("image/webp");
  const upright = await edgesOf(page, served);
  // Turned a quarter to the right, its upper edge stands at the right.
  expect(upright).toMatchObject({ width: 40, height: 80 });
  expect([upright.edges[1], upright.edges[3]]).toEqual(["red", "blue"]);
  for (const told of ["Low Tide", "Exif", "EXIF"]) {
    expect(bytes.includes(told) || told === "EXIF").toBe(true);
    expect(served.bytes.includes(told)).toBe(false);
  }
});

test("a large picture is made small before it is sent", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "Large");
  const large = pngOf(3000, 1500, (x, y) => [(x * y) & 255, x & 255, y & 255, 255]);
  await dropOn(paperAt(page, 1), [{ name: "large.png", type: "image/png", bytes: large }]);
  await pictureShown(paperAt(page, 1));
  const served = await servedFile(paperAt(page, 1));
  expect(served.bytes.length).toBeLessThanOrEqual(2 * 1024 * 1024);
  const { width, height } = await edgesOf(page, served);
  expect(width / height).toBeCloseTo(2, 2);
  expect(width).toBeLessThanOrEqual(2048);
});

test("keys alone put, move, scale and remove one", async ({ newcomer }) => {
  const page = await newcomer();
  await startWalk(page, board.url, "By keys");
  await tabTo(page, labelOf(page, 4));
  await page.keyboard.press("Space");
  await page.keyboard.press("i");
  const choose = options(page).getByRole("button", { name: "Choose a picture" });
  await expect(choose).toBeFocused();
  const chooser = page.waitForEvent("filechooser");
  await page.keyboard.press("Enter");
  const { bytes, ...file } = WIDE;
  await (await chooser).setFiles({
    name: file.name,
    mimeType: file.type,
    buffer: Buffer.from(bytes),
  });
  const paper = paperAt(page, 4);
  await pictureShown(paper);

  const move = options(page).getByRole("button", { name: "Move it" });
  await tabTo(page, move);
  await page.keyboard.press("Enter");
  const grip = paper.getByRole("button", { name: /^Picture under the paper: drag/ });
  await expect(grip).toBeFocused();
  for (const key of ["ArrowRight", "ArrowRight", "Shift+ArrowDown", "+"])
    await page.keyboard.press(key);
  const { x, y, width, height } = await placeOf(paper);
  expect(width / 720).toBeCloseTo(1.02, 6);
  expect(x + width / 2).toBeCloseTo(360 + 12, 6);
  expect(y + height / 2).toBeCloseTo(600 + 60, 6);
  await page.keyboard.press("Enter");
  await expect(grip).toHaveCount(0);
  await expect(move).toBeFocused();
  await tabTo(page, options(page).getByRole("button", { name: "Remove the picture" }));
  await page.keyboard.press("Enter");
  await expect(pictureOn(paper)).toHaveCount(0);
  await expect(group(page).getByRole("status")).toHaveText("Picture removed. Undo brings it back.");
  await page.keyboard.press("Control+z");
  await pictureShown(paper);
  await allSaved(page);
});

test("two fingers move and scale the picture that is held, and leave the desk alone", async ({
  newcomer,
}) => {
  const page = await newcomer({
    viewport: { width: 390, height: 844 },
    hasTouch: true,
    isMobile: true,
  });
  await startWalk(page, board.url, "By touch");
  await labelOf(page, 1).tap();
  await page.getByRole("button", { name: "Draw it large" }).tap();
  await page.getByRole("button", { name: "Picture under the paper" }).tap();
  const chooser = page.waitForEvent("filechooser");
  await options(page).getByRole("button", { name: "Choose a picture" }).tap();
  const { bytes, ...file } = WIDE;
  await (await chooser).setFiles({
    name: file.name,
    mimeType: file.type,
    buffer: Buffer.from(bytes),
  });
  const paper = paperAt(page, 1);
  await pictureShown(paper);
  await options(page).getByRole("button", { name: "Move it" }).tap();
  await expectAccessible(page, "a picture that is held, on a phone");
  const [before, size] = [await placeOf(paper), await paper.boundingBox()];
  const ways = await Promise.all(
    [
      [
        { x: 300, y: 600 },
        { x: 250, y: 600 },
        { x: 200, y: 600 },
      ],
      [
        { x: 500, y: 600 },
        { x: 550, y: 600 },
        { x: 600, y: 600 },
      ],
    ].map((way) => onScreen(paper, way)),
  );
  await moveFingers(page, ways); // twice as far apart
  await expect.poll(async () => (await placeOf(paper)).width / before.width).toBeCloseTo(2, 1);
  expect(await paper.boundingBox()).toEqual(size);
  await page.keyboard.press("Control+z");
  expect(await placeOf(paper)).toEqual(before); // one step
});

/** A PNG that says it is 30,000 by 30,000; nobody is to find out. */
function vastPng(): Buffer {
  const png = Buffer.from(halvesPng(2, 2));
  png.writeUInt32BE(30_000, 16);
  png.writeUInt32BE(30_000, 20);
  return png;
}
