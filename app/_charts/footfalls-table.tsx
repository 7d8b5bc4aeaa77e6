import { charts, common } from "../_words";
import type { FootfallCell } from "./footfall-cells";
import { joined, tellFoot, tenth } from "./footfall-words";

/** The footfalls as a table: a row for as long as a foot stays as it is. */
export function FootfallsTable({ cells }: { readonly cells: readonly FootfallCell[] }) {
  const { table } = charts;
  return (
    <table>
      <caption>{charts.footfallsTitle}</caption>
      <thead>
        <tr>
          <th scope="col">{table.foot}</th>
          <th scope="col">{table.from}</th>
          <th scope="col">{table.to}</th>
          <th scope="col">{table.state}</th>
        </tr>
      </thead>
      <tbody>
        {joined(cells).map((cell) => (
          <tr key={cell.key}>
            <th scope="row">{common.side[cell.side]}</th>
            <td>{tenth(cell.from)}</td>
            <td>{tenth(cell.to)}</td>
            <td>{tellFoot(cell)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
