import type { DocumentName } from "./document-name";

/** Who someone is on a sheet, from the strongest down. */
export const ROLES = ["owner", "draw", "critique", "view"] as const;
export type Role = (typeof ROLES)[number];

export function isRole(value: unknown): value is Role {
  return ROLES.some((role) => role === value);
}

/** May this role change this document? Reading is open to every role. */
export function mayWrite(role: Role, document: DocumentName): boolean {
  if (role === "owner" || role === "draw") return true;
  return role === "critique" && document === "critique";
}
