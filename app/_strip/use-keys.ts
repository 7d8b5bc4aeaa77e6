"use client";
import { useEffect } from "react";
import { nextDrawn } from "../../lib/motion";
import { addPanel, slidePanel } from "../../lib/sheet";
import { doFix } from "../_fixes";
import { letGo, rubOutGathered } from "../_gather";
import { acceptAllGuesses, acceptGuess, focusGuess } from "../_marks";
import { doPassOn, placeFigure } from "../_pass-on";
import { neighbour } from "../_play";
import { freshPanelId, type Room, useMayCritique, useMayDraw, useRoom } from "../_room";
import { propose } from "../_time";
import {
  type PassOnDeed,
  type Timing,
  useWorkspaceStore,
  type WorkspaceStore,
  ZOOM,
} from "../_workspace";
import { bringIntoSight, panBy } from "./in-sight";
import { panelAfter } from "./panel-after";
import { redoAndSay, removeAndSay, undoAndSay } from "./said-deeds";
import { nextOnion } from "./tray";

export interface KeysOptions {
  readonly openHelp: () => void;
  /** A page lies over the board: its keys are its own. */
  readonly asleep: boolean;
}

export interface Hands {
  readonly room: Room;
  readonly workspace: WorkspaceStore;
  readonly mayDraw: boolean;
  /** This person may keep things on purpose, and take that back. */
  readonly mayCritique: boolean;
  readonly openHelp: () => void;
}

/** The board's keys, bound in one place. What is typed into a field stays in the field. */
export function useKeys({ openHelp, asleep }: KeysOptions): void {
  const room = useRoom();
  const workspace = useWorkspaceStore();
  const mayDraw = useMayDraw();
  const mayCritique = useMayCritique();
  useEffect(() => {
    if (asleep) return;
    const hands = { room, workspace, mayDraw, mayCritique, openHelp };
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || isTyping(event.target)) return;
      if (act(event, hands)) event.preventDefault();
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, [room, workspace, mayDraw, mayCritique, openHelp, asleep]);
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.closest("input, textarea, select") !== null;
}

/** Does what the key says; answers whether it meant anything here. */
export function act(event: KeyboardEvent, hands: Hands): boolean {
  if (event.ctrlKey || event.metaKey) return undoOrRedo(event, hands);
  if (event.altKey) return slide(event, hands);
  if (event.shiftKey && event.key in PANS) return pan(event);
  // A focused button or fold keeps space and Enter; everything else is the board's.
  const onControl =
    (event.target as Element | null)?.closest("button, a, summary, [role=slider]") !== null;
  if (onControl && (event.key === " " || event.key === "Enter")) return false;
  const deed =
    LOOKING[event.key.toLowerCase()] ??
    (hands.mayDraw ? DRAWING[event.key.toLowerCase()] : undefined);
  if (deed === undefined) return false;
  deed(hands);
  return true;
}

type Deed = (hands: Hands) => void;

const LOOKING: Readonly<Record<string, Deed>> = {
  h: ({ workspace }) => workspace.getState().take("paper"),
  o: ({ workspace }) => {
    const next = nextOnion(workspace.getState().onionSkin);
    workspace.getState().setOnionSkin(next.before, next.after);
  },
  v: ({ workspace }) => {
    const { panel, view, pickPanel } = workspace.getState();
    pickPanel(panel, view === "side" ? "front" : "side");
  },
  " ": ({ workspace }) => workspace.getState().play(!workspace.getState().playing),
  enter: ({ room, workspace, mayDraw }) => {
    const { panel, openDesk, passOn, fixing } = workspace.getState();
    if (fixing !== null) doFix(room, workspace);
    else if (passOn !== null) doPassOn(room, workspace);
    else if (mayDraw && acceptGuess(room, workspace) !== null) return;
    else if (panel !== null) openDesk(panel);
  },
  escape: ({ room, workspace }) => {
    const now = workspace.getState();
    if (now.fixing !== null) now.showFix(null);
    else if (now.passOn !== null) now.leavePassOn();
    else if (now.pictureHeld) now.holdPicture(false);
    else if (now.pictureOpen) now.openPicture(false);
    else if (letGo(room, workspace)) return;
    else if (now.playing) now.play(false);
    else if (now.timing !== null) now.setTiming(null);
    else now.leaveDesk();
  },
  arrowleft: (hands) => flip(hands, -1),
  arrowright: (hands) => flip(hands, 1),
  "+": (hands) => zoomBy(hands, ZOOM.step),
  "=": (hands) => zoomBy(hands, ZOOM.step),
  "-": (hands) => zoomBy(hands, 1 / ZOOM.step),
  "0": (hands) => zoomBy(hands, 0),
  "?": ({ openHelp }) => openHelp(),
};

const DRAWING: Readonly<Record<string, Deed>> = {
  d: ({ workspace }) => workspace.getState().take("draw"),
  r: ({ workspace }) => workspace.getState().take("rub-out"),
  m: ({ workspace }) => takeMark(workspace),
  f: ({ room, workspace }) => placeFigure(room, workspace),
  a: ({ room, workspace }) => void acceptAllGuesses(room, workspace),
  g: ({ workspace }) => workspace.getState().take("gather"),
  l: ({ workspace }) => {
    const { tool, gatherBy, setGatherBy } = workspace.getState();
    if (tool === "gather") setGatherBy(gatherBy === "lasso" ? "box" : "lasso");
  },
  "1": ({ workspace }) => workspace.getState().takeNib("fine"),
  "2": ({ workspace }) => workspace.getState().takeNib("broad"),
  "3": ({ workspace }) => workspace.getState().takeNib("under"),
  e: (hands) => openTiming(hands, "even-out"),
  t: (hands) => openTiming(hands, "retime"),
  c: (hands) => ask(hands, "copy-pose"),
  x: (hands) => ask(hands, "mirror-pose"),
  p: (hands) => ask(hands, "footprint"),
  b: (hands) => ask(hands, "shift-body"),
  i: ({ workspace }) => workspace.getState().openPicture(!workspace.getState().pictureOpen),
  n: ({ room, workspace }) => {
    const { panel, pickPanel } = workspace.getState();
    const sheet = room.sheet.getSnapshot();
    const id = freshPanelId();
    addPanel(room.drawing, id, panelAfter(sheet, panel ?? sheet.panels.at(-1)?.id ?? ""));
    pickPanel(id);
  },
  delete: ({ room, workspace }) => {
    if (rubOutGathered(room, workspace)) return;
    const { panel } = workspace.getState();
    if (panel !== null) removeAndSay(room, workspace, panel);
  },
};

/** The mark tool; taken again, its guess is gone to, so that arrows bring it somewhere. */
function takeMark(workspace: WorkspaceStore): void {
  const { tool, take, panel, view } = workspace.getState();
  if (tool !== "mark") take("mark");
  else if (panel !== null) focusGuess(panel, view);
}

/** At the drawing desk there is no ruler to show what would move. */
function openTiming({ room, workspace }: Hands, what: Timing["what"]): void {
  const { desk, setTiming } = workspace.getState();
  if (!desk) setTiming(propose(what, room.sheet.getSnapshot()));
}

/** Shows what would be passed on to the panel in hand. */
function ask({ workspace }: Hands, deed: PassOnDeed): void {
  if (workspace.getState().panel !== null) workspace.getState().askPassOn(deed);
}

function flip({ room, workspace }: Hands, by: -1 | 1): void {
  const { panel, pickPanel } = workspace.getState();
  const sheet = room.sheet.getSnapshot();
  const next = panel === null ? sheet.panels[0] : neighbour(sheet, panel, by);
  if (next === undefined) return;
  pickPanel(next.id);
  bringIntoSight(next.id);
}

const PAN_PX = 120; // about a panel at a time

const PANS: Readonly<Record<string, readonly [right: number, down: number]>> = {
  ArrowLeft: [-PAN_PX, 0],
  ArrowRight: [PAN_PX, 0],
  ArrowUp: [0, -PAN_PX],
  ArrowDown: [0, PAN_PX],
};

function pan({ key }: KeyboardEvent): boolean {
  const way = PANS[key];
  if (way !== undefined) panBy(...way);
  return way !== undefined;
}

/** Zooms what is being looked at; 0 shows the whole. */
function zoomBy({ workspace }: Hands, factor: number): void {
  const { desk, zoom, deskZoom, setZoom, setDeskZoom } = workspace.getState();
  if (desk) setDeskZoom(factor === 0 ? 1 : deskZoom * factor);
  else setZoom(factor === 0 ? 1 : zoom * factor);
}

function undoOrRedo(event: KeyboardEvent, { room, workspace, mayCritique }: Hands): boolean {
  const key = event.key.toLowerCase();
  if (!mayCritique || (key !== "z" && key !== "y")) return false;
  if (key === "y" || event.shiftKey) redoAndSay(room, workspace);
  else undoAndSay(room, workspace);
  return true;
}

function slide(event: KeyboardEvent, { room, workspace, mayDraw }: Hands): boolean {
  const by = event.key === "ArrowLeft" ? -1 : event.key === "ArrowRight" ? 1 : 0;
  const id = workspace.getState().panel;
  const panel = room.sheet.getSnapshot().panels.find((candidate) => candidate.id === id);
  if (by === 0 || !mayDraw || panel === undefined) return false;
  const to = nextDrawn(panel.frame, by, room.sheet.getSnapshot().head.exposure);
  if (to >= 1) slidePanel(room.drawing, panel.id, to);
  return true;
}
