import { useEffect } from "react";
import { useRoom } from "../_room";

const AT_THE_LATEST_MS = 500; // a page that never rests: nobody is to wait longer for the remarks

/**
 * Fetches what reads the walk once the board is painted and the browser has a moment; and again by itself when a
 * line that was down is there again.
 */
export function useReaderAhead(): void {
  const { review } = useRoom();
  useEffect(() => {
    const read = () => void review.read().catch(() => undefined); // the margin tells of it, and asks again
    const stop = whenAtRest(read);
    const again = () => {
      if (review.reader.get() === "unfetched") read();
    };
    addEventListener("online", again);
    return () => {
      stop();
      removeEventListener("online", again);
    };
  }, [review]);
}

/** After the next paint, when there is nothing more urgent. Answers with the way to call it off. */
function whenAtRest(deed: () => void): () => void {
  if (typeof requestIdleCallback === "undefined") {
    const timer = setTimeout(deed, AT_THE_LATEST_MS / 2);
    return () => clearTimeout(timer);
  }
  const asked = requestIdleCallback(deed, { timeout: AT_THE_LATEST_MS });
  return () => cancelIdleCallback(asked);
}
