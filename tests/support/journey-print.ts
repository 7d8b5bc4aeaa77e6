import { expect, type Locator, type Page } from "@playwright/test";
import { contentOf } from "./journey-sheet";

/** Chooses the page in the open print dialog, by what it is called there. */
export async function choosePage(dialog: Locator, page: RegExp): Promise<void> {
  const select = dialog.getByLabel("On", { exact: true });
  const options = await select.locator("option").allTextContents();
  const label = options.find((text) => page.test(text));
  if (label === undefined) throw new Error(`no page ${page} among ${options.join("; ")}`);
  await select.selectOption({ label });
}

/** Picks a format in the open print dialog, downloads, and answers with the file. */
export async function download(
  page: Page,
  dialog: Locator,
  format: RegExp,
): Promise<{ name: string; bytes: Buffer }> {
  await dialog.getByRole("radio", { name: format }).check();
  const begun = page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Download" }).click();
  const file = await begun;
  await expect(dialog.getByRole("status")).toContainText(`Saved as ${file.suggestedFilename()}`);
  return { name: file.suggestedFilename(), bytes: await contentOf(file) };
}

const PNG_SIGNATURE = "89504e470d0a1a0a";

/**
 * What a PNG says of itself. Units: pixels.
 *
 * Source:  Portable Network Graphics, third edition, 5.2 (signature) and 11.2.1 (IHDR)
 */
export function pngHead(bytes: Buffer): { width: number; height: number } {
  expect(bytes.subarray(0, 8).toString("hex")).toBe(PNG_SIGNATURE);
  expect(bytes.subarray(12, 16).toString("latin1")).toBe("IHDR");
  return { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
}

/** A part of a picture, pixels. */
export interface PicturePart {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How many pixels of each part are clearly darker than paper, as a browser decodes the picture. */
export function darkPixels(
  page: Page,
  bytes: Buffer,
  parts: readonly PicturePart[],
): Promise<number[]> {
  return page.evaluate(
    async ([base64, asked]) => {
      const letters = atob(base64);
      const data = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([data], { type: "image/png" }));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const context = canvas.getContext("2d");
      if (context === null) throw new Error("no canvas to decode on");
      context.drawImage(picture, 0, 0);
      return asked.map(({ x, y, width, height }) => {
        const { data: pixels } = context.getImageData(x, y, width, height);
        let dark = 0;
        for (let at = 0; at < pixels.length; at += 4) {
          const sum = (pixels[at] ?? 0) + (pixels[at + 1] ?? 0) + (pixels[at + 2] ?? 0);
          if (sum < 3 * 128) dark += 1;
        }
        return dark;
      });
    },
    [bytes.toString("base64"), parts] as const,
  );
}

/** A text of an SVG file and where it begins. */
export interface SvgText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

/** Texts of an SVG file in its order, and every address in it that would be fetched. */
export function readSvg(
  page: Page,
  svg: string,
): Promise<{ fault: string | null; texts: SvgText[]; fetched: string[] }> {
  return page.evaluate((source) => {
    const file = new DOMParser().parseFromString(source, "image/svg+xml");
    const fault = file.querySelector("parsererror")?.textContent ?? null;
    const texts = [...file.querySelectorAll("text")].map((element) => ({
      text: element.textContent ?? "",
      x: Number(element.getAttribute("x")),
      y: Number(element.getAttribute("y")),
    }));
    const inStyles = [...source.matchAll(/url\(\s*["']?([^"')]+)/g)].map(([, address]) => address);
    const linked = [...file.querySelectorAll("*")].flatMap((element) =>
      [...element.attributes]
        .filter(({ localName }) => localName === "href" || localName === "src")
        .map(({ value }) => value),
    );
    const imported = source.includes("@import") ? ["@import"] : [];
    const fetched = [...inStyles, ...linked, ...imported].filter(
      (address) => address !== undefined && !/^(data:|#)/.test(address),
    );
    return { fault, texts, fetched: fetched.filter((address) => address !== undefined) };
  }, svg);
}
