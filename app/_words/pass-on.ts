import type { PassOnDeed } from "../_workspace";

/** Passing poses on from panel to panel. */
export const passOn = {
  name: "Pass on",
  deeds: {
    figure: "Place a figure",
    "copy-pose": "Copy the pose",
    "copy-foot": "Copy a foot",
    "mirror-pose": "Mirror to the other step",
    footprint: "Foot to its footprint",
    "shift-body": "Raise or lower the body",
  } satisfies Record<PassOnDeed, string>,
  keys: {
    figure: "F",
    "copy-pose": "C",
    "copy-foot": "",
    "mirror-pose": "X",
    footprint: "P",
    "shift-body": "B",
  } satisfies Record<PassOnDeed, string>,
  done: {
    figure: "Figure placed.",
    "copy-pose": "Pose copied.",
    "copy-foot": "Foot copied.",
    "mirror-pose": "Pose mirrored.",
    footprint: "Foot put on its footprint.",
    "shift-body": "Body shifted, feet kept.",
  } satisfies Record<PassOnDeed, string>,
  undo: "Undo takes it back.",
  noPanel: "Tap the panel that shall have it.",
  from: "From",
  foot: "Foot",
  ink: "with its ink",
  height: "Height",
  forward: "Forward",
  aside: "Aside",
  asideHint: "seen from ahead, to the page's right",
  share: (share: number) => {
    const percent = Math.round(share * 1000) / 10;
    return `${percent > 0 ? "+" : percent < 0 ? "−" : ""}${Math.abs(percent).toFixed(1)} %`;
  },
  ofALeg: "of a leg",
  panel: (frame: number, pose: string, side: string) =>
    `${frame} ${pose}${side === "" ? "" : ` ${side}`}`,
  ready: (frame: number) => `Shown dashed on frame ${frame}.`,
  needs: (needs: string) => `Needs ${needs}.`,
  cannot: (why: string) => `Cannot: ${why}.`,
  doIt: "Do it",
  leaveIt: "Leave it",
} as const;
