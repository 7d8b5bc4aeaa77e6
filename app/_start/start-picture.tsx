/** Three stems from a ruler: the board in a few lines. */
export function StartPicture() {
  return (
    <svg viewBox="0 0 96 72" width="96" height="72" aria-hidden="true" focusable="false">
      <g fill="var(--raised)" stroke="var(--edge)" strokeWidth="1.5">
        <rect x="6" y="4" width="24" height="36" rx="2" />
        <rect x="36" y="4" width="24" height="36" rx="2" />
        <rect x="66" y="4" width="24" height="36" rx="2" />
      </g>
      <g fill="none" stroke="var(--text)" strokeWidth="1.6" strokeLinecap="round">
        <path d="M13 35 L18 21 L24 35 M18 21 L18 11" />
        <path d="M48 35 L47 22 L53 29 L49 34 M47 22 L48 11" />
        <path d="M73 35 L78 21 L84 35 M78 21 L78 11" />
        <path d="M18 40 C18 50 10 52 10 62 M48 40 C48 50 54 52 54 62 M78 40 C78 50 86 52 86 62" />
        <path d="M4 62 H92" strokeWidth="2" />
      </g>
      <circle cx="10" cy="62" r="3.4" fill="var(--left)" />
      <path d="M54 57.6 L58.4 62 L54 66.4 L49.6 62 Z" fill="var(--right)" />
      <circle cx="86" cy="62" r="3.4" fill="var(--left)" />
    </svg>
  );
}
