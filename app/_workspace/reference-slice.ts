import type { StateCreator } from "zustand";
import type { View } from "../../lib/geometry";
import type { PanelId, PicturePlace } from "../../lib/sheet";
import type { Workspace } from "./workspace";

/** One view of one panel, which has or shall have a picture under it. */
export interface PictureSpot {
  readonly panel: PanelId;
  readonly view: View;
}

/** A picture on its way to the hub, or one that did not get there. */
export type PictureJob =
  | {
      readonly kind: "under-way";
      readonly spot: PictureSpot;
      /** The share of its bytes that are sent; null while it is made ready. */
      readonly sent: number | null;
      /** Settles when it is over, whatever came of it. */
      readonly over: Promise<void>;
      stop(): void;
    }
  | {
      readonly kind: "failed";
      readonly spot: PictureSpot | null;
      /** For a person. */
      readonly why: string;
      /** Tries again with the same file; null where that would not help. */
      readonly again: (() => void) | null;
    };

/** Pictures under the paper, as this person is about to put, move or dim them. */
export interface ReferenceSlice {
  /** Their options stand open in the tray. */
  readonly pictureOpen: boolean;
  /** Pens, fingers and keys on the paper in hand move its picture. */
  readonly pictureHeld: boolean;
  /** Where a picture lies while it is moved or dimmed; written when it is let go. */
  readonly pictureDraft: (PictureSpot & { readonly place: PicturePlace }) | null;
  /** The paper that a file is held over. */
  readonly pictureOver: PictureSpot | null;
  readonly pictureJob: PictureJob | null;
  /** What was done last, for a person. */
  readonly pictureTold: string;
  /** Some picture on screen did not come from the hub. */
  readonly pictureMissed: boolean;
  /** How often pictures that did not come were asked for again. */
  readonly pictureTries: number;
  openPicture(open: boolean): void;
  holdPicture(held: boolean): void;
  draftPicture(draft: ReferenceSlice["pictureDraft"]): void;
  hoverPicture(over: PictureSpot | null): void;
  setPictureJob(job: PictureJob | null): void;
  tellPicture(told: string): void;
  missPicture(): void;
  tryPicturesAgain(): void;
}

export const createReferenceSlice: StateCreator<Workspace, [], [], ReferenceSlice> = (set) => ({
  pictureOpen: false,
  pictureHeld: false,
  pictureDraft: null,
  pictureOver: null,
  pictureJob: null,
  pictureTold: "",
  pictureMissed: false,
  pictureTries: 0,
  openPicture: (pictureOpen) =>
    set({ pictureOpen, pictureHeld: false, pictureDraft: null, pictureTold: "" }),
  holdPicture: (pictureHeld) => set({ pictureHeld, pictureDraft: null }),
  draftPicture: (pictureDraft) => set({ pictureDraft }),
  hoverPicture: (over) =>
    set(({ pictureOver: was }) =>
      was?.panel === over?.panel && was?.view === over?.view ? {} : { pictureOver: over },
    ),
  setPictureJob: (pictureJob) => set({ pictureJob, pictureTold: "" }),
  tellPicture: (pictureTold) => set({ pictureTold }),
  missPicture: () => set({ pictureMissed: true }),
  tryPicturesAgain: () =>
    set(({ pictureTries }) => ({ pictureMissed: false, pictureTries: pictureTries + 1 })),
});
