import type { LinkCreated, LinksListed } from "../../shared/api-answers";
import type { Role } from "../../shared/role";
import { type Answer, askHub } from "../_room/ask-hub";
import { invite } from "../_words";

/** The links of one sheet, by the hub's doors. Only an owner is let in. */
export function openLinksDoor(sheetId: string) {
  const path = `/api/sheets/${encodeURIComponent(sheetId)}/links`;
  return {
    list: () => askHub<LinksListed>("GET", path),
    /** `expiresAt`: ms since 1970, or null for a link that does not end. */
    make: (role: Role, label: string, expiresAt: number | null) =>
      askHub<LinkCreated>("POST", path, { role, label, expiresAt }),
    /** Whoever came by the link has the other role at once. */
    changeRole: (link: string, role: Role) =>
      askHub<null>("PATCH", `${path}/${encodeURIComponent(link)}`, { role }),
    revoke: (link: string) => askHub<null>("DELETE", `${path}/${encodeURIComponent(link)}`),
  };
}

/** Why an answer is none, in words for a person. */
export function whyNot(answer: Exclude<Answer<unknown>, { readonly kind: "answer" }>): string {
  return invite.failed(answer.kind === "unreachable" ? invite.unreachable : answer.message);
}
