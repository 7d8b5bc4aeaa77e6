export type {
  Brief,
  InkStroke,
  Panel,
  PanelId,
  Sheet,
  SheetHead,
  StrokeId,
} from "./sheet";
