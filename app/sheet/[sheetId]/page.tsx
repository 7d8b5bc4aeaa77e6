import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { readSheetId } from "../../../shared/sheet-id";
import { SheetDoor } from "../../_door/sheet-door";

export const metadata: Metadata = { title: "Sheet" };

interface SheetPageProps {
  readonly params: Promise<{ readonly sheetId: string }>;
}

export default async function SheetPage({ params }: SheetPageProps) {
  const sheetId = readSheetId((await params).sheetId);
  if (sheetId === null) notFound();
  return <SheetDoor sheetId={sheetId} />;
}
