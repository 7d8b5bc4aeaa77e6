import type { Review } from "../../lib/gait";
import { charts } from "../_words";
import { tellExpected, tellHeight } from "./hip-words";

/** The hip chart as a table. */
export function HipTable({ review }: { readonly review: Review }) {
  const { table } = charts;
  const { points, bands } = review.hipCurve;
  return (
    <table>
      <caption>{charts.hipsTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{table.frame}</th>
          <th scope="col">{table.height}</th>
          <th scope="col">{table.expected}</th>
        </tr>
      </thead>
      <tbody>
        {points.map(({ panel, frame, height }) => (
          <tr key={panel}>
            <th scope="row">{frame}</th>
            <td>{height.kind === "value" ? tellHeight(height) : table.none}</td>
            <td>{tellExpected(bands, frame) ?? table.nothing}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
