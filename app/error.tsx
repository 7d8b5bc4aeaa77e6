"use client";
import { Button } from "./_controls";
import { Notice } from "./_door/notice";
import { door } from "./_words";

export default function PageBroke() {
  return (
    <Notice title={door.brokenTitle} body={door.brokenBody}>
      <Button look="main" onClick={() => location.reload()}>
        {door.reload}
      </Button>
    </Notice>
  );
}
