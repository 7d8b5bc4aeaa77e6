import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { run, runTool } from "./run.mjs";

const NAMES = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];

/** What Playwright turns off: the switch counts once, so ours has to name these as well. */
const OFF_IN_PLAYWRIGHT = [
  ...["AvoidUnnecessaryBeforeUnloadCheckSync", "DestroyProfileOnBrowserClose", "HttpsUpgrades"],
  ...["HttpsFirstBalancedModeAutoEnable", "LensOverlay", "MediaRouter", "PaintHolding"],
  ...["ThirdPartyStoragePartitioning", "AvoidCorsURLLoaderRestartOnRedirect"],
  ...["TcpPortRandomizationWin", "OptimizationHints", "NetworkTimeServiceQuerying", "AimEnabled"],
  ...["PreconnectToSearch", "msForceBrowserSignIn", "msEdgeUpdateLaunchServicesPreferredVersion"],
];

/** What drops down from the address bar is two pages in a process, loaded anew with every window. */
const ADDRESS_BAR = ["WebUIOmniboxPopup", "WebUIOmniboxAimPopup"];

/** Quiet, alike on every machine, without a request to anyone, and without what no journey looks at. */
export const CHROMIUM_FLAGS = [
  `--disable-features=${[...OFF_IN_PLAYWRIGHT, ...ADDRESS_BAR].join(",")}`,
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/**
 * The browser that the tests drive: $CHROMIUM, or one on the PATH. Undefined leaves the choice to
 * Playwright, which then takes the one it fetched.
 *
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env.CHROMIUM;
  if (named !== undefined && named !== "") return named;
  const folders = (process.env.PATH ?? "").split(delimiter);
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name))).find(isProgram);
}

/** Sees to it that there is a browser to test with. Errors: when every way to get one failed. */
export async function ensureChromium() {
  if (findChromium() !== undefined || (await hasPlaywrights())) return;
  console.log("Installing Chromium …");
  const tried = [];
  if (process.getuid?.() === 0 && existsSync("/etc/debian_version")) {
    const fromDebian = await installFromDebian();
    if (fromDebian.code === 0) return;
    tried.push(fromDebian.output);
  }
  const fetched = await runTool("@playwright/test/cli.js", ["install", "chromium"]);
  if (fetched.code === 0) return;
  throw new Error(
    `no Chromium to be had; point CHROMIUM at one\n${[...tried, fetched.output].join("\n")}`,
  );
}

async function installFromDebian() {
  const apt = (...args) =>
    run("apt-get", ["-o", "DPkg::Lock::Timeout=600", "-y", ...args], {
      env: { DEBIAN_FRONTEND: "noninteractive" },
    });
  const update = await apt("update");
  if (update.code !== 0) return update;
  return apt("install", "--no-install-recommends", "chromium", "fonts-dejavu-core");
}

async function hasPlaywrights() {
  const { chromium } = await import("@playwright/test");
  return existsSync(chromium.executablePath());
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
