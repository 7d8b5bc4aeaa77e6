import { mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { printSheet } from "../../bin/print";
import { layOutPages, measureShipped } from "../../lib/export";
import { type Sheet, sheetFileText } from "../../lib/sheet";
import { drawnSheet, slipped } from "../lib/export/drawn-sheet";
import { wishFor } from "../lib/export/printed";
import { overlaps, textBoxes } from "../lib/export/svg-boxes";
import { darkPixels, readPng } from "./read-png";

vi.setConfig({ testTimeout: 30_000 }); // pictures are drawn whole, on machines of any speed

const DAY = new Date(2025, 10, 24, 12);

let folder = "";
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "heelstrip-print-"));
});
afterEach(async () => {
  await rm(folder, { recursive: true, force: true });
});

const within = (name: string) => join(folder, name);

async function print(sheet: Sheet, out: string, ...more: string[]) {
  await writeFile(within("walk.json"), sheetFileText(sheet));
  const said: string[] = [];
  const complained: string[] = [];
  const io = {
    out: (line: string) => said.push(line),
    err: (line: string) => complained.push(line),
  };
  const code = await printSheet([within("walk.json"), "-o", within(out), ...more], io, DAY);
  return { code, said, complained, file: await readFile(within(out)) };
}

describe("heelstrip print to PNG", () => {
  it("is as wide as asked and as high as its page", async () => {
    const sheet = drawnSheet(9);
    const { file } = await print(sheet, "walk.png", "--width", "960");
    const [page] = layOutPages(wishFor(sheet));
    const { width, height } = readPng(file);
    expect([width, height]).toEqual([960, Math.ceil((page?.height ?? 0) / 2)]);
  });

  it("is 3840 pixels wide unless asked otherwise", async () => {
    const { file } = await print(drawnSheet(1), "walk.PNG");
    expect(readPng(file).width).toBe(3840);
  });

  it("has ink on every drawn panel and none on an empty one", async () => {
    const sheet = drawnSheet(9, {
      change: (panel, at) =>
        at === 4
          ? { ...panel, ink: { side: [], front: [] }, marks: { side: {}, front: {} } }
          : panel,
    });
    const { file } = await print(sheet, "walk.png", "--width", "1920");
    const picture = readPng(file);
    const inked = layOutPages(wishFor(sheet))
      .flatMap(({ strip }) => strip.rows)
      .flatMap(({ cells }) => cells)
      .map(({ views }) =>
        // The trunk's stretch of the view: there is no ground line and no label there.
        darkPixels(picture, {
          ...views.side,
          y: views.side.y + views.side.height * 0.1,
          height: views.side.height * 0.3,
        }),
      );
    expect(inked.filter((dark) => dark > 100)).toHaveLength(8);
    expect(inked[4]).toBe(0);
  });

  it("draws its text: the title's line is dark in places, in the family's own shapes", async () => {
    const { file } = await print(drawnSheet(3, { head: { title: "HHHH" } }), "walk.png");
    const picture = readPng(file);
    // At twice the page's size the title's capitals stand at x 128, y 138..197, four H wide.
    const width = measureShipped("HHHH", { size: 88, weight: 700 });
    const title = { x: 128, y: 140, width, height: 54 };
    expect(darkPixels(picture, title)).toBeGreaterThan(4 * 2 * 54 * 8); // two stems a letter
    expect(darkPixels(picture, { ...title, x: 128 + width + 8, width: 200 })).toBe(0);
  });

  it("says which letters the family lacks, and what stands in for them", async () => {
    const { complained } = await print(drawnSheet(1, { head: { title: "Ходьба 歩" } }), "a.png");
    const told = complained.join(" ");
    for (const letter of "Ходьба歩") expect(told).toContain(letter);
    for (const line of complained) expect(line).toMatch(/stands? in$/);
  });

  it("loses no more of a line than the letter that no font has", async () => {
    const nobodys = "\u{10fffe}"; // not a character at all: no font has it
    const row = { x: 0, y: 60, width: 1920, height: 60 };
    const dark = async (title: string) => {
      const sheet = drawnSheet(0, { head: { title } });
      const { file, complained } = await print(sheet, "a.png", "--width", "1920");
      return { ink: darkPixels(readPng(file), row), complained };
    };
    const odd = await dark(`${nobodys} Жар Ж`);
    const plain = await dark("? Жар Ж");
    expect(odd.ink).toBe(plain.ink);
    expect(odd.complained.join()).toMatch(/no font on this system has .*: "\?" stands in/);
  });

  it("survives ink far outside its panel", async () => {
    const sheet = drawnSheet(13, {
      change: (panel) => ({
        ...panel,
        ink: {
          ...panel.ink,
          side: panel.ink.side.map((stroke) => ({
            ...stroke,
            points: stroke.points.map(
              ([x, y, pressure]) => [x - 1900, y + 1900, pressure] as const,
            ),
          })),
        },
      }),
    });
    const { file } = await print(sheet, "far.png", "--width", "960");
    expect(readPng(file).width).toBe(960);
  });
});

describe("heelstrip print to SVG", () => {
  it("holds its text as text, its day, and the fonts it is set in", async () => {
    const { file } = await print(drawnSheet(9, { head: { title: "Up & down" } }), "walk.svg");
    const svg = file.toString("utf8");
    const boxes = textBoxes(svg);
    expect(boxes.map(({ text }) => text)).toContain("Up & down");
    expect(boxes.map(({ text }) => text)).toContain("24 November 2025");
    expect(overlaps(boxes)).toEqual([]);
    expect(svg.match(/@font-face/g)).toHaveLength(3);
    expect(svg).not.toMatch(/(?:href|src|url\()\s*=?\s*"?https?:/);
  });
});

describe("heelstrip print on paper", () => {
  it("makes each page a file, numbered, of the paper's shape and the width asked for", async () => {
    await writeFile(within("walk.json"), sheetFileText(drawnSheet(24)));
    const args = [within("walk.json"), "-o", within("walk.png"), "--page", "letter", "--portrait"];
    await printSheet([...args, "--width", "600"], { out: () => {}, err: () => {} }, DAY);
    const pages = (await readdir(folder)).filter((name) => name.endsWith(".png")).sort();
    expect(pages.length).toBeGreaterThan(1);
    expect(pages).toEqual(pages.map((_, index) => `walk-${index + 1}.png`));
    for (const name of pages) {
      const { width, height } = readPng(await readFile(within(name)));
      expect(width).toBe(600);
      expect(Math.abs(height - (600 * 11) / 8.5)).toBeLessThanOrEqual(1);
    }
  });

  it("says in millimetres how large an SVG page is, and keeps the name of a single page", async () => {
    const { file } = await print(drawnSheet(9), "walk.svg", "--page", "A3");
    expect(file.toString()).toContain('width="420mm" height="297mm"');
  });
});

describe("heelstrip print's answer", () => {
  it("is 0 when nothing shows and 1 when something does, the file written either way", async () => {
    const sound = await print(drawnSheet(9), "sound.svg");
    expect(sound.code).toBe(0);
    const change = (panel: Sheet["panels"][number]) =>
      panel.pose === "passing" && panel.weightOn === "right" ? slipped(panel, "right", 63) : panel;
    const slipping = await print(drawnSheet(9, { change }), "slips.svg");
    expect(slipping.code).toBe(1);
    expect(slipping.said.join()).toMatch(/9 panels, \d+ will show/);
    expect(slipping.file.toString()).toContain("Right foot slips");
  });

  it("leaves nothing beside the file it wrote", async () => {
    await print(drawnSheet(1), "walk.svg");
    expect((await readdir(folder)).sort()).toEqual(["walk.json", "walk.svg"]);
  });
});

describe("what cannot be printed", () => {
  const attempt = (...args: string[]) => printSheet(args, { out: () => {}, err: () => {} }, DAY);

  it.each([
    ["no file", () => ["-o", "x.png"], /expected a sheet file, got none/],
    ["no output", () => [within("walk.json")], /expected -o OUT\.png or \.svg/],
    ["another kind", () => [within("walk.json"), "-o", within("x.pdf")], /end in \.png or \.svg/],
    [
      "no width",
      () => [within("walk.json"), "-o", within("x.png"), "--width", "wide"],
      /expected --width from 480 to 16384 pixels, got "wide"/,
    ],
    [
      "too wide",
      () => [within("walk.json"), "-o", within("x.png"), "--width", "99999"],
      /expected --width from 480 to 16384/,
    ],
    [
      "an unknown paper",
      () => [within("walk.json"), "-o", within("x.png"), "--page", "a7"],
      /expected --page a4, a3, letter, tabloid, got "a7"/,
    ],
    [
      "portrait of no paper",
      () => [within("walk.json"), "-o", within("x.png"), "--portrait"],
      /expected --page with --portrait, got none/,
    ],
    [
      "a width for lines",
      () => [within("walk.json"), "-o", within("x.svg"), "--width", "960"],
      /expected --width with a \.png only/,
    ],
    [
      "not there",
      () => [within("none.json"), "-o", within("x.png")],
      /none\.json: expected a file/,
    ],
    ["damaged", () => [within("broken.json"), "-o", within("x.png")], /broken\.json: /],
    [
      "two sheets",
      () => [within("walk.json"), within("walk.json"), "-o", "x.png"],
      /one sheet file, got 2/,
    ],
    ["an unknown option", () => [within("walk.json"), "--ink", "red"], /usage: heelstrip print/],
  ])("is said in one line, and nothing is written: %s", async (_, args, line) => {
    await writeFile(within("walk.json"), sheetFileText(drawnSheet(1)));
    await writeFile(within("broken.json"), sheetFileText(drawnSheet(1)).slice(0, 400));
    const before = await readdir(folder);
    await expect(attempt(...args())).rejects.toThrow(line);
    await expect(attempt(...args())).rejects.toThrow(/^[^\n]*$/);
    expect(await readdir(folder)).toEqual(before);
  });

  it("keeps what stood there when the place cannot be written", async () => {
    await writeFile(within("walk.json"), sheetFileText(drawnSheet(1)));
    const args = [within("walk.json"), "-o", join(folder, "no", "such", "x.svg")];
    await expect(attempt(...args)).rejects.toThrow(/expected a place that can be written/);
    expect(await readdir(folder)).toEqual(["walk.json"]);
  });
});
