"use client";
import type { ButtonHTMLAttributes, Ref } from "react";
import styles from "./controls.module.css";

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** `main` is the one thing to do here, `quiet` has no border, `plain` is the rest. */
  readonly look?: "main" | "plain" | "quiet";
  readonly small?: boolean;
  readonly ref?: Ref<HTMLButtonElement>;
}

export function Button({ look = "plain", small = false, className, ...rest }: ButtonProps) {
  const classes = [styles.button, styles[look], small ? styles.small : "", className ?? ""];
  return <button type="button" className={classes.join(" ").trim()} {...rest} />;
}
