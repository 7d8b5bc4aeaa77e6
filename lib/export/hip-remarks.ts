import type { Remark } from "../gait";

/** What the hip chart shows of the remarks. */
export interface HipRemarks {
  /** Panels whose hips draw a remark. */
  readonly panels: ReadonlySet<string>;
  /** Stretches of the line, from panel to panel, on which the hips hitch. */
  readonly hitches: readonly Hitch[];
}

export interface Hitch {
  readonly from: string;
  readonly to: string;
}

/**
 * The remarks that are about the hips' height: where one is out of order, both ends of a range, a height
 * that differs from its partner's, a hitch between two panels. Tidy ones are not shown.
 */
export function hipRemarks(remarks: readonly Remark[]): HipRemarks {
  const seen = remarks.filter(({ level }) => level !== "tidy");
  const panels = seen.flatMap((remark) => {
    if (remark.check === "hip-range") return remark.panels;
    return isAboutHeight(remark) ? remark.panels.slice(-1) : [];
  });
  const hitches = seen
    .filter((remark) => remark.check === "hitch" && isOfHips(remark))
    .map(({ panels: between }) => ({ from: between.at(0) ?? "", to: between.at(-1) ?? "" }));
  return { panels: new Set(panels), hitches };
}

function isAboutHeight(remark: Remark): boolean {
  return remark.check === "hip-order" || (remark.check === "symmetry" && isOfHips(remark));
}

/** Whether it points at hips alone. */
function isOfHips({ spots }: Pick<Remark, "spots">): boolean {
  const joints = spots.flatMap((spot) => spot.joints);
  return joints.length > 0 && joints.every((joint) => joint.endsWith("hip"));
}
