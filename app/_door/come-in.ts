import type { SheetSeen } from "../../shared/api-answers";
import { isRole, type Role } from "../../shared/role";
import { type Answer, askHub } from "../_room/ask-hub";

/** What came of standing at a sheet's door. */
export type Entry =
  | { readonly kind: "open"; readonly role: Role }
  | { readonly kind: "bad-link" | "closed" | "unreachable" };

/**
 * Hands over the link's secret, if the address holds one, takes it out of the address (so that it is
 * neither bookmarked nor seen over a shoulder), and asks which role this browser has.
 */
export async function comeIn(sheet: string): Promise<Entry> {
  const secret = location.hash.slice(1); // of letters that no address has to escape
  let badLink = false;
  if (secret !== "") {
    const entered = await askHub<null>("POST", "/api/enter", { sheet, secret });
    if (isSilent(entered)) return { kind: "unreachable" }; // and the secret stays where it is
    badLink = entered.kind === "refused";
    history.replaceState(history.state, "", `/sheet/${sheet}`);
  }
  const seen = await askHub<SheetSeen>("GET", `/api/sheets/${sheet}`);
  if (isSilent(seen)) return { kind: "unreachable" };
  if (seen.kind === "answer" && isRole(seen.value.role)) {
    return { kind: "open", role: seen.value.role };
  }
  return { kind: badLink ? "bad-link" : "closed" };
}

/** Nothing was said of the link: no answer came, or one for the moment (too many requests, a disk that stands still). */
function isSilent(answer: Answer<unknown>): boolean {
  if (answer.kind !== "refused") return answer.kind === "unreachable";
  return answer.status >= 500 || answer.status === 429;
}
