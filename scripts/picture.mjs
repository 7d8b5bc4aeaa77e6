/** `node scripts/picture.mjs`: takes the README's picture of the board, from the built board itself. */
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ensureBuilt } from "./house/built.mjs";
import { CHROMIUM_FLAGS, ensureChromium, findChromium } from "./house/chromium.mjs";
import { ensurePackages } from "./house/packages.mjs";
import { plainly } from "./house/plainly.mjs";
import { inRoot } from "./house/root.mjs";

const SIZE = { width: 1920, height: 1080 };

await plainly(async () => {
  await ensurePackages();
  await ensureChromium();
  await ensureBuilt();
  const dataDir = mkdtempSync(join(tmpdir(), "heelstrip-picture-"));
  const board = await startBoard(dataDir);
  try {
    await photograph(await newSheet(board.url), inRoot("docs/board.png"));
    console.log("docs/board.png");
  } finally {
    await board.stop();
    rmSync(dataDir, { recursive: true, force: true });
  }
});

function startBoard(dataDir) {
  const child = spawn(process.execPath, [inRoot("dist/server.mjs")], {
    env: {
      ...process.env,
      NODE_ENV: "production",
      HOST: "127.0.0.1",
      PORT: "0",
      DATA_DIR: dataDir,
    },
    stdio: ["ignore", "pipe", "inherit"],
  });
  const ended = new Promise((resolve) => child.once("exit", resolve));
  const stop = () => {
    child.kill();
    return ended;
  };
  return new Promise((resolve, reject) => {
    child.stdout.on("data", (chunk) => {
      const url = /http:\/\/127\.0\.0\.1:\d+/.exec(String(chunk))?.[0];
      if (url !== undefined) resolve({ url, stop });
    });
    child.once("exit", (code) => reject(new Error(`the board ended with ${code}`)));
  });
}

/** Answers with the address of a copy of the demo. */
async function newSheet(url) {
  const answer = await fetch(`${url}/api/sheets`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: url },
    body: JSON.stringify({ from: "example", example: "brindle" }),
  });
  if (answer.status !== 201) throw new Error(`no sheet: ${answer.status} ${await answer.text()}`);
  const { sheet, links } = await answer.json();
  return `${url}/sheet/${sheet}#${links.owner}`;
}

async function photograph(address, path) {
  const { chromium } = await import("@playwright/test");
  const browser = await chromium.launch({ executablePath: findChromium(), args: CHROMIUM_FLAGS });
  try {
    const page = await browser.newPage({ viewport: SIZE, colorScheme: "light" });
    await page.goto(address);
    await page.getByText(/all ink saved/i).waitFor();
    await page.getByRole("button", { name: "Later" }).click(); // the greeting lies over the strip
    await page.getByRole("button", { name: "Show where: Left foot slips" }).click();
    await page.waitForLoadState("networkidle");
    await page.screenshot({ path, animations: "disabled" });
  } finally {
    await browser.close();
  }
}
