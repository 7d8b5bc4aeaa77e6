"use client";
import dynamic from "next/dynamic";
import { useCallback, useEffect, useState } from "react";
import { Button } from "../_controls";
import { door } from "../_words";
import { comeIn, type Entry } from "./come-in";
import { Notice } from "./notice";

// Yjs stays out of the server's bundle, and the start page's.
const BoardRoom = dynamic(() => import("../_strip/board-room").then((m) => m.BoardRoom), {
  ssr: false,
  loading: () => <Notice title={door.asking} busy />,
});

/** Yjs again, to read what lies here. */
const KeptHere = dynamic(() => import("../_strip/kept-here").then((m) => m.KeptHere), {
  ssr: false,
});

/** Stands between the link and the board: lets in, or says why not and whom to ask. */
export function SheetDoor({ sheetId }: { readonly sheetId: string }) {
  const [entry, setEntry] = useState<Entry | null>(null);
  const ask = useCallback(() => void comeIn(sheetId).then(setEntry), [sheetId]);
  useEffect(ask, [ask]);
  useEffect(() => {
    // Another link to the same sheet, opened in this tab, differs behind the # alone: no page is loaded.
    const comeAgain = () => {
      if (location.hash.length < 2) return;
      setEntry(null);
      ask();
    };
    window.addEventListener("hashchange", comeAgain);
    return () => window.removeEventListener("hashchange", comeAgain);
  }, [ask]);
  if (entry === null) return <Notice title={door.asking} busy />;
  const kept = <KeptHere sheetId={sheetId} />;
  switch (entry.kind) {
    case "open":
      return <BoardRoom sheetId={sheetId} role={entry.role} />;
    case "bad-link":
      return <Notice title={door.badLinkTitle} body={door.badLinkBody} more={kept} />;
    case "closed":
      return <Notice title={door.closedTitle} body={door.closedBody} more={kept} />;
    case "unreachable":
      return (
        <Notice title={door.unreachableTitle} body={door.unreachableBody}>
          <Button look="main" onClick={ask}>
            {door.again}
          </Button>
        </Notice>
      );
  }
}
