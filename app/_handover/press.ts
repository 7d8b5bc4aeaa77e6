/**
 * What prints a sheet, and no more of the export library: a module of its own, so that fetching it
 * when somebody prints does not drag the rest along, nor leave it in what the board loads at first.
 */
export { dayWords, embedFonts, layOutPages, measureShipped, pageSvg } from "../../lib/export";
