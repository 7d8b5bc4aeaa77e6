"use client";
import { useEffect, useState } from "react";
import { countedWords, LostActs } from "../_handover";
import { openOwnDrawer, sheetOf, tallyOf } from "../_room";
import type { Drawer } from "../_room/local/drawer";
import type { KeptWork } from "../_room/local/kept-work";
import { readOpened } from "../_room/opened-sheets";
import { door } from "../_words";

interface Found {
  readonly drawer: Drawer;
  readonly work: readonly KeptWork[];
}

/**
 * What lies in this browser of a sheet that does not open: drawn here, and never handed over. With another
 * link to the sheet it comes onto it; as a file it can be had at once.
 */
export function KeptHere({ sheetId }: { readonly sheetId: string }) {
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    const drawer = openOwnDrawer(sheetId);
    let left = false;
    void drawer.read().then((work) => {
      if (!left && work.length > 0) setFound({ drawer, work });
    });
    return () => {
      left = true;
      drawer.close();
    };
  }, [sheetId]);
  if (found === null) return null;
  const { drawer, work } = found;
  const title = readOpened().find(({ sheet }) => sheet === sheetId)?.title ?? door.kept.untitled;
  const forget = () => {
    for (const { key } of work) drawer.drop(key);
    setFound(null);
  };
  return (
    <section aria-label={door.kept.label}>
      <p>
        <b>{door.kept.words(countedWords(tallyOf(work)))}</b>
      </p>
      <LostActs sheet={() => sheetOf(title, work)} where={door.kept.where} onForget={forget} />
    </section>
  );
}
