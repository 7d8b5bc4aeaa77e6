import { expect, type Page } from "@playwright/test";
import { labelOf } from "./journey-papers";
import { titleOf } from "./journey-sheet";

/** A state of the board with Brindle on it: how one comes to it, and back to the strip at rest. */
export interface Scene {
  readonly name: string;
  readonly enter: (page: Page) => Promise<void>;
  readonly leave: (page: Page) => Promise<void>;
}

const button = (page: Page, name: string | RegExp) => page.getByRole("button", { name });
const press = (key: string) => (page: Page) => page.keyboard.press(key);
const inHand = (page: Page, frame: number) => labelOf(page, frame).click();
const nothing = async () => {};

/** A tool in the hand, taken by its key; the pencil comes back afterwards. */
const tool = (name: string, key: string): Scene => ({
  name: `the tool in hand: ${name}`,
  enter: press(key),
  leave: press("d"),
});

/** What would be passed on to the panel at frame 22, shown and left. */
const passingOn = (name: string, key: string): Scene => ({
  name: `passing on: ${name}`,
  async enter(page) {
    await inHand(page, 22);
    await page.keyboard.press(key);
    await expect(page.getByRole("group", { name })).toBeVisible();
  },
  leave: press("Escape"),
});

const timing = (name: "Even out" | "Retime", key: string): Scene => ({
  name: `time: ${name}`,
  async enter(page) {
    await page.keyboard.press(key);
    await expect(page.getByRole("form", { name })).toBeVisible();
  },
  leave: press("Escape"),
});

/** A page that lies over the board, opened by a press of something. */
export const overBoard = (name: string, open: (page: Page) => Promise<void>): Scene => ({
  name: `over the board: ${name}`,
  async enter(page) {
    await open(page);
    const dialog = page.getByRole("dialog", { name });
    await expect(dialog).toBeVisible();
    await expect(dialog.getByText(/Laying out the sheet|Fetching the links/)).toHaveCount(0);
  },
  async leave(page) {
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog", { name })).toBeHidden();
  },
});

export const printing = overBoard("Print the sheet", (page) => button(page, /^Print/).click());

export const drawingDesk: Scene = {
  name: "the drawing desk",
  async enter(page) {
    await labelOf(page, 19).press("Enter");
    await expect(page.getByRole("region", { name: "Drawing desk" })).toBeVisible();
  },
  async leave(page) {
    await button(page, "To the strip").click();
    await expect(labelOf(page, 19)).toBeVisible();
  },
};

const playing: Scene = {
  name: "the strip at play",
  async enter(page) {
    await button(page, "Play the strip").click();
    await button(page, "¼").click();
  },
  async leave(page) {
    await page.keyboard.press("Escape");
    await expect(page.getByRole("region", { name: "The strip at speed" })).toBeHidden();
  },
};

const aFix: Scene = {
  name: "a fix, shown before it is done",
  async enter(page) {
    await button(page, /^Show a fix: /)
      .first()
      .click();
    await expect(
      page.getByRole("region", { name: "A fix, shown before it is done" }),
    ).toBeVisible();
  },
  leave: press("Escape"),
};

const keeping: Scene = {
  name: "a remark about to be kept on purpose",
  async enter(page) {
    await button(page, /^Keep on purpose: /)
      .first()
      .click();
    await expect(page.getByLabel("Why, if you like to say")).toBeVisible();
  },
  leave: press("Escape"),
};

const underThePaper: Scene = {
  name: "the options of a picture under the paper",
  async enter(page) {
    await inHand(page, 22);
    await page.keyboard.press("i");
    await expect(button(page, "Choose a picture")).toBeVisible();
  },
  leave: press("i"),
};

const asTable = (name: string, title: string): Scene =>
  overBoard(title, (page) => button(page, `${name}: read as a table`).click());

/** Every state that the board can be brought into by one person, one after the other. */
export const BOARD_SCENES: readonly Scene[] = [
  { name: "Brindle with remarks", enter: nothing, leave: nothing },
  { name: "a panel in hand", enter: (page) => inHand(page, 22), leave: nothing },
  tool("rub out", "r"),
  tool("mark joints", "m"),
  tool("gather", "g"),
  tool("move the paper", "h"),
  passingOn("Copy the pose", "c"),
  passingOn("Mirror to the other step", "x"),
  passingOn("Foot to its footprint", "p"),
  passingOn("Raise or lower the body", "b"),
  timing("Even out", "e"),
  timing("Retime", "t"),
  aFix,
  keeping,
  underThePaper,
  drawingDesk,
  playing,
  asTable("hips", "Hip height by frame, in leg lengths"),
  asTable("feet", "Footfalls: which foot is down when, and how"),
  asTable("gaps", "Frames between neighbouring panels"),
  printing,
  overBoard("Invite to this sheet", (page) => button(page, "Invite").click()),
  overBoard("Help", (page) => button(page, "Help").click()),
  overBoard("About this sheet", (page) => titleOf(page).click()),
  overBoard("Your name and hue", (page) => button(page, /^You are here as /).click()),
];
