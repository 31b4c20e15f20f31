/** The sheet itself, for who likes it better; the same model as all the rest. */
export function SheetPane({ sheet, write }: { readonly sheet: string; readonly write: (sheet: string) => void }) {
  return (
    <details class="card sheet">
      <summary>the sheet</summary>
      <textarea
        aria-label="the sheet"
        spellcheck={false}
        rows={24}
        value={sheet}
        onInput={(e) => write(e.currentTarget.value)}
      />
    </details>
  );
}
