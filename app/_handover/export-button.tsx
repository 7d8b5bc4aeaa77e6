"use client";
import { sheetFileText } from "../../lib/sheet";
import { Button, type ButtonProps } from "../_controls";
import { useRoom } from "../_room";
import { handover } from "../_words";
import { fileName } from "./file-name";
import { saveFile } from "./save-file";

/** Everything on the sheet as one file, named after it. */
export function ExportButton(props: Omit<ButtonProps, "onClick" | "children">) {
  const room = useRoom();
  const save = () => {
    const sheet = { ...room.sheet.getSnapshot(), ...room.said.getSnapshot() };
    const file = new Blob([sheetFileText(sheet)], { type: "application/json" });
    saveFile(file, fileName(sheet.head.title, ".heelstrip.json"));
  };
  return (
    <Button title={handover.exportHint} {...props} onClick={save}>
      {handover.exportFile}
    </Button>
  );
}
