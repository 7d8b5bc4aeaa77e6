import { brindleExample } from "../../lib/sheet";
import { expect, ownBoard, test } from "../support/journey";
import { choosePage, pngHead, readSvg } from "../support/journey-print";
import { contentOf, openBrindle } from "../support/journey-sheet";

const board = ownBoard();

test("a sheet is printed on A4: stopped on the way, looked through, and handed over", async ({
  newcomer,
}) => {
  test.slow();
  const page = await newcomer();
  await openBrindle(page, board.url);
  await page.getByRole("button", { name: "Print the sheet" }).click();
  const dialog = page.getByRole("dialog", { name: "Print the sheet" });
  const preview = dialog.getByRole("img", { name: /^Preview of the annotated sheet/ });
  const said = dialog.getByRole("status");

  await test.step("each page can be looked at", async () => {
    await choosePage(dialog, /^A4/);
    await expect(preview).toHaveAccessibleName(/page 1 of 2$/);
    await dialog.getByRole("button", { name: "Page after" }).press("Enter");
    await expect(preview).toHaveAccessibleName(/page 2 of 2$/);
    await expect(dialog.getByRole("button", { name: "Page after" })).toBeDisabled();
  });

  await test.step("a print that is stopped saves nothing", async () => {
    let release: () => void = () => undefined;
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    await page.route(/\.ttf(\?|$)/, async (route) => {
      await held; // the typeface is under way until the print was stopped
      await route.abort().catch(() => undefined);
    });
    await dialog.getByRole("button", { name: "Download 2 pages" }).click();
    await expect(dialog.getByRole("progressbar")).toBeVisible();
    await dialog.getByRole("button", { name: "Stop" }).click();
    await expect(said).toHaveText("Stopped. Nothing was saved.");
    release();
    await page.unroute(/\.ttf(\?|$)/);
  });

  await test.step("printed again, every page is a file of its size, the reason among its texts", async () => {
    await dialog.getByRole("radio", { name: /^SVG/ }).check();
    const files: Promise<Buffer>[] = [];
    const names: string[] = [];
    page.on("download", (file) => {
      names.push(file.suggestedFilename());
      files.push(contentOf(file));
    });
    await dialog.getByRole("button", { name: "Download 2 pages" }).click();
    await expect(said).toContainText("Saved as");
    await expect.poll(() => names.length).toBe(2);
    expect(names.map((name) => /-\d\.svg$/.exec(name)?.[0])).toEqual(["-1.svg", "-2.svg"]);
    const pages = (await Promise.all(files)).map((bytes) => bytes.toString("utf8"));
    for (const svg of pages) expect(svg).toContain('width="297mm" height="210mm"');
    const reader = await page.context().newPage();
    const read = await Promise.all(pages.map((svg) => readSvg(reader, svg)));
    for (const { fault, fetched } of read) expect([fault, fetched]).toEqual([null, []]);
    const words = read.flatMap(({ texts }) => texts.map(({ text }) => text)).join(" ");
    const [kept] = brindleExample(() => "id").onPurpose ?? [];
    expect(kept?.reason).toBeTruthy();
    expect(words).toContain(kept?.reason);
  });

  await test.step("one page alone is one picture of the width that was asked for", async () => {
    await dialog.getByRole("radio", { name: /^PNG, 1920 wide/ }).check();
    const begun = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Page 2 only" }).click();
    const file = await begun;
    expect(file.suggestedFilename()).toMatch(/-2\.png$/);
    const { width, height } = pngHead(await contentOf(file));
    expect(width).toBe(1920);
    expect(width / height).toBeCloseTo(297 / 210, 2);
  });
});
