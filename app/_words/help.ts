/** The help page: a page over the board, so its words are fetched with it. */
export const help = {
  open: "Help",
  title: "Help",
  note: {
    heading: "What the readings are",
    words:
      "The board measures marks on drawings so that a drawn walk can be judged as a drawing. Its readings and remarks are not a medical assessment of anybody's gait and must not be used as one. They say what a viewer will see; what the walk should be is yours to decide.",
  },
  words: {
    heading: "Words of the board",
    list: [
      ["strip", "the panels in frame order, each hung by a stem from the ruler"],
      ["panel", "one pose at one frame, with a side view and a front view"],
      ["ruler", "the line of frames; moving a stem's foot along it changes the frame"],
      ["mark", "a joint's point on a drawing; left marks are round, right ones are diamonds"],
      ["stand", "the neutral pose that the build is measured from"],
      ["weight on", "the side that carries, or at contact receives, the weight"],
      ["footprint", "where a planted foot was put down"],
      ["leg", "a leg length, hip joint to sole: what distances are told in, whatever the build"],
      ["reading", "a measured value; ± says how far the marks' precision leaves it open"],
      ["remark", "a reading outside what the yardstick expects"],
      ["fix", "what would settle a remark: shown first, then done or left"],
      ["on purpose", "a remark the team keeps, in one panel, on one side or in the whole walk"],
      ["drawing desk", "one panel filling the window for drawing"],
    ] as readonly (readonly [string, string])[],
  },
  signs: {
    heading: "Signs",
    shows: "will show: a viewer will see it",
    "may-show": "may show: some will see it",
    tidy: "tidy: nobody will see it; folded away",
  },
  yardsticks: { heading: "Yardsticks" },
  keysHeading: "Keys",
  key: "key",
  does: "what it does",
  /** The keys as the board binds them. */
  keys: [
    {
      keys: "D · R · M · G · H",
      does: "draw, rub out, mark joints, gather strokes, move the paper",
    },
    { keys: "1 · 2 · 3", does: "fine pencil, broad pencil, soft blue" },
    { keys: "← · →", does: "flip to the panel before or after" },
    { keys: "V", does: "side or front view in hand" },
    { keys: "Enter", does: "the panel in hand to the drawing desk; while marking: take the guess" },
    {
      keys: "F",
      does: "place a figure on the panel in hand; where it replaces marks, shown first",
    },
    { keys: "A", does: "while marking: take all guesses of this view" },
    { keys: "Escape", does: "let go of what is gathered, stop playing, or back to the strip" },
    { keys: "Space", does: "play and stop" },
    { keys: "O", does: "onion skin: before, both, none" },
    { keys: "Alt ← · Alt →", does: "the panel in hand a frame earlier or later" },
    { keys: "E · T", does: "even out the gaps, retime: shown on the ruler before it is done" },
    {
      keys: "C · X",
      does: "copy the pose, mirror it from the other step: shown before it is done",
    },
    { keys: "P · B", does: "foot to its footprint, raise or lower the body: likewise" },
    {
      keys: "L",
      does: "gather with a lasso or a box; arrows move what is gathered, + and − scale, comma and full stop turn",
    },
    { keys: "I", does: "the picture under the paper: put, dim, move, remove" },
    { keys: "N", does: "a new panel after the one in hand" },
    { keys: "Delete", does: "rub out what is gathered, else remove the panel in hand" },
    {
      keys: "Ctrl Z · Ctrl Shift Z · Ctrl Y",
      does: "undo, and redo by either: your own work only",
    },
    { keys: "Shift ← → ↑ ↓", does: "move along the strip, or over the paper" },
    { keys: "+ · − · 0", does: "closer, further, the whole strip" },
    { keys: "?", does: "this page" },
  ],
} as const;
