import { useEffect, useRef } from 'preact/hooks';
import type { FlagField } from './section.js';

/** A size that takes a reading, by its name on the drawing. */
export interface ReadingField {
  readonly name: string;
  readonly label: string;
  readonly field: FlagField;
}

interface Props {
  readonly fields: readonly ReadingField[];
  readonly at: number;
  readonly go: (at: number) => void;
}

/** One reading at a time, for a phone at the bench: a large field, and the ways to the reading before and the next. */
export function OneReading({ fields, at, go }: Props) {
  const input = useRef<HTMLInputElement>(null);
  const isFirst = useRef(true);
  useEffect(() => {
    if (isFirst.current) isFirst.current = false;
    else if (at >= 0) input.current?.focus({ preventScroll: true });
  }, [at]);
  const one = fields[at];
  if (!one) return null;
  const step = (by: number) => go((at + by + fields.length) % fields.length);
  return (
    <div class="one-reading">
      <button type="button" aria-label="the reading before" onClick={() => step(-1)}>
        ‹
      </button>
      <label>
        <span>{`${one.label}, ${at + 1} of ${fields.length}`}</span>
        <input
          ref={input}
          inputMode="decimal"
          enterKeyHint="next"
          autocomplete="off"
          aria-label={`${one.field.spoken ?? one.label}, on the drawing`}
          value={one.field.value}
          onInput={(e) => one.field.change(e.currentTarget.value)}
          onKeyDown={(e) => {
            if (e.key === 'Enter') step(1);
          }}
        />
      </label>
      <button type="button" aria-label="the next reading" onClick={() => step(1)}>
        ›
      </button>
    </div>
  );
}
