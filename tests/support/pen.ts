import type { CDPSession, Page } from "@playwright/test";

/** A point of the window, CSS pixels. */
export interface ScreenPoint {
  readonly x: number;
  readonly y: number;
}

/** A pen on the screen: the browser sees pointer events of type "pen", with pressure and tilt. */
export interface Pen {
  down(at: ScreenPoint, force?: number): Promise<void>;
  /** Goes through all the points without waiting between them, as a quick hand does. */
  move(way: readonly ScreenPoint[], force?: number): Promise<void>;
  up(): Promise<void>;
  /** From the first point through the others, and off the paper. */
  draw(way: readonly ScreenPoint[], force?: number): Promise<void>;
  tap(at: ScreenPoint): Promise<void>;
  /** The other hand holds Alt down, or lets it go. */
  holdAlt(held: boolean): void;
}

const RESTING = 0.5; // pressure 0..1
const TILT = { tiltX: 15, tiltY: -10 }; // degrees

/** Puts a pen to a page. `page.mouse` is a mouse only, and always presses with 0.5. */
export async function takePen(page: Page): Promise<Pen> {
  const browser: CDPSession = await page.context().newCDPSession(page);
  let at: ScreenPoint = { x: 0, y: 0 };
  let modifiers = 0;

  const send = (type: "mousePressed" | "mouseMoved" | "mouseReleased", force: number) =>
    browser.send("Input.dispatchMouseEvent", {
      ...{ type, ...at, ...TILT, force, pointerType: "pen", button: "left", clickCount: 1 },
      buttons: type === "mouseReleased" ? 0 : 1,
      modifiers,
    });
  const pen: Pen = {
    async down(point, force = RESTING) {
      at = point;
      await send("mousePressed", force);
    },
    async move(way, force = RESTING) {
      const sent = way.map((point) => {
        at = point;
        return send("mouseMoved", force);
      });
      await Promise.all(sent);
    },
    async up() {
      await send("mouseReleased", 0);
    },
    async draw([first, ...rest], force = RESTING) {
      if (first === undefined) throw new RangeError("a pen's way needs a point, got none");
      await pen.down(first, force);
      await pen.move(rest, force);
      await pen.up();
    },
    async tap(point) {
      await pen.down(point);
      await pen.up();
    },
    holdAlt(held) {
      modifiers = held ? 1 : 0; // as the browser's protocol counts it
    },
  };
  return pen;
}
