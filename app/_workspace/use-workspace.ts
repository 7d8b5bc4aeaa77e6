"use client";
import { createContext, useContext } from "react";
import { useStore } from "zustand";
import type { Workspace, WorkspaceStore } from "./workspace";

export const WorkspaceContext = createContext<WorkspaceStore | null>(null);

export function useWorkspaceStore(): WorkspaceStore {
  const store = useContext(WorkspaceContext);
  if (store === null) throw new Error("the workspace is only there inside an open sheet");
  return store;
}

/** Reads what a selector picks of this person's workspace, and repaints when it changes. */
export function useWorkspace<T>(select: (workspace: Workspace) => T): T {
  return useStore(useWorkspaceStore(), select);
}
