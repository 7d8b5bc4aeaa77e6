import { expect, ownBoard, test } from "../support/journey";
import { expectAccessible } from "../support/journey-axe";
import { paperAt } from "../support/journey-papers";
import {
  asFromPhone,
  dropOn,
  edgesOf,
  type GivenFile,
  jpegOf,
  pictureOn,
  pictureShown,
  pictureTray,
  placeOf,
  servedFile,
  TALL,
  WIDE,
  WIDE_FITTED,
} from "../support/journey-pictures";
import { startWalk } from "../support/journey-sheet";
import { halvesPng, pngOf } from "../support/png";

const board = ownBoard();

test("what cannot lie under a paper is refused in clear words, and nothing is lost", async ({
  newcomer,
}) => {
  const page = await newcomer({ mayComplain: /ERR_FAILED|ERR_INTERNET|status of 4/ });
  await startWalk(page, board.url, "Refused");
  const paper = paperAt(page, 1);
  await dropOn(paper, [WIDE]);
  await pictureShown(paper);
  const alert = pictureTray(page).getByRole("alert");
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
    await pictureTray(page).getByRole("button", { name: "Leave it" }).click();
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
    await pictureTray(page).getByRole("button", { name: "Leave it" }).click();
  });

  await test.step("let go beside the papers, the board stays and says where it may lie", async () => {
    const address = page.url();
    await dropOn(page.getByRole("navigation", { name: "Tray" }), [TALL]);
    await expect(alert).toContainText("it needs a paper to lie under");
    await pictureTray(page).getByRole("button", { name: "Leave it" }).click();
    expect(page.url()).toBe(address);
  });

  await test.step("with the hub out of reach the file is kept, and goes when it is back", async () => {
    await page.route("**/pictures", (route) => route.abort());
    await dropOn(paperAt(page, 4), [TALL]);
    await expect(alert).toContainText("the hub does not answer. The file is kept here");
    await expect(pictureOn(paperAt(page, 4))).toHaveCount(0);
    await page.unroute("**/pictures");
    await pictureTray(page).getByRole("button", { name: "Try again" }).click();
    await pictureShown(paperAt(page, 4));
  });

  await test.step("one that is on its way can be stopped", async () => {
    await page.route("**/pictures", () => {}); // never answered
    await dropOn(paperAt(page, 7), [TALL]);
    await expect(pictureTray(page).getByRole("progressbar")).toBeVisible();
    await pictureTray(page).getByRole("button", { name: "Stop" }).click();
    await expect(pictureTray(page).getByRole("status")).toHaveText(
      "Stopped. Nothing was put under the paper.",
    );
    await page.unroute("**/pictures");
    await expect(pictureOn(paperAt(page, 7))).toHaveCount(0);
  });
  expect(await placeOf(paper)).toEqual(WIDE_FITTED); // what lay there still does
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

/** A PNG that says it is 30,000 by 30,000; nobody is to find out. */
function vastPng(): Buffer {
  const png = Buffer.from(halvesPng(2, 2));
  png.writeUInt32BE(30_000, 16);
  png.writeUInt32BE(30_000, 20);
  return png;
}
