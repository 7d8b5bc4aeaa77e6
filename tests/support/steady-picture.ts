import type { Page } from "@playwright/test";

const MOST_LOOKS = 20; // a screen that is still changing after so many is never at rest

/**
 * A picture of the screen at rest: two in a row that are the same, byte for byte, with the typeface there.
 *
 * Units:   CSS pixels, whatever the screen's own
 * Errors:  Error where the screen does not come to rest
 */
export async function steadyPicture(page: Page): Promise<Buffer> {
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const look = () =>
    page.screenshot({ animations: "disabled", caret: "hide", scale: "css", type: "png" });
  let last = await look();
  for (let looks = 1; looks < MOST_LOOKS; looks += 1) {
    // Ink is painted in the frames' spare time: let some pass.
    await page.evaluate(
      () => new Promise((done) => requestIdleCallback(() => requestAnimationFrame(done))),
    );
    const next = await look();
    if (next.equals(last)) return next;
    last = next;
  }
  throw new Error(`the screen was still changing after ${MOST_LOOKS} looks`);
}

/** The picture at half its width and height, so that many of them stay small. */
export async function halfSized(page: Page, picture: Buffer): Promise<Buffer> {
  const base64 = await page.evaluate(async (given) => {
    const bytes = Uint8Array.from(atob(given), (letter) => letter.charCodeAt(0));
    const whole = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
    const [width, height] = [Math.round(whole.width / 2), Math.round(whole.height / 2)];
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no canvas to halve a picture on");
    context.imageSmoothingQuality = "high";
    context.drawImage(whole, 0, 0, width, height);
    const half = new Uint8Array(await (await canvas.convertToBlob()).arrayBuffer());
    let letters = "";
    for (const byte of half) letters += String.fromCharCode(byte);
    return btoa(letters);
  }, picture.toString("base64"));
  return Buffer.from(base64, "base64");
}
