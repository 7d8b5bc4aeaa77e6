export { GapRow, type GapRowProps } from "./gap-row";
export { HipChart, type HipChartProps } from "./hip-chart";
