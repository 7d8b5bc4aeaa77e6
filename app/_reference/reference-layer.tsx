"use client";
import { memo, useEffect, useRef, useState } from "react";
import { PANEL } from "../../lib/body";
import type { PictureUnder } from "../../lib/sheet";
import { useOnScreen } from "../_paper";
import { useRoom, useStoreValue } from "../_room";
import { reference as words } from "../_words";
import { type LayerProps, type PictureSpot, useWorkspace } from "../_workspace";
import styles from "./reference.module.css";

const SMALL = 190; // CSS pixels across: no room for words

const isAt = (spot: PictureSpot | null, { panel, view }: Pick<LayerProps, "panel" | "view">) =>
  spot !== null && spot.panel === panel.id && spot.view === view;

/** What lies under one paper: its reference picture, or the place where one is about to lie. */
export const ReferenceLayer = memo(function ReferenceLayer(props: LayerProps) {
  const { panel, view, width } = props;
  const layer = useRef<HTMLDivElement>(null);
  const onScreen = useOnScreen(layer);
  const over = useWorkspace(({ pictureOver }) => isAt(pictureOver, props));
  const sent = useWorkspace(({ pictureJob: job }) =>
    job?.kind === "under-way" && isAt(job.spot, props) ? (job.sent ?? 0) : null,
  );
  const draft = useWorkspace(({ pictureDraft }) =>
    isAt(pictureDraft, props) ? pictureDraft : null,
  );
  const stored = panel.pictures[view];
  const picture = stored === null || draft === null ? stored : { ...stored, ...draft.place };
  return (
    <div ref={layer} className={styles.layer} data-over={over} data-small={width < SMALL}>
      {picture !== null && onScreen && <Picture key={picture.picture} picture={picture} />}
      {over && <p className={styles.told}>{words.drop}</p>}
      {sent !== null && <progress className={styles.progress} value={sent} aria-hidden="true" />}
    </div>
  );
});

type Coming = "fetching" | "shown" | "missed";

/** Fetched when it comes on screen; one that did not come is asked for again when the line is back. */
function Picture({ picture }: { readonly picture: PictureUnder }) {
  const { sheetId } = useRoom();
  const [coming, setComing] = useState<Coming>("fetching");
  const tries = useWorkspace((workspace) => workspace.pictureTries);
  const miss = useWorkspace((workspace) => workspace.missPicture);
  const { x, y, width, height, dim } = picture;
  const again = tries === 0 ? "" : `?again=${tries}`; // another address: a miss may be remembered
  useRetryWhenBack(coming === "missed");
  return (
    <>
      <svg
        className={styles.picture}
        viewBox={`0 0 ${PANEL.width} ${PANEL.height}`}
        role="img"
        aria-label={words.picture}
        data-coming={coming}
      >
        {coming !== "shown" && (
          <rect className={styles.place} x={x} y={y} width={width} height={height} />
        )}
        <image
          key={tries}
          href={`/api/sheets/${sheetId}/pictures/${picture.picture}${again}`}
          {...{ x, y, width, height }}
          preserveAspectRatio="none"
          opacity={coming === "shown" ? 1 - dim : 0}
          onLoad={() => setComing("shown")}
          onError={() => {
            setComing("missed");
            miss();
          }}
        />
      </svg>
      {coming !== "shown" && (
        <p className={styles.told} data-waiting={coming === "fetching"}>
          {coming === "fetching" ? words.fetching : words.missed}
        </p>
      )}
    </>
  );
}

function useRetryWhenBack(missed: boolean): void {
  const { ink } = useRoom();
  const state = useStoreValue(ink);
  const away = state === "offline" || state === "not-saved";
  const wasAway = useRef(false);
  const tryAgain = useWorkspace((workspace) => workspace.tryPicturesAgain);
  useEffect(() => {
    if (away) wasAway.current = missed;
    else if (wasAway.current && missed) {
      wasAway.current = false;
      tryAgain();
    }
  }, [away, missed, tryAgain]);
}
