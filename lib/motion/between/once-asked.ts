/** Worked out when it is first asked for. */
export function onceAsked<Told>(work: () => Told): () => Told {
  let told: { readonly is: Told } | null = null;
  return () => {
    told ??= { is: work() };
    return told.is;
  };
}
