import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { act, type Hands } from "../../../app/_strip/use-keys";
import { help } from "../../../app/_words";
import { createWorkspace } from "../../../app/_workspace";
import { openSheetView } from "../../../lib/sheet";
import { peers } from "../../support/peers";

/** How the overview writes a key that is not written as the browser names it. */
const WRITTEN: Readonly<Record<string, string>> = {
  ...{ ArrowLeft: "←", ArrowRight: "→", ArrowUp: "↑", ArrowDown: "↓", " ": "Space", "-": "−" },
};
/** Two ways to one key: plus without Shift, and Ctrl Y with a Shift that does no harm. */
const SAME: Readonly<Record<string, string>> = { "=": "+", "Ctrl Shift Y": "Ctrl Y" };

const ARROWS = ["ArrowLeft", "ArrowRight", "ArrowUp", "ArrowDown"];
const LETTERS = [..."abcdefghijklmnopqrstuvwxyz"];
const NAMED = [
  "Enter",
  "Escape",
  "Delete",
  "Backspace",
  "Tab",
  "Home",
  "End",
  "PageUp",
  "PageDown",
];
const FUNCTION_KEYS = Array.from({ length: 12 }, (_, index) => `F${index + 1}`);
const SINGLE = [
  ...[...LETTERS, ...ARROWS, ...NAMED, ...FUNCTION_KEYS],
  ...[..."0123456789 +-=?!,.;:#'/\\[]<>*_\"$%&()@^`~|{}"],
];
const CHORDS = [
  ...SINGLE.map((key) => ({ key, held: [] as string[] })),
  // Shift with a letter is the letter, for whoever has Caps Lock on.
  ...ARROWS.map((key) => ({ key, held: ["Shift"] })),
  ...SINGLE.map((key) => ({ key, held: ["Ctrl"] })),
  ...LETTERS.map((key) => ({ key, held: ["Ctrl", "Shift"] })),
  ...SINGLE.map((key) => ({ key, held: ["Alt"] })),
];

/** A board at rest with a panel in hand, and nobody else. */
function handsOnABoard(): Hands {
  const [peer] = peers(1);
  if (peer === undefined) throw new Error("nobody came");
  const sheet = openSheetView(peer.doc);
  const workspace = createWorkspace();
  workspace.getState().pickPanel(sheet.getSnapshot().panels[2]?.id ?? null);
  const room = { drawing: peer.doc, critique: peer.critique, sheet, undo: peer.undo };
  return {
    room,
    workspace,
    mayDraw: true,
    mayCritique: true,
    openHelp: () => {},
  } as unknown as Hands;
}

function means({ key, held }: (typeof CHORDS)[number]): boolean {
  const event = {
    ...{ key, target: { closest: () => null } },
    ...{ ctrlKey: held.includes("Ctrl"), metaKey: false },
    ...{ shiftKey: held.includes("Shift"), altKey: held.includes("Alt") },
  };
  return act(event as unknown as KeyboardEvent, handsOnABoard());
}

function written({ key, held }: (typeof CHORDS)[number]): string {
  const name = WRITTEN[key] ?? (key.length === 1 ? key.toUpperCase() : key);
  const chord = [...held, name].join(" ");
  return SAME[chord] ?? chord;
}

/** "Shift ← → ↑ ↓" is four chords; "D · R" is two keys. */
function listed(): string[] {
  return help.keys.flatMap(({ keys }) =>
    keys.split(" · ").flatMap((chord) => {
      const parts = chord.split(" ");
      const held = parts.filter((part) => ["Ctrl", "Shift", "Alt"].includes(part));
      return parts.slice(held.length).map((key) => [...held, key].join(" "));
    }),
  );
}

describe("the overview of keys", () => {
  beforeEach(() => {
    vi.stubGlobal("requestAnimationFrame", () => 0);
    vi.stubGlobal("document", { querySelector: () => null });
  });
  afterEach(() => vi.unstubAllGlobals());

  it("lists every key that means something on the board, and none that does not", () => {
    const bound = CHORDS.filter(means).map(written);
    expect([...new Set(bound)].sort()).toEqual(listed().sort());
  });

  it("lists no key twice", () => {
    expect(new Set(listed()).size).toBe(listed().length);
  });
});
