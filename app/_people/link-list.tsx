"use client";
import { useState } from "react";
import type { LinkListed } from "../../shared/api-answers";
import { isRole, ROLES, type Role } from "../../shared/role";
import { Button } from "../_controls";
import { invite, people } from "../_words";
import styles from "./links.module.css";
import form from "./people-form.module.css";
import { opensAt, sortLinks } from "./sort-links";

/** The links; or that they are on their way, or did not come. */
export type LinksRead = readonly LinkListed[] | "reading" | "unread";

export interface LinkListProps {
  readonly links: LinksRead;
  readonly onTryAgain: () => void;
  readonly onRevoke: (link: string) => Promise<void>;
  readonly onChangeRole: (link: string, role: Role) => Promise<void>;
}

/** The links that open this sheet, and those that no longer do. */
export function LinkList({ links, onTryAgain, ...acts }: LinkListProps) {
  return (
    <section className={styles.links}>
      <h3>{invite.links}</h3>
      {links === "reading" && <p className={form.hint}>{invite.reading}</p>}
      {links === "unread" && (
        <>
          <p role="alert" className={form.wrong}>
            {invite.unread}
          </p>
          <Button small onClick={onTryAgain}>
            {invite.again}
          </Button>
        </>
      )}
      {typeof links !== "string" && <Rows links={links} {...acts} />}
    </section>
  );
}

type RowActs = Pick<LinkListProps, "onRevoke" | "onChangeRole">;

interface RowsProps extends RowActs {
  readonly links: readonly LinkListed[];
}

function Rows({ links, ...acts }: RowsProps) {
  if (links.length === 0) return <p className={form.hint}>{invite.none}</p>;
  const now = Date.now();
  return (
    <ul>
      {sortLinks(links, now).map((link) => (
        <LinkRow key={link.link} link={link} isOpen={opensAt(link, now)} {...acts} />
      ))}
    </ul>
  );
}

interface LinkRowProps extends RowActs {
  readonly link: LinkListed;
  readonly isOpen: boolean;
}

function LinkRow({ link, isOpen, onRevoke, onChangeRole }: LinkRowProps) {
  const [asking, setAsking] = useState(false);
  const role = people.role[link.role];
  return (
    <li className={styles.link} data-closed={!isOpen}>
      <div className={styles.linkSaid}>
        <b>{role}</b>
        <span>{link.label === "" ? invite.noLabel : link.label}</span>
        {whenOf(link, isOpen).map((when) => (
          <small key={when}>{when}</small>
        ))}
      </div>
      {isOpen && !asking && (
        <div className={form.row}>
          <select
            className={styles.role}
            aria-label={invite.roleNamed(role, link.label)}
            value={link.role}
            onChange={({ target }) => {
              if (isRole(target.value)) void onChangeRole(link.link, target.value);
            }}
          >
            {ROLES.map((other) => (
              <option key={other} value={other}>
                {people.role[other]}
              </option>
            ))}
          </select>
          <Button
            small
            aria-label={invite.revokeNamed(role, link.label)}
            onClick={() => setAsking(true)}
          >
            {invite.revoke}
          </Button>
        </div>
      )}
      {asking && isOpen && (
        <fieldset className={styles.ask}>
          <legend>{invite.revokeAsk(link.label, link.usedAt !== null)}</legend>
          <Button small look="main" onClick={() => void onRevoke(link.link)}>
            {invite.revokeYes}
          </Button>
          <Button small autoFocus onClick={() => setAsking(false)}>
            {invite.revokeNo}
          </Button>
        </fieldset>
      )}
    </li>
  );
}

/** When it was made or closed, when it ends, and when somebody last came by it. */
function whenOf(link: LinkListed, isOpen: boolean): readonly string[] {
  const { since, closed, ended, until, used, unused } = invite;
  const { createdAt, expiresAt, revokedAt, usedAt } = link;
  if (revokedAt !== null) return [closed(dayOf(revokedAt))];
  if (!isOpen && expiresAt !== null) return [ended(dayOf(expiresAt))];
  return [
    since(dayOf(createdAt)),
    ...(expiresAt === null ? [] : [until(dayOf(expiresAt))]),
    usedAt === null ? unused : used(dayOf(usedAt)),
  ];
}

const day = new Intl.DateTimeFormat(undefined, {
  day: "numeric",
  month: "short",
  hour: "2-digit",
  minute: "2-digit",
});

/** When, in the reader's own way of writing days. Units: ms since 1970. */
const dayOf = (at: number): string => day.format(at);
