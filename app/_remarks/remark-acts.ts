import type { Remark } from "../../lib/gait";

/** What stands in a remark's card for whatever can be done about it. */
export interface RemarkActsProps {
  readonly remark: Remark;
  /** It is being pointed out. */
  readonly pointed: boolean;
  readonly onPointOut: () => void;
}
