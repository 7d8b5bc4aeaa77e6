import { charts } from "../_words";
import type { GapBox } from "./gap-boxes";

/** The gaps as a table. */
export function GapTable({ boxes }: { readonly boxes: readonly GapBox[] }) {
  const { table } = charts;
  return (
    <table>
      <caption>{charts.gapsTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{table.from}</th>
          <th scope="col">{table.to}</th>
          <th scope="col">{table.frames}</th>
          <th scope="col">{table.expected}</th>
        </tr>
      </thead>
      <tbody>
        {boxes.map(({ key, fromFrame, toFrame, frames, expected, level }) => (
          <tr key={key}>
            <td>{fromFrame}</td>
            <td>{toFrame}</td>
            <td>{level !== null ? `${frames}, ${charts.remarked}` : frames}</td>
            <td>{expected ?? table.nothing}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
