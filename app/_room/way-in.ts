import { askHub } from "./ask-hub";

/**
 * A socket that is refused and a hub that is away look alike to a page. So when a line does not open
 * the hub is asked by the other door, one question at a time, and `onShutOut` is called once it says
 * that there is nothing here for this browser: trying again would be in vain.
 *
 * Errors: none; a hub that is away, or busy, has not said no
 */
export function askWayIn(sheetId: string, onShutOut: () => void): () => void {
  let asking = false;
  return () => {
    if (asking) return;
    asking = true;
    void askHub("GET", `/api/sheets/${sheetId}`).then((answer) => {
      asking = false;
      if (answer.kind === "refused" && answer.code === "not-found") onShutOut();
    });
  };
}
