import { expect } from "vitest";
import {
  type CheckId,
  type Remark,
  reviewWalk,
  type Walk,
  withTravel,
  type Yardstick,
} from "../../lib/gait";

/** What cannot be asked on the spot, where a stand and its lead-in have no place of their own. */
const ASKED_OF_PLACES: ReadonlySet<CheckId> = new Set(["lead-in"]);

/** Expects the same remarks of a travelling walk put on the spot and, of every check, brought back. */
export function sameWhenSwitched(travelling: Walk, yardstick: Yardstick): void {
  const onTheSpot = withTravel(travelling, "on-the-spot");
  const back = withTravel(onTheSpot, "travelling");
  expect(onTheSpot.panels.every(({ place }) => place === null)).toBe(true);
  const before = reviewWalk(travelling, yardstick).remarks.toSorted(byName);
  same(onTheSpot, yardstick, before);
  same(back, yardstick, before);
}

function same(after: Walk, yardstick: Yardstick, before: readonly Remark[]): void {
  const asked = (remarks: readonly Remark[]) =>
    remarks.filter(({ check }) => !ASKED_OF_PLACES.has(check));
  const now = asked(reviewWalk(after, yardstick).remarks).toSorted(byName);
  const was = asked(before);
  expect(now.map(nameOf)).toEqual(was.map(nameOf));
  for (const [index, { measured, level }] of now.entries()) {
    // A knee that is stretched straight bends as the root of what its leg lacks: 1e-15 there is 3e-8 of a radian.
    expect(measured.value).toBeCloseTo(was[index]?.measured.value ?? Number.NaN, 6);
    expect(level).toBe(was[index]?.level);
  }
}

const nameOf = ({ check, side, panels, title }: Remark) =>
  [check, side, panels.join(), title].join(" · ");
const byName = (a: Remark, b: Remark) => (nameOf(a) < nameOf(b) ? -1 : 1);
