import { common } from "../../_words";
import { Arrow } from "../arrow";
import { Picture } from "../picture";
import { panelX, Strip } from "../strip";

export function PoseOrderPicture() {
  const { contact, down, passing, up } = common.pose;
  return (
    <Picture check="pose-order">
      <Strip
        panels={[
          { pose: "contact", label: contact },
          { pose: "passing", label: passing, amiss: "misplaced" },
          { pose: "down", label: down, amiss: "misplaced" },
          { pose: "up", label: up },
        ]}
      />
      <Arrow from={{ x: panelX(1) + 8, y: 178 }} to={{ x: panelX(2) - 4, y: 178 }} />
      <Arrow from={{ x: panelX(2) - 8, y: 188 }} to={{ x: panelX(1) + 4, y: 188 }} />
    </Picture>
  );
}
