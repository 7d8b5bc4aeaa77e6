import { JOINTS, PANEL, SIDES } from "../../lib/body";
import {
  CHECK_IDS,
  type Fix,
  type FixChange,
  type OnPurpose,
  type OnPurposeScope,
  SUBJECTS,
  UNITS,
} from "../../lib/gait";
import { VIEWS } from "../../lib/geometry";
import { cutStroke, INKS, NIBS, type Stroke, UNSHAPED } from "../../lib/ink";
import { POSES } from "../../lib/motion";
import {
  addPanel,
  amendHead,
  applyFix,
  capturedExample,
  copyFoot,
  copyPose,
  doAgain,
  drawStroke,
  dropOnPurpose,
  evenOut,
  footOnFootprint,
  keepOnPurpose,
  leastFrames,
  liftMark,
  mirrorPose,
  movePicture,
  newEntryId,
  newPanelId,
  newStrokeId,
  type Panel,
  type PanelId,
  placeMark,
  placeMarks,
  putPicture,
  readCritique,
  readSheet,
  redrawDone,
  relabelPanel,
  removePanel,
  retime,
  rubOut,
  rubOutPart,
  setHold,
  setPlace,
  setTravel,
  shiftBody,
  slidePanel,
  takePicture,
  transformStrokes,
} from "../../lib/sheet";
import type { Dice } from "./dice";
import { ids, meet, type Peer } from "./peers";

/** One turn: whose it is, what is on the strip, and one of its panels. */
interface Turn {
  readonly people: readonly Peer[];
  readonly peer: Peer;
  readonly panels: readonly Panel[];
  readonly panel: PanelId;
  readonly throws: Dice;
}

const FEW_JOINTS = JOINTS.slice(0, 5); // so that two meet on one
/** Whole figures, so that what is passed on has feet and knees. */
const FIGURES = capturedExample(ids()).panels;
const PICTURES = ["a", "b"].map((letter) => letter.repeat(43)); // as long as an id of 32 bytes
const noId = () => "unwanted";
const FEW_HEIGHTS = 4; // so that ties are settled by id

const ACTS: Readonly<Record<string, (turn: Turn) => void>> = {
  draw: ({ peer, panel, throws }) =>
    drawStroke(peer.doc, newStrokeId(throws.bytes), someStroke(panel, throws)),
  mark: ({ peer, panel, throws }) => {
    const mark = { x: throws.below(720), y: throws.below(1200), precision: 2 };
    placeMark(peer.doc, panel, throws.of(VIEWS), throws.of(FEW_JOINTS), mark);
  },
  marks: ({ peer, panel, throws }) => {
    const { side, front } = throws.of(FIGURES).marks;
    placeMarks(
      peer.doc,
      panel,
      throws.of([
        { side, front },
        { side, front: {} },
      ]),
      { leavesInk: throws.below(2) === 0 },
    );
  },
  lift: ({ peer, panel, throws }) =>
    liftMark(peer.doc, panel, throws.of(VIEWS), throws.of(FEW_JOINTS)),
  slide: ({ peer, panel, throws }) => slidePanel(peer.doc, panel, 1 + throws.below(30)),
  label: ({ peer, panel, throws }) => relabelPanel(peer.doc, panel, somePanel(throws)),
  place: ({ peer, panel, throws }) => setPlace(peer.doc, panel, throws.of([null, 0.5, 1])),
  hold: ({ peer, panel, throws }) => setHold(peer.doc, panel, throws.below(9)),
  add: ({ peer, throws }) => addPanel(peer.doc, newPanelId(throws.bytes), somePanel(throws)),
  remove: ({ peer, panel }) => removePanel(peer.doc, panel),
  rub: ({ peer, panels, throws }) => {
    rubOut(peer.doc, someInk(panels, throws));
  },
  even: ({ peer, panel, throws }) => evenOut(peer.doc, throws.of(["strip", { step: panel }])),
  retime: ({ peer, throws }) => {
    const least = leastFrames(readSheet(peer.doc), "strip");
    const some = (from: number) => from + throws.below(8);
    const framesPerStep = { left: some(least.left), right: some(least.right) };
    retime(peer.doc, { scope: "strip", framesPerStep });
  },
  travel: ({ peer, throws }) =>
    setTravel(peer.doc, peer.sheet(), throws.of(["on-the-spot", "travelling"] as const)),
  amend: ({ peer, throws }) => amendHead(peer.doc, { title: `title ${throws.below(99)}` }),
  figure: ({ peer, panels, throws }) =>
    void copyPose(peer.doc, throws.of(FIGURES), throws.of(panels), { ink: false, newId: noId }),
  copy: (turn) => void copyPose(turn.peer.doc, ...twoPanels(turn), inkOf(turn)),
  mirror: (turn) => void mirrorPose(turn.peer.doc, ...twoPanels(turn), inkOf(turn)),
  foot: (turn) =>
    void copyFoot(turn.peer.doc, ...twoPanels(turn), {
      ...inkOf(turn),
      side: turn.throws.of(SIDES),
    }),
  shape: ({ peer, panels, throws }) => {
    const by = { x: throws.below(50), y: throws.below(50) };
    const shaping = { ...UNSHAPED, scale: 1 + throws.below(3) / 4, by };
    const elsewhere = { panel: throws.of(panels).id, view: throws.of(VIEWS) };
    transformStrokes(peer.doc, someInk(panels, throws), {
      shaping,
      ...(throws.below(2) === 0 ? elsewhere : { colour: throws.of(INKS) }),
    });
  },
  part: ({ peer, panels, throws }) => {
    const edge = throws.below(720);
    const pieces = panels
      .flatMap(({ ink }) => [...ink.side, ...ink.front])
      .filter(() => throws.below(6) === 0)
      .map(({ id, ...stroke }) => [id, cutStroke(stroke, ({ x }) => x < edge)] as const);
    rubOutPart(peer.doc, new Map(pieces), () => newStrokeId(throws.bytes));
  },
  footprint: ({ peer, panel, throws }) =>
    void footOnFootprint(peer.doc, readSheet(peer.doc), panel, throws.of(SIDES)),
  shift: ({ peer, panels, throws }) => {
    const by = () => (throws.below(5) - 2) / 50; // of a leg
    const shift = { forward: by() * PANEL.plainLeg, up: by() * PANEL.plainLeg, aside: 0 };
    shiftBody(peer.doc, throws.of(panels), shift);
  },
  fix: ({ peer, panels, throws }) =>
    applyFix(peer.doc, someFix(panels, throws), () => newPanelId(throws.bytes)),
  redrawn: ({ peer, panel, throws }) => redrawDone(peer.doc, panel, throws.of(VIEWS)),
  keep: ({ peer, panel, throws }) => {
    const known = readCritique(peer.critique).onPurpose;
    const anew = known.length === 0 || throws.below(3) > 0;
    const id = anew ? newEntryId(throws.bytes) : throws.of(known).id;
    keepOnPurpose(peer.critique, { id, ...somePurpose(panel, throws) });
  },
  drop: ({ peer, throws }) => {
    const known = readCritique(peer.critique).onPurpose;
    if (known.length > 0) dropOnPurpose(peer.critique, throws.of(known).id);
  },
  picture: ({ peer, panels, throws }) => {
    const some = panels.filter(() => throws.below(3) === 0).map(({ id }) => id);
    const picture = throws.of(PICTURES);
    const place = { x: throws.below(720), y: throws.below(1200), width: 300, height: 400 };
    putPicture(peer.doc, some, throws.of(VIEWS), { picture, ...place, dim: throws.below(5) / 4 });
  },
  "move picture": ({ peer, panel, throws }) => {
    const place = { x: throws.below(720) - 360, width: 24 + throws.below(720) };
    movePicture(peer.doc, panel, throws.of(VIEWS), throws.of([place, { dim: 0.25 }]));
  },
  "take picture": ({ peer, panel, throws }) => takePicture(peer.doc, panel, throws.of(VIEWS)),
  again: ({ peer, panel, throws }) => {
    const frame = { part: "panels", panel, key: "frame", value: 1 + throws.below(30) };
    const mark = { ...frame, key: "side.head", value: [throws.below(720), 300, 2] };
    doAgain(peer.doc, "drawing", throws.of([[frame], [mark], [frame, mark]]));
  },
  undo: ({ peer }) => void peer.undo.undo(),
  redo: ({ peer }) => void peer.undo.redo(),
  meet: ({ people, peer, throws }) => meet([peer, throws.of(people)]),
};

/** Every kind of turn there is. */
export const TURNS = Object.keys(ACTS);

const BAG = [...TURNS, "draw", "draw", "draw", "draw", "mark", "mark", "rub", "undo", "undo"];

/** One person does one thing, or meets another. Answers what it was. */
export function scribbleOnce(people: readonly Peer[], who: number, throws: Dice): string {
  const peer = people[who];
  if (peer === undefined) throw new RangeError(`nobody has number ${who}`);
  const { panels } = readSheet(peer.doc);
  const what = panels.length < 3 ? "add" : throws.of(BAG);
  const panel = panels.length === 0 ? "" : throws.of(panels).id;
  ACTS[what]?.({ people, peer, panels, panel, throws });
  return what;
}

/** Now and then a stroke. */
function someInk(panels: readonly Panel[], throws: Dice): string[] {
  const ink = panels.flatMap((panel) => [...panel.ink.side, ...panel.ink.front]);
  return ink.filter(() => throws.below(6) === 0).map(({ id }) => id);
}

/** Two panels of the strip, now and then the same. */
function twoPanels({ panels, throws }: Turn): [Panel, Panel] {
  return [throws.of(panels), throws.of(panels)];
}

function inkOf({ throws }: Turn) {
  return { ink: throws.below(2) === 0, newId: () => newStrokeId(throws.bytes) };
}

function somePanel(throws: Dice): Pick<Panel, "frame" | "pose" | "weightOn"> {
  return {
    frame: 1 + throws.below(30),
    pose: throws.of(POSES),
    weightOn: throws.of([...SIDES, null]),
  };
}

/** What a fix may ask for, on two panels: marks elsewhere, another frame, place and label, a panel more. */
function someFix(panels: readonly Panel[], throws: Dice): Pick<Fix, "changes"> {
  const [one, other] = [throws.of(panels), throws.of(panels)];
  const view = throws.of(VIEWS);
  const marks = FEW_JOINTS.flatMap((joint) => {
    const mark = one.marks[view][joint];
    return mark === undefined ? [] : [{ joint, x: mark.x + throws.below(9), y: mark.y }];
  });
  const all: readonly FixChange[] = [
    { kind: "move-marks", panel: one.id, view, marks },
    { kind: "slide", panel: other.id, frame: 1 + throws.below(30) },
    { kind: "place", panel: other.id, place: throws.below(9) / 10 },
    { kind: "relabel", panel: one.id, ...somePanel(throws) },
    { kind: "add-panel", ...somePanel(throws), place: null, marks: one.marks },
  ];
  return { changes: all.filter(() => throws.below(2) === 0) };
}

function somePurpose(panel: PanelId, throws: Dice): Omit<OnPurpose, "id"> {
  const side = throws.of(SIDES);
  const check = throws.of(CHECK_IDS);
  const scope = throws.of<OnPurposeScope>([
    { kind: "panel", panel, side },
    { kind: "side", side },
    { kind: "walk" },
  ]);
  const told = throws.below(99);
  const subject = SUBJECTS[told % (2 * SUBJECTS.length)]; // half of them have none
  return {
    check,
    scope,
    ...(subject === undefined ? {} : { subject }),
    reason: `reason ${told}`,
    measured: { value: throws.below(9) / 100, plusMinus: 0.01, unit: throws.of(UNITS) },
    by: throws.of(["Ana", "Ben", ""]),
  };
}

function someStroke(panel: PanelId, throws: Dice): Stroke {
  return {
    panel,
    view: throws.of(VIEWS),
    nib: throws.of(NIBS),
    colour: throws.of(INKS),
    width: 1 + throws.below(10),
    z: throws.below(FEW_HEIGHTS),
    points: Array.from({ length: 1 + throws.below(5) }, () => [
      throws.below(720),
      throws.below(1200),
      throws.below(64) / 63,
    ]),
  };
}
