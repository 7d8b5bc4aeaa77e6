"use client";
import { useEffect, useRef } from "react";
import { Button } from "../_controls";
import { reference as words } from "../_words";
import { type PictureJob, useWorkspace } from "../_workspace";
import styles from "./reference.module.css";

/** How far a picture is on its way, or why it did not get there; and pictures that did not come. */
export function PictureJobLine() {
  const job = useWorkspace((workspace) => workspace.pictureJob);
  const missed = useWorkspace((workspace) => workspace.pictureMissed);
  const tryAgain = useWorkspace((workspace) => workspace.tryPicturesAgain);
  if (job?.kind === "under-way") return <UnderWay job={job} />;
  if (job?.kind === "failed") return <Failed job={job} />;
  if (!missed) return null;
  return (
    <div className={styles.job} data-failed>
      <p role="status">{words.missedHint}</p>
      <Button small onClick={tryAgain}>
        {words.again}
      </Button>
    </div>
  );
}

function UnderWay({ job }: { readonly job: Extract<PictureJob, { kind: "under-way" }> }) {
  return (
    <div className={styles.job}>
      <p>{job.sent === null ? words.reading : words.sending(job.sent)}</p>
      <progress
        aria-label={words.name}
        {...(job.sent === null ? {} : { value: job.sent, max: 1 })}
      />
      <Button small onClick={job.stop}>
        {words.stop}
      </Button>
    </div>
  );
}

function Failed({ job }: { readonly job: Extract<PictureJob, { kind: "failed" }> }) {
  const setJob = useWorkspace((workspace) => workspace.setPictureJob);
  const line = useRef<HTMLDivElement>(null);
  useEffect(() => {
    line.current?.scrollIntoView({ block: "nearest", inline: "nearest" }); // may answer a promise
  }, []);
  return (
    <div ref={line} className={styles.job} data-failed>
      <p role="alert">{job.why}</p>
      <div className={styles.pair}>
        {job.again !== null && (
          <Button
            small
            look="main"
            onClick={() => {
              setJob(null);
              job.again?.();
            }}
          >
            {words.again}
          </Button>
        )}
        <Button small onClick={() => setJob(null)}>
          {words.leaveIt}
        </Button>
      </div>
    </div>
  );
}
