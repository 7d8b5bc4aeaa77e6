import type { SheetId } from "../shared/sheet-id";

/**
 * Who is present under which client id. While a device is connected under an id, no other device may
 * use it on that sheet: nobody can draw in another's name or send him away.
 */
export interface Claims {
  /** False if another device holds the id. */
  take(sheet: SheetId, client: number, device: string): boolean;
  release(sheet: SheetId, client: number): void;
}

export function createClaims(): Claims {
  const held = new Map<string, { readonly device: string; sockets: number }>();
  return {
    take(sheet, client, device) {
      const key = `${sheet}/${client}`;
      const claim = held.get(key);
      if (claim === undefined) held.set(key, { device, sockets: 1 });
      else if (claim.device !== device) return false;
      else claim.sockets++;
      return true;
    },
    release(sheet, client) {
      const key = `${sheet}/${client}`;
      const claim = held.get(key);
      if (claim !== undefined && --claim.sockets === 0) held.delete(key);
    },
  };
}
