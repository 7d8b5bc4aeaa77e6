import { useEffect } from "react";
import { useRoom } from "../_room";
import { strip } from "../_words";
import { useWorkspaceStore } from "../_workspace";

const SLOW_MS = 700; // our own choice: what is read sooner than that is not worth a word

/** Says that the sheet is being read, where that takes a while, and what came of it. */
export function useSpokenReading(): void {
  const { review } = useRoom();
  const workspace = useWorkspaceStore();
  useEffect(() => {
    let announced = false;
    const say = (words: string) => {
      announced = true;
      workspace.getState().say(words);
    };
    const sayReading = () => {
      if (review.get() === null) say(strip.said.reading);
    };
    const slow = setTimeout(() => {
      if (review.reader.get() === "awaited") sayReading();
    }, SLOW_MS);
    const stopReader = review.reader.subscribe(() => {
      const state = review.reader.get();
      if (state === "unfetched") say(strip.said.unread);
      if (state === "asked-again") sayReading();
    });
    const stopReview = review.subscribe(() => {
      const remarks = review.get()?.remarks;
      if (remarks === undefined) return;
      stopReview();
      if (announced) say(strip.said.read(remarks.filter(({ level }) => level !== "tidy").length));
    });
    return () => {
      clearTimeout(slow);
      stopReader();
      stopReview();
    };
  }, [review, workspace]);
}
