export { FOOTFALLS_PX } from "./footfall-cells";
export { FootfallsChart, type FootfallsChartProps } from "./footfalls-chart";
export { GapRow, type GapRowProps } from "./gap-row";
export { HipChart, type HipChartProps } from "./hip-chart";
