export { Button, type ButtonProps } from "./button";
export { Dialog, type DialogProps } from "./dialog";
