"use client";
import { useEffect, useState } from "react";
import { Button, Dialog } from "../_controls";
import { common, strip } from "../_words";
import styles from "./board.module.css";
import { fetchPages, type Page, type PageView, pageAtHand } from "./fetch-page";

export interface BoardPageProps {
  readonly page: Page;
  readonly onClose: () => void;
}

/** A page over the board: at once when it is at hand, else as soon as it is fetched. */
export function BoardPage({ page, onClose }: BoardPageProps) {
  const [View, setView] = useState<PageView | null>(() => pageAtHand(page));
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    if (View !== null || failed) return;
    let left = false;
    fetchPages().then(
      (pages) => left || setView(() => pages[page]),
      () => left || setFailed(true),
    );
    return () => {
      left = true;
    };
  }, [page, View, failed]);
  if (View !== null) return <View onClose={onClose} />;
  return (
    <Dialog title={strip.page[page]} closeLabel={common.close} onClose={onClose}>
      <p role="status">{failed ? strip.page.unfetched : strip.page.fetching}</p>
      {failed && (
        <Button className={styles.again} onClick={() => setFailed(false)}>
          {strip.page.again}
        </Button>
      )}
    </Dialog>
  );
}
