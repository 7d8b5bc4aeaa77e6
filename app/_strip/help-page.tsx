"use client";
import { HelpDialog } from "../_remarks/help-dialog";
import { help } from "../_words";
import { HELP_SIGNS } from "./help-signs";

/** The help, with the keys and signs of all features. */
export function HelpPage({ onClose }: { readonly onClose: () => void }) {
  return <HelpDialog onClose={onClose} keys={help.keys} signs={HELP_SIGNS} />;
}
