import { Notice } from "./_door/notice";
import { door } from "./_words";

export default function NotFound() {
  return <Notice title={door.notFoundTitle} body={door.notFoundBody} />;
}
