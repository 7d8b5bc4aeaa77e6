import { putPicture, type Sheet } from "../../lib/sheet";
import type { Room } from "../_room";
import { common, reference as words } from "../_words";
import type { PictureSpot, WorkspaceStore } from "../_workspace";
import { encodePicture } from "./encode-picture";
import { whyNotPut } from "./picture-error";
import { fitPicture } from "./place-picture";
import { sendPicture } from "./send-picture";

/** Where pictures are laid and from whom: a drop, a paste, the file chooser. */
export interface Desk {
  readonly room: Room;
  readonly workspace: WorkspaceStore;
}

const USUAL_DIM = 0.5; // our own choice: half gone, a pencil line over it is the louder

/**
 * Puts a picture under a view: made ready, sent to the hub, then put, one step of undo. Several go
 * under that panel and those after it, by their names, as photographs of thumbnails are numbered.
 * What goes wrong is told in the tray and leaves everything else as it was. One begun while another
 * is under way waits for it.
 */
export async function layPictures(desk: Desk, files: readonly File[], spot: PictureSpot) {
  const spots = spotsFrom(desk.room.sheet.getSnapshot(), spot);
  const inOrder = files.toSorted((a, b) => a.name.localeCompare(b.name, "en", { numeric: true }));
  for (const [index, file] of inOrder.entries()) {
    const place = spots[index];
    if (place === undefined) {
      return tellFailed(desk, { why: words.why.tooFew(inOrder.length - index), name: file.name });
    }
    if (!(await layOne(desk, file, place))) return;
  }
}

/** The same view of this panel and of those after it. */
function spotsFrom({ panels }: Sheet, { panel, view }: PictureSpot): PictureSpot[] {
  const at = panels.findIndex(({ id }) => id === panel);
  return at < 0 ? [] : panels.slice(at).map(({ id }) => ({ panel: id, view }));
}

/** Answers whether it lies there now. */
async function layOne(desk: Desk, file: File, spot: PictureSpot): Promise<boolean> {
  const { room, workspace } = desk;
  for (let job = workspace.getState().pictureJob; job?.kind === "under-way"; ) {
    await job.over;
    job = workspace.getState().pictureJob;
  }
  const stopper = new AbortController();
  let end = () => {};
  const over = new Promise<void>((resolve) => {
    end = resolve;
  });
  const stop = () => stopper.abort();
  const show = (sent: number | null) =>
    workspace.getState().setPictureJob({ kind: "under-way", spot, sent, over, stop });
  const { signal } = stopper;
  show(null);
  try {
    const { blob, ...size } = await encodePicture(file, signal);
    show(0);
    const picture = await sendPicture(room.sheetId, blob, { signal, onSent: show });
    const under = { picture, ...fitPicture(size), dim: USUAL_DIM };
    putPicture(room.drawing, [spot.panel], spot.view, under);
    workspace.getState().setPictureJob(null);
    tellPut(desk, spot);
    return true;
  } catch (reason) {
    if (signal.aborted) {
      workspace.getState().setPictureJob(null);
      workspace.getState().tellPicture(words.stopped);
    } else {
      const { why, again } = whyNotPut(reason);
      const retry = again ? () => void layPictures(desk, [file], spot) : null;
      tellFailed(desk, { why, name: file.name, spot, again: retry });
    }
    return false;
  } finally {
    end();
  }
}

function tellPut({ room, workspace }: Desk, { panel, view }: PictureSpot): void {
  const put = room.sheet.getSnapshot().panels.find(({ id }) => id === panel);
  if (put !== undefined) workspace.getState().tellPicture(words.put(put.frame, common.view[view]));
}

export interface Failure {
  readonly why: string;
  readonly name?: string;
  readonly spot?: PictureSpot;
  readonly again?: (() => void) | null;
}

export function tellFailed({ workspace }: Pick<Desk, "workspace">, failure: Failure): void {
  const { why, name = "", spot = null, again = null } = failure;
  const told = words.failed(name, why);
  workspace.getState().setPictureJob({ kind: "failed", spot, why: told, again });
}
