import { common, methodPictures as words } from "../../_words";
import { Picture } from "../picture";
import { Strip } from "../strip";

export function MissingPosePicture() {
  const { contact, down, up } = common.pose;
  return (
    <Picture check="missing-pose">
      <Strip
        panels={[
          { pose: "contact", label: contact },
          { pose: "down", label: down },
          { pose: "passing", label: words.missing, amiss: "missing" },
          { pose: "up", label: up },
        ]}
      />
    </Picture>
  );
}
