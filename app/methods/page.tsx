import type { Metadata } from "next";
import { MethodsPage } from "../_methods/methods-page";
import { methods } from "../_words";

export const metadata: Metadata = { title: methods.title, description: methods.lead };

export default function Methods() {
  return <MethodsPage />;
}
