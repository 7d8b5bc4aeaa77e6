"use client";
import { FixButton } from "../_fixes";
import { KeepButton } from "../_purpose";
import type { RemarkActsProps } from "../_remarks";

/** What can be done about a remark: its fix is shown, or it is kept on purpose. */
export function RemarkActs({ remark, pointed, onPointOut }: RemarkActsProps) {
  return (
    <>
      <FixButton remark={remark} opened={pointed} onOpen={onPointOut} />
      <KeepButton remark={remark} />
    </>
  );
}
