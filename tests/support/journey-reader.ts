import type { Page } from "@playwright/test";

/** What stands in the script that reads a walk and in no other: the title of a check's remark. */
const TOLD_BY_THE_READER = "knee bends back";

/** Somebody at the door through which a page fetches what reads a walk. */
export interface ReaderDoor {
  letIn(): void;
  turnAway(): void;
  /** How often it was come for. */
  readonly asked: () => number;
}

/** Holds what reads a walk at the door until it is said what becomes of it; everything else passes. */
export async function standAtReadersDoor(page: Page): Promise<ReaderDoor> {
  let open: boolean | null = null;
  let asked = 0;
  let decide: (() => void)[] = [];
  const decided = () => new Promise<void>((resolve) => decide.push(resolve));
  const say = (opens: boolean) => {
    open = opens;
    for (const resolve of decide) resolve();
    decide = [];
  };
  await page.route(/\/chunks\/[^/]+\.js/, async (route) => {
    const response = await route.fetch();
    if (!(await response.text()).includes(TOLD_BY_THE_READER)) return route.fulfill({ response });
    asked += 1;
    if (open === null) await decided();
    return open === true ? route.fulfill({ response }) : route.abort();
  });
  return { letIn: () => say(true), turnAway: () => say(false), asked: () => asked };
}
