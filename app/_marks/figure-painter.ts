import { type JointName, type Mark, markOf, PANEL, type PoseMarks } from "../../lib/body";
import { VIEWS, type View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";

/** Moves what is drawn of a panel's figure, past React: a drag repaints at every event. */
export interface FigurePainter {
  paint(pose: PoseMarks): void;
}

type Find = (joint: string) => Mark | null;

/** Takes hold of what is drawn now of a panel's marks, on every paper that shows it. */
export function openFigurePainter(panel: PanelId, now: PoseMarks): FigurePainter {
  const parts = VIEWS.flatMap((view) => partsOf(panel, view).map((move) => ({ view, move })));
  const paint = (pose: PoseMarks) => {
    for (const { view, move } of parts) move((joint) => markOf(pose[view], joint as JointName));
  };
  paint(now);
  return { paint };
}

function partsOf(panel: PanelId, view: View): ((find: Find) => void)[] {
  const papers = document.querySelectorAll(
    `[data-panel="${CSS.escape(panel)}"][data-view="${view}"]`,
  );
  return [...papers].flatMap((paper) => [
    ...[...paper.querySelectorAll<SVGElement>("[data-bone]")].map(boneMover),
    ...[...paper.querySelectorAll<SVGElement>("[data-sign]")].map(signMover),
    ...[...paper.querySelectorAll<HTMLElement>("[data-joint]")].map(handleMover),
    ...[...paper.querySelectorAll<SVGElement>("[data-pin]")].map(pinMover),
  ]);
}

function boneMover(bone: SVGElement): (find: Find) => void {
  const [from = "", to = ""] = (bone.dataset.bone ?? "").split(" ");
  return (find) => {
    const [start, end] = [find(from), find(to)];
    if (start === null || end === null) return;
    bone.setAttribute("x1", String(start.x));
    bone.setAttribute("y1", String(start.y));
    bone.setAttribute("x2", String(end.x));
    bone.setAttribute("y2", String(end.y));
  };
}

function signMover(sign: SVGElement): (find: Find) => void {
  const joint = sign.dataset.sign ?? "";
  return (find) => {
    const mark = find(joint);
    if (mark !== null) sign.setAttribute("transform", placed(mark));
  };
}

function handleMover(handle: HTMLElement): (find: Find) => void {
  const joint = handle.dataset.joint ?? "";
  return (find) => {
    const mark = find(joint);
    if (mark === null) return;
    handle.style.left = percentOf(mark.x, PANEL.width);
    handle.style.top = percentOf(mark.y, PANEL.height);
  };
}

/** The ground sign under a foot is gone while that foot is moved itself. */
function pinMover(pin: SVGElement): (find: Find) => void {
  const heel = `${pin.dataset.pin}-heel`;
  const toe = `${pin.dataset.pin}-toe`;
  let stood: readonly (Mark | null)[] | null = null;
  return (find) => {
    const stands = [find(heel), find(toe)];
    stood ??= stands;
    const moved = stands.some(
      (mark, at) => mark?.x !== stood?.[at]?.x || mark?.y !== stood?.[at]?.y,
    );
    pin.style.visibility = moved ? "hidden" : "";
  };
}

/** A sign is drawn around 0 and moved to its mark. */
export function placed({ x, y }: { readonly x: number; readonly y: number }): string {
  return `translate(${x} ${y})`;
}

/** A handle's place on its paper. */
export function percentOf(units: number, whole: number): string {
  return `${(100 * units) / whole}%`;
}
