import { type Drawer, openDrawer } from "./drawer";
import { openLocalCopy } from "./local-copy";

/** This page's drawer of a sheet, in this browser's own store. */
export function openOwnDrawer(sheet: string): Drawer {
  const page = crypto.getRandomValues(new Uint32Array(2)).join("-");
  return openDrawer({ sheet, page, copy: openLocalCopy() });
}
