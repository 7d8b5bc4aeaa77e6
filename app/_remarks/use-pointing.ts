"use client";
import { useWorkspace, useWorkspaceStore } from "../_workspace";
import type { RankedRemark } from "./group-remarks";

/** In windows up to this wide the margin is a drawer over the strip: it would hide what it shows. */
const DRAWER_UP_TO_PX = 1240;

/** Takes the panel in hand and points out where; asked again it stops pointing. */
export function usePointing({ remark, rank }: RankedRemark) {
  const workspace = useWorkspaceStore();
  const pointed = useWorkspace((state) => state.remark === rank);
  const pointOut = () => {
    const now = workspace.getState();
    const panel = remark.panels.at(-1);
    if (panel !== undefined) now.pickPanel(panel, remark.spots.at(-1)?.view);
    now.pointOut(rank);
    if (window.innerWidth <= DRAWER_UP_TO_PX) now.openMargin(false);
  };
  const turn = () => (pointed ? workspace.getState().pointOut(null) : pointOut());
  return { pointed, pointOut, turn };
}
