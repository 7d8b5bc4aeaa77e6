import { handover } from "../_words";
import styles from "./handover.module.css";
import type { PrintStep } from "./print-step";
import type { JobState } from "./use-print-job";

/** How far the print is, in words and as a bar; afterwards, what became of it. */
export function PrintProgress({ state }: { readonly state: JobState }) {
  const failed = state.kind === "said" && state.failed;
  return (
    <>
      {state.kind === "making" && (
        <progress
          className={styles.progress}
          aria-label={handover.progress}
          {...share(state.step)}
        />
      )}
      <p role="status" className={styles.said} data-failed={failed}>
        {state.kind === "making" && wordsOf(state.step)}
        {state.kind === "said" && state.words}
      </p>
    </>
  );
}

function wordsOf(step: PrintStep): string {
  switch (step.stage) {
    case "layout":
    case "fonts":
      return handover.making[step.stage];
    case "page":
    case "picture":
      return handover.making[step.stage](step.page, step.pages);
  }
}

const STEPS_A_PAGE = 2; // its lines, then its picture

/** The steps that are done, of all. */
function share(step: PrintStep): { value: number; max: number } {
  if (!("page" in step)) return { value: 0, max: 1 };
  const done = (step.page - 1) * STEPS_A_PAGE + (step.stage === "picture" ? 1 : 0);
  return { value: done, max: step.pages * STEPS_A_PAGE };
}
