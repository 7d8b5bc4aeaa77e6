import { advanceOf } from "../../advance";
import type { BrindlePose } from "./brindle-pose";

export const STEP_LENGTH = 0.78; // leg lengths
/** Leg lengths a frame, at twelve frames a step. */
export const ADVANCE = advanceOf(STEP_LENGTH, { left: 12, right: 12 });
/** Ground x of the heels as they come down, leg lengths. */
const RIGHT_0 = 0.25;
const LEFT_1 = RIGHT_0 + STEP_LENGTH;
const RIGHT_1 = LEFT_1 + STEP_LENGTH;
const LEFT_2 = RIGHT_1 + STEP_LENGTH;
/** Planted fault: how far the left foot slips forward between down and passing. */
const SLIP = 0.064;
const LEFT_SLIPPED = LEFT_1 + SLIP;

/**
 * Stand, lead-in and one cycle. Invented for the demo, as is Brindle. Three faults are planted: the right
 * step's down does not sink, the left foot slips, and the right up is hung too late (see `brindle-example`).
 * One thing is so on purpose: the left shoulder is low, for the sack hangs there.
 */
export const BRINDLE_POSES: readonly BrindlePose[] = [
  {
    pose: "stand",
    weightOn: null,
    frame: 1,
    place: 0.36,
    hips: [0, 0.972, 0.01],
    pelvis: { yaw: 2, roll: -4 },
    spine: -3,
    chest: { yaw: -2, roll: 9, lean: 11 },
    head: { yaw: 0, roll: -6, lean: -2 },
    feet: {
      left: { on: "flat", heel: 0.33, pitch: 0 },
      right: { on: "flat", heel: RIGHT_0, pitch: 0 },
    },
    arm: { swing: 2, bend: 16, hand: 4 },
    drag: { sack: [0, 0], hem: [0, 0], scarf: 0 },
    effort: 0.25,
  },
  {
    pose: "lead-in",
    weightOn: "right",
    frame: 7,
    place: 0.43,
    hips: [0.015, 0.955, 0.062],
    pelvis: { yaw: -4, roll: -1 },
    spine: -7,
    chest: { yaw: 3, roll: 10, lean: 17 },
    head: { yaw: 0, roll: -7, lean: 5 },
    feet: {
      left: { on: "air", ankle: [-0.15, 0.185], pitch: -32 },
      right: { on: "flat", heel: RIGHT_0, pitch: 0 },
    },
    arm: { swing: -9, bend: 18, hand: 8 },
    drag: { sack: [-5, 0.01], hem: [0.01, -0.03], scarf: -0.03 },
    effort: 0.7,
  },
  {
    pose: "contact",
    weightOn: "left",
    frame: 13,
    hips: [0, 0.95, 0.004],
    pelvis: { yaw: 10, roll: -3 },
    spine: -2,
    chest: { yaw: -9, roll: 10, lean: 13 },
    head: { yaw: 3, roll: -7, lean: 0 },
    feet: {
      left: { on: "heel", heel: LEFT_1, pitch: 22 },
      right: { on: "ball", heel: RIGHT_0, pitch: -21 },
    },
    arm: { swing: 20, bend: 24, hand: -8 },
    drag: { sack: [2, 0.006], hem: [0.01, -0.01], scarf: -0.02 },
    effort: 0.4,
  },
  {
    pose: "down",
    weightOn: "left",
    frame: 16,
    hips: [0, 0.908, -0.032],
    pelvis: { yaw: 7, roll: -1 },
    spine: 2,
    chest: { yaw: -7, roll: 12, lean: 18 },
    head: { yaw: 2, roll: -8, lean: 9 },
    feet: {
      left: { on: "flat", heel: LEFT_1, pitch: 0 },
      right: { on: "ball", heel: RIGHT_0, pitch: -44 },
    },
    arm: { swing: 23, bend: 30, hand: 6 },
    drag: { sack: [4, -0.022], hem: [0.0, 0.03], scarf: 0.03 },
    effort: 1,
  },
  {
    pose: "passing",
    weightOn: "left",
    frame: 19,
    hips: [0.052, 0.966, -0.062],
    pelvis: { yaw: 0, roll: -6 },
    spine: 3,
    chest: { yaw: 0, roll: 11, lean: 15 },
    head: { yaw: 0, roll: -7, lean: 3 },
    feet: {
      left: { on: "flat", heel: LEFT_SLIPPED, pitch: 0 },
      right: { on: "air", ankle: [-0.02, 0.205], pitch: -24 },
    },
    arm: { swing: 7, bend: 26, hand: 22 },
    drag: { sack: [-3, 0.022], hem: [-0.01, -0.02], scarf: -0.01 },
    effort: 0.75,
  },
  {
    pose: "up",
    weightOn: "left",
    frame: 22,
    hips: [0.012, 0.983, -0.042],
    pelvis: { yaw: -6, roll: -4 },
    spine: 0,
    chest: { yaw: 5, roll: 9, lean: 11 },
    head: { yaw: -2, roll: -6, lean: -5 },
    feet: {
      left: { on: "ball", heel: LEFT_SLIPPED, pitch: -9 },
      right: { on: "air", ankle: [0.235, 0.15], pitch: 6 },
    },
    arm: { swing: -11, bend: 17, hand: 16 },
    drag: { sack: [-4, 0.014], hem: [-0.02, -0.03], scarf: -0.04 },
    effort: 0.3,
  },
  {
    pose: "contact",
    weightOn: "right",
    frame: 25,
    hips: [0, 0.95, 0.004],
    pelvis: { yaw: -10, roll: -5 },
    spine: -3,
    chest: { yaw: 7, roll: 10, lean: 13 },
    head: { yaw: -3, roll: -7, lean: 0 },
    feet: {
      left: { on: "ball", heel: LEFT_SLIPPED, pitch: -21 },
      right: { on: "heel", heel: RIGHT_1, pitch: 22 },
    },
    arm: { swing: -24, bend: 10, hand: 6 },
    drag: { sack: [2, 0.004], hem: [0.01, -0.01], scarf: -0.02 },
    effort: 0.4,
  },
  {
    pose: "down",
    weightOn: "right",
    frame: 28,
    hips: [0, 0.963, 0.026],
    pelvis: { yaw: -8, roll: -5 },
    spine: -4,
    chest: { yaw: 6, roll: 9, lean: 12 },
    head: { yaw: -2, roll: -6, lean: -1 },
    feet: {
      left: { on: "ball", heel: LEFT_SLIPPED, pitch: -58 },
      right: { on: "flat", heel: RIGHT_1, pitch: 0 },
    },
    arm: { swing: -25, bend: 9, hand: -4 },
    drag: { sack: [1, -0.004], hem: [0.0, 0.01], scarf: 0.01 },
    effort: 0.35,
  },
  {
    pose: "passing",
    weightOn: "right",
    frame: 31,
    hips: [0, 0.972, 0.068],
    pelvis: { yaw: 0, roll: 0 },
    spine: -7,
    chest: { yaw: 0, roll: 9, lean: 14 },
    head: { yaw: 0, roll: -7, lean: 3 },
    feet: {
      left: { on: "air", ankle: [-0.07, 0.205], pitch: -24 },
      right: { on: "flat", heel: RIGHT_1, pitch: 0 },
    },
    arm: { swing: -9, bend: 14, hand: -16 },
    drag: { sack: [-3, 0.016], hem: [-0.01, -0.02], scarf: -0.01 },
    effort: 0.65,
  },
  {
    pose: "up",
    weightOn: "right",
    frame: 34,
    hips: [0.012, 0.985, 0.046],
    pelvis: { yaw: 6, roll: 0 },
    spine: -5,
    chest: { yaw: -5, roll: 8, lean: 10 },
    head: { yaw: 2, roll: -6, lean: -5 },
    feet: {
      left: { on: "air", ankle: [0.225, 0.15], pitch: 6 },
      right: { on: "ball", heel: RIGHT_1, pitch: -9 },
    },
    arm: { swing: 9, bend: 18, hand: -16 },
    drag: { sack: [-4, 0.014], hem: [-0.02, -0.03], scarf: -0.04 },
    effort: 0.3,
  },
  {
    pose: "contact",
    weightOn: "left",
    frame: 37,
    hips: [0, 0.95, 0.004],
    pelvis: { yaw: 10, roll: -3 },
    spine: -2,
    chest: { yaw: -9, roll: 10, lean: 13 },
    head: { yaw: 3, roll: -7, lean: 0 },
    feet: {
      left: { on: "heel", heel: LEFT_2, pitch: 22 },
      right: { on: "ball", heel: RIGHT_1, pitch: -21 },
    },
    arm: { swing: 20, bend: 24, hand: -8 },
    drag: { sack: [2, 0.006], hem: [0.01, -0.01], scarf: -0.02 },
    effort: 0.4,
  },
];
