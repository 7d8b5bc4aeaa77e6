import { StartDesk } from "./_start/start-desk";

export default function StartPage() {
  return <StartDesk />;
}
