export type { Gathered, PaperName } from "./gather-slice";
export type { LayerProps } from "./layer";
export { PASS_ONS, type PassOnDeed, type PassOnRequest } from "./pass-on-slice";
export type { PictureJob, PictureSpot } from "./reference-slice";
export type { Timing } from "./time-slice";
export type { Tool } from "./tool-slice";
export { useWorkspace, useWorkspaceStore, WorkspaceContext } from "./use-workspace";
export { ZOOM } from "./view-slice";
export { createWorkspace, type Workspace, type WorkspaceStore } from "./workspace";
