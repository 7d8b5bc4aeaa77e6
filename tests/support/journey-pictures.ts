import { expect, type FileChooser, type Locator, type Page } from "@playwright/test";
import { halvesPng } from "./png";

/** A file as a person's machine hands it over. */
export interface GivenFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export const WIDE: GivenFile = { name: "wide.png", type: "image/png", bytes: halvesPng(360, 240) };
export const TALL: GivenFile = { name: "tall.png", type: "image/png", bytes: halvesPng(60, 100) };
/** How a picture of 3 : 2 is fitted into a view of 720 by 1200, half dimmed. */
export const WIDE_FITTED = { x: 0, y: 360, width: 720, height: 480, seen: 0.5 };

/** The page's words on pictures under papers. */
export const pictureTray = (page: Page): Locator =>
  page.getByRole("region", { name: "Picture under the paper" });
/** What can be done with the picture under the paper in hand. */
export const pictureOptions = (page: Page): Locator =>
  page.getByRole("group", { name: "Picture under the paper" });

/** Chooses a file where a person is asked for one. */
export async function handOver(
  chooser: FileChooser,
  { name, type, bytes }: GivenFile,
): Promise<void> {
  await chooser.setFiles({ name, mimeType: type, buffer: Buffer.from(bytes) });
}

/** Holds files over something on the page and, unless told otherwise, lets them go there. */
export async function dropOn(
  target: Locator,
  files: readonly GivenFile[],
  { letGo = true } = {},
): Promise<void> {
  const page = target.page();
  const dataTransfer = await page.evaluateHandle((given) => {
    const transfer = new DataTransfer();
    for (const { name, type, text } of given) {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      transfer.items.add(new File([bytes], name, { type }));
    }
    return transfer;
  }, given(files));
  await target.dispatchEvent("dragover", { dataTransfer });
  if (letGo) await target.dispatchEvent("drop", { dataTransfer });
}

/** Pastes files, as the browser does it when the clipboard holds a picture. */
export async function pasteInto(page: Page, files: readonly GivenFile[]): Promise<void> {
  await page.evaluate((given) => {
    const clipboardData = new DataTransfer();
    for (const { name, type, text } of given) {
      const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      clipboardData.items.add(new File([bytes], name, { type }));
    }
    const event = new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true });
    (document.activeElement ?? document.body).dispatchEvent(event);
  }, given(files));
}

function given(files: readonly GivenFile[]) {
  return files.map(({ name, type, bytes }) => ({
    ...{ name, type },
    text: Buffer.from(bytes).toString("base64"),
  }));
}

/** The picture under a paper, once it is there. */
export function pictureOn(paper: Locator): Locator {
  return paper.getByRole("img", { name: "Picture under the paper" });
}

export async function pictureShown(paper: Locator): Promise<void> {
  await expect(pictureOn(paper)).toHaveAttribute("data-coming", "shown");
}

/** Where it lies, panel units, and how much of it is seen. */
export async function placeOf(paper: Locator) {
  const image = pictureOn(paper).locator("image");
  const number = async (name: string) => Number(await image.getAttribute(name));
  return {
    x: await number("x"),
    y: await number("y"),
    width: await number("width"),
    height: await number("height"),
    seen: await number("opacity"),
  };
}

/** The file that the hub gives out, as the page has it. */
export async function servedFile(paper: Locator) {
  const href = await pictureOn(paper).locator("image").getAttribute("href");
  const answer = await paper.page().request.get(new URL(href ?? "", paper.page().url()).href);
  return { type: answer.headers()["content-type"], bytes: await answer.body() };
}

/** The colour in the middle of a file's upper, right, lower and left edge, by the browser's decoder. */
export function edgesOf(page: Page, { type, bytes }: { type?: string | undefined; bytes: Buffer }) {
  return page.evaluate(
    async ([kind, text]) => {
      const raw = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
      const bitmap = await createImageBitmap(new Blob([raw], { type: kind }));
      const canvas = document.createElement("canvas");
      const { width, height } = bitmap;
      Object.assign(canvas, { width, height });
      const context = canvas.getContext("2d");
      context?.drawImage(bitmap, 0, 0);
      const at = (x: number, y: number) => {
        const [red = 0, , blue = 0] = context?.getImageData(x, y, 1, 1).data ?? [];
        return red > blue ? "red" : "blue";
      };
      const [middle, half] = [Math.floor(width / 2), Math.floor(height / 2)];
      const edges = [at(middle, 1), at(width - 2, half), at(middle, height - 2), at(1, half)];
      return { width, height, edges };
    },
    [type ?? "", bytes.toString("base64")] as const,
  );
}

/** A small JPEG, drawn by the browser: red above blue, 80 by 40. */
export async function jpegOf(page: Page): Promise<Buffer> {
  const text = await page.evaluate(async () => {
    const canvas = document.createElement("canvas");
    Object.assign(canvas, { width: 80, height: 40 });
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("a canvas has a context");
    context.fillStyle = "rgb(220 20 20)";
    context.fillRect(0, 0, 80, 20);
    context.fillStyle = "rgb(20 20 220)";
    context.fillRect(0, 20, 80, 20);
    return canvas.toDataURL("image/jpeg", 0.9).split(",")[1] ?? "";
  });
  return Buffer.from(text, "base64");
}

/**
 * The same JPEG as a phone writes it that was held upright: a note says to turn it, and where it was
 * taken. Source: Exif 2.32 §4.5 to 4.7 (orientation 6: the stored rows run down the right-hand side).
 */
export function asFromPhone(jpeg: Buffer, place: string): Buffer {
  const text = Buffer.from(`${place}\0`, "latin1");
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4);
  tiff.write("MM\0*", 0, "latin1");
  tiff.writeUInt32BE(8, 4); // the first directory
  tiff.writeUInt16BE(2, 8); // its entries
  tiff.set([0x01, 0x0e, 0, 2, 0, 0, 0, text.length, 0, 0, 0, tiff.length], 10); // what it shows
  tiff.set([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0], 22); // orientation 6
  const body = Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff, text]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}
