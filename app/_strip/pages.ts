/** The pages that may lie over the board: a module of their own, fetched when one is asked for. */
export { PrintDialog } from "../_handover/print-dialog";
export { InviteDialog } from "../_people/invite-dialog";
export { HelpPage } from "./help-page";
export { SheetDialog } from "./sheet-dialog";
