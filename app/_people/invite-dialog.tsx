"use client";
import { useCallback, useEffect, useMemo, useState } from "react";
import type { LinkCreated } from "../../shared/api-answers";
import { Dialog } from "../_controls";
import { useRoom, useStoreValue } from "../_room";
import { common, invite } from "../_words";
import { LinkList, type LinksRead } from "./link-list";
import styles from "./links.module.css";
import { openLinksDoor, whyNot } from "./links-door";
import { NewLink } from "./new-link";
import { NewLinkForm } from "./new-link-form";
import form from "./people-form.module.css";

/** Links to this sheet: make one, see which there are, close one. The owner's alone. */
export function InviteDialog({ onClose }: { readonly onClose: () => void }) {
  const room = useRoom();
  const role = useStoreValue(room.role);
  return (
    <Dialog title={invite.title} closeLabel={common.close} onClose={onClose}>
      {role === "owner" ? <OwnersLinks sheetId={room.sheetId} /> : <p>{invite.notYours}</p>}
    </Dialog>
  );
}

function OwnersLinks({ sheetId }: { readonly sheetId: string }) {
  const door = useMemo(() => openLinksDoor(sheetId), [sheetId]);
  const [links, setLinks] = useState<LinksRead>("reading");
  const [made, setMade] = useState<LinkCreated | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const fetchLinks = useCallback(async () => {
    const answer = await door.list();
    if (answer.kind === "answer") return setLinks(answer.value.links);
    // What was read before stays; where there is nothing yet, the list itself says so.
    setLinks((before) => (before === "reading" ? "unread" : before));
    if (answer.kind === "refused") setProblem(whyNot(answer));
  }, [door]);
  useEffect(() => {
    void fetchLinks();
  }, [fetchLinks]);

  return (
    <div className={styles.invite}>
      <p>{invite.lead}</p>
      <NewLinkForm
        onMake={async (role, label, expiresAt) => {
          const answer = await door.make(role, label, expiresAt);
          setProblem(answer.kind === "answer" ? null : whyNot(answer));
          if (answer.kind !== "answer") return false;
          setMade(answer.value);
          await fetchLinks();
          return true;
        }}
      />
      {made !== null && <NewLink key={made.link} sheetId={sheetId} made={made} />}
      <p role="alert" className={problem === null ? "heard" : form.wrong}>
        {problem}
      </p>
      <LinkList
        links={links}
        onTryAgain={() => {
          setLinks("reading");
          setProblem(null);
          void fetchLinks();
        }}
        onChangeRole={async (link, role) => {
          const answer = await door.changeRole(link, role);
          setProblem(answer.kind === "answer" ? null : whyNot(answer));
          await fetchLinks();
        }}
        onRevoke={async (link) => {
          const answer = await door.revoke(link);
          setProblem(answer.kind === "answer" ? null : whyNot(answer));
          if (made?.link === link) setMade(null); // what no longer opens need not be copied
          await fetchLinks();
        }}
      />
    </div>
  );
}
