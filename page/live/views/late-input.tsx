import { useState } from 'preact/hooks';

interface Props {
  readonly id: string;
  readonly value: string;
  readonly change: (typed: string) => void;
  readonly inputMode?: 'decimal';
  readonly size?: number;
  readonly 'aria-label'?: string;
  readonly 'aria-describedby'?: string;
}

/** A field whose text counts once it is left. What is half typed outlives a page that is drawn again meanwhile. */
export function LateInput({ value, change, ...rest }: Props) {
  const [draft, setDraft] = useState<string>();
  const leave = (typed: string) => {
    setDraft(undefined);
    change(typed);
  };
  return (
    <input
      {...rest}
      autocomplete="off"
      value={draft ?? value}
      onInput={(e) => setDraft(e.currentTarget.value)}
      onChange={(e) => leave(e.currentTarget.value)}
    />
  );
}
