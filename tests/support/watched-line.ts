import type { Page } from "@playwright/test";
import type { SheetOnDisk } from "./sheet-on-disk";

/** What the state line said at a moment, and how things stood. */
interface Sample {
  readonly text: string;
  /** Strokes begun on this page: each time the pen came down. */
  readonly begun: number;
  /** Pieces of work in this browser's own store, where the line speaks of it. */
  readonly kept: number | null;
  /** Strokes in the hub's database, read from outside, when the words were heard of. */
  readonly onDisk: number;
}

export interface WatchedLine {
  /** What the line said that was not so. */
  readonly lies: readonly string[];
  /** All that it said since it was asked last, each once. */
  said(): readonly string[];
  /** So many strokes will never be on the sheet, and the page's person knows. */
  forgive(strokes: number): void;
}

const SAVED = /^(all ink saved|offline, all ink so far is saved)$/;
const KEPT = /kept on this machine$/;

/**
 * Looks at the state line with every change of the page, with every touch of the pen and twenty times a
 * second, and holds what it says to what is true: *saved* to the hub's database as another process reads
 * it, *kept* to the browser's store. Call it before the page is opened.
 */
export async function watchLine(page: Page, disk: () => SheetOnDisk | null): Promise<WatchedLine> {
  const lies: string[] = [];
  let heard = new Set<string>();
  let forgiven = 0;
  await page.exposeFunction("heardOfLine", (told: Omit<Sample, "onDisk">) => {
    const onDisk = disk()?.strokes();
    if (onDisk === undefined) return;
    heard.add(told.text);
    const sample = { ...told, begun: told.begun - forgiven, onDisk };
    const lie = lieIn(sample);
    if (lie !== null) lies.push(`“${sample.text}” ${lie}`);
  });
  await page.addInitScript(watchInPage);
  return {
    lies,
    said() {
      const said = [...heard];
      heard = new Set();
      return said;
    },
    forgive(strokes) {
      forgiven += strokes;
    },
  };
}

function lieIn({ text, begun, kept, onDisk }: Sample): string | null {
  if (SAVED.test(text) && onDisk < begun) return `with ${onDisk} of ${begun} strokes on the disk`;
  if (KEPT.test(text) && onDisk + (kept ?? 0) < begun) {
    return `with ${onDisk} of ${begun} strokes on the disk and ${kept} here`;
  }
  return null;
}

/** Runs in the page. */
function watchInPage(): void {
  const tell = (window as unknown as { heardOfLine: (told: object) => void }).heardOfLine;
  let begun = 0;
  let last = "";
  const keptHere = () =>
    new Promise<number>((resolve) => {
      const opening = indexedDB.open("heelstrip");
      opening.onerror = () => resolve(0);
      opening.onsuccess = () => {
        const count = opening.result.transaction("work").objectStore("work").count();
        count.onsuccess = () => {
          opening.result.close();
          resolve(count.result);
        };
      };
    });
  const look = () => {
    const line = document.querySelector("header button[data-state]");
    const text = line?.textContent ?? "";
    if (text === "") return;
    last = text;
    const now = begun;
    if (!text.endsWith("kept on this machine")) tell({ text, begun: now, kept: null });
    else void keptHere().then((kept) => tell({ text, begun: now, kept }));
  };
  const lookIfOther = () => {
    const text = document.querySelector("header button[data-state]")?.textContent ?? "";
    if (text !== last) look();
  };
  document.addEventListener(
    "pointerdown",
    ({ pointerType, target }) => {
      if (pointerType !== "pen" || (target as Element).closest("figure") === null) return;
      begun++;
      setTimeout(look);
    },
    { capture: true },
  );
  document.addEventListener("pointerup", () => setTimeout(look), { capture: true });
  new MutationObserver(lookIfOther).observe(document, {
    ...{ subtree: true, childList: true, characterData: true },
  });
  setInterval(look, 50);
}
