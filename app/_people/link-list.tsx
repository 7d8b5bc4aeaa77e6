"use client";
import { useState } from "react";
import type { LinkListed } from "../../shared/api-answers";
import { Button } from "../_controls";
import { people } from "../_words";
import styles from "./links.module.css";
import form from "./people-form.module.css";
import { sortLinks } from "./sort-links";

/** The links; or that they are on their way, or did not come. */
export type LinksRead = readonly LinkListed[] | "reading" | "unread";

export interface LinkListProps {
  readonly links: LinksRead;
  readonly onTryAgain: () => void;
  readonly onRevoke: (link: string) => Promise<void>;
}

/** The links that open this sheet, and those that no longer do. */
export function LinkList({ links, onTryAgain, onRevoke }: LinkListProps) {
  return (
    <section className={styles.links}>
      <h3>{people.invite.links}</h3>
      {links === "reading" && <p className={form.hint}>{people.invite.reading}</p>}
      {links === "unread" && (
        <>
          <p role="alert" className={form.wrong}>
            {people.invite.unread}
          </p>
          <Button small onClick={onTryAgain}>
            {people.invite.again}
          </Button>
        </>
      )}
      {typeof links !== "string" && <Rows links={links} onRevoke={onRevoke} />}
    </section>
  );
}

interface RowsProps {
  readonly links: readonly LinkListed[];
  readonly onRevoke: (link: string) => Promise<void>;
}

function Rows({ links, onRevoke }: RowsProps) {
  if (links.length === 0) return <p className={form.hint}>{people.invite.none}</p>;
  return (
    <ul>
      {sortLinks(links).map((link) => (
        <LinkRow key={link.link} link={link} onRevoke={onRevoke} />
      ))}
    </ul>
  );
}

interface LinkRowProps {
  readonly link: LinkListed;
  readonly onRevoke: (link: string) => Promise<void>;
}

function LinkRow({ link, onRevoke }: LinkRowProps) {
  const [asking, setAsking] = useState(false);
  const words = people.invite;
  const role = people.role[link.role];
  const when =
    link.revokedAt === null
      ? words.since(dayOf(link.createdAt))
      : words.closed(dayOf(link.revokedAt));
  return (
    <li className={styles.link} data-closed={link.revokedAt !== null}>
      <div className={styles.linkSaid}>
        <b>{role}</b>
        <span>{link.label === "" ? words.noLabel : link.label}</span>
        <small>{when}</small>
      </div>
      {link.revokedAt === null && !asking && (
        <Button
          small
          aria-label={words.revokeNamed(role, link.label)}
          onClick={() => setAsking(true)}
        >
          {words.revoke}
        </Button>
      )}
      {asking && link.revokedAt === null && (
        <fieldset className={styles.ask}>
          <legend>{words.revokeAsk}</legend>
          <Button small look="main" onClick={() => void onRevoke(link.link)}>
            {words.revokeYes}
          </Button>
          <Button small autoFocus onClick={() => setAsking(false)}>
            {words.revokeNo}
          </Button>
        </fieldset>
      )}
    </li>
  );
}

const day = new Intl.DateTimeFormat(undefined, {
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});

/** When, in the reader's own way of writing days. Units: ms since 1970. */
const dayOf = (at: number): string => day.format(at);
