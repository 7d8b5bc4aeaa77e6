"use client";
import { BundleList, type BundleListProps } from "./bundle-list";
import { groupRemarks } from "./group-remarks";
import { RemarkGroupList } from "./remark-group-list";

/** More than these are not read panel by panel: then what will be seen first comes first. */
const MOST_BY_PANEL = 6;

/** The open remarks: a few by the panel where each is seen, many by what they say. */
export function RemarkList({ remarks, Acts }: BundleListProps) {
  if (remarks.length > MOST_BY_PANEL) return <BundleList remarks={remarks} Acts={Acts} />;
  return <RemarkGroupList groups={groupRemarks(remarks)} Acts={Acts} />;
}
