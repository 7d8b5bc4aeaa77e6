"use client";
import { useRouter } from "next/navigation";
import { type ChangeEvent, useRef, useState } from "react";
import { SHEET_FILE_BYTES } from "../../shared/limits";
import { Button, ThemeSwitch } from "../_controls";
import { start } from "../_words";
import { BriefForm } from "./brief-form";
import { createSheet } from "./create-sheet";
import { OpenedList } from "./opened-list";
import styles from "./start.module.css";
import { StartPicture } from "./start-picture";

type Busy = "brief" | "demo" | "example" | "file" | null;

/** The page one comes in by: look at the demo, begin a walk, look at a captured one, open a file, go on. */
export function StartDesk() {
  const router = useRouter();
  const [busy, setBusy] = useState<Busy>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const file = useRef<HTMLInputElement>(null);

  const begin = async (what: Busy, request: unknown) => {
    setBusy(what);
    setProblem(null);
    const created = await createSheet(request);
    if ("address" in created) return router.push(created.address);
    setProblem(created.problem ?? start.unreachable);
    setBusy(null);
  };
  const openFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const chosen = event.currentTarget.files?.[0];
    event.currentTarget.value = ""; // the same file may be chosen again after it was mended
    if (chosen === undefined) return;
    // Told from its size alone: the page does not try to read what no sheet can be.
    if (chosen.size > SHEET_FILE_BYTES) return setProblem(start.fileTooLarge(chosen.size));
    await begin("file", { from: "file", file: await chosen.text() });
  };

  return (
    <main className={styles.desk}>
      <header className={styles.head}>
        <StartPicture />
        <div>
          <h1>{start.name}</h1>
          <p>{start.job}</p>
        </div>
        <ThemeSwitch words={start.theme} />
      </header>
      {problem !== null && (
        <p role="alert" className={styles.problem}>
          <b>{start.failed}:</b> {problem}
        </p>
      )}
      <section className={`${styles.card} ${styles.demo}`} aria-labelledby="demo">
        <div>
          <h2 id="demo">{start.demo}</h2>
          <p className={styles.hint}>{start.demoHint}</p>
        </div>
        <span className={styles.walker} aria-hidden="true" />
        <Button
          look="main"
          disabled={busy !== null}
          onClick={() => void begin("demo", { from: "example", example: "brindle" })}
        >
          {busy === "demo" ? start.going : start.demoGo}
        </Button>
      </section>
      <div className={styles.columns}>
        <section className={styles.card} aria-labelledby="new-walk">
          <h2 id="new-walk">{start.newWalk}</h2>
          <BriefForm busy={busy !== null} onStart={(brief) => void begin("brief", brief)} />
        </section>
        <div className={styles.side}>
          <section className={styles.card} aria-labelledby="example">
            <h2 id="example">{start.example}</h2>
            <p className={styles.hint}>{start.exampleHint}</p>
            <Button
              disabled={busy !== null}
              onClick={() => void begin("example", { from: "example", example: "captured-walk" })}
            >
              {busy === "example" ? start.going : start.exampleGo}
            </Button>
          </section>
          <section className={styles.card} aria-labelledby="open-file">
            <h2 id="open-file">{start.open}</h2>
            <p className={styles.hint}>{start.openHint}</p>
            <input
              ref={file}
              type="file"
              accept=".json,application/json"
              aria-label={start.openFile}
              className="heard"
              tabIndex={-1}
              onChange={(event) => void openFile(event)}
            />
            <Button disabled={busy !== null} onClick={() => file.current?.click()}>
              {busy === "file" ? start.opening : start.openGo}
            </Button>
          </section>
          <OpenedList />
          <p className={styles.note}>
            {start.note} <a href="/methods">{start.methods}</a>
          </p>
        </div>
      </div>
    </main>
  );
}
