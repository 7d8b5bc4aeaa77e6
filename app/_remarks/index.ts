export type { KeyHelp, SignHelp } from "./help-dialog";
export { Margin, type MarginProps } from "./margin";
export type { RemarkActsProps } from "./remark-acts";
export { RemarkBadge } from "./remark-badge";
export { RemarkLayer } from "./remark-layer";
export { seenAt } from "./seen-at";
